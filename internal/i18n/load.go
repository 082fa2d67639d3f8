package i18n

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"slices"
	"strings"
	"sync"

	"golang.org/x/sync/errgroup"

	"homebuild/internal/diag"
)

// SourceTag is the language that messages are written in first.
const SourceTag = "en"

// Catalog holds languages that were loaded together.
type Catalog struct {
	languages []*Language
	source    *Language
}

// Load reads and proves the languages with the given tags, in that order; no
// tags means every file there is. Each folder holds files xx.toml at its root;
// a file in a later folder replaces the same file of an earlier one. English
// is always read, to hold the others against it.
//
// Every problem of every file is returned, sorted; a language with problems is
// not in the catalog, and without a sound English the catalog is nil.
func Load(tags []string, folders ...fs.FS) (*Catalog, diag.Problems) {
	if len(tags) == 0 {
		tags = Tags(folders...)
	}
	source := sync.OnceValue(func() english { return loadEnglish(folders) })
	results := make([]result, len(tags))
	var group errgroup.Group
	group.SetLimit(4)
	for i, tag := range tags {
		group.Go(func() error {
			results[i] = loadOne(tag, source, folders)
			return nil
		})
	}
	_ = group.Wait() // no function fails: problems are results
	en := source()
	if len(en.problems) > 0 {
		return nil, en.problems
	}
	c := &Catalog{source: en.lang}
	var problems diag.Problems
	for _, r := range results {
		problems = append(problems, r.problems...)
		if len(r.problems) == 0 && !slices.Contains(c.languages, r.lang) {
			c.languages = append(c.languages, r.lang)
		}
	}
	problems.Sort()
	return c, problems
}

// result is a language, or why there is none.
type result struct {
	lang     *Language
	problems diag.Problems
}

// english is the source, as a language and as what others are held against.
type english struct {
	result
	source *source
}

// Tags lists the languages that the folders have files for, sorted.
func Tags(folders ...fs.FS) []string {
	var tags []string
	for _, folder := range folders {
		names, err := fs.Glob(folder, "*.toml")
		if err != nil {
			panic("i18n: " + err.Error()) // the pattern is a constant
		}
		for _, name := range names {
			tags = append(tags, strings.TrimSuffix(name, ".toml"))
		}
	}
	slices.Sort(tags)
	return slices.Compact(tags)
}

func loadEnglish(folders []fs.FS) english {
	f, problems := readFile(SourceTag, folders)
	if len(problems) > 0 {
		return english{result: result{problems: problems}}
	}
	src := newSource(f)
	lang, problems := buildSummed(f, src)
	return english{result{lang, problems}, src}
}

// loadOne reads a file while English may still be read elsewhere, and then
// holds it against English.
func loadOne(tag string, source func() english, folders []fs.FS) result {
	if tag == SourceTag {
		return source().result
	}
	f, problems := readFile(tag, folders)
	en := source()
	if len(problems) > 0 || len(en.problems) > 0 {
		return result{problems: problems}
	}
	lang, problems := buildSummed(f, en.source)
	return result{lang, problems}
}

// loadSource is English alone.
func loadSource(folders []fs.FS) (*Language, *source, diag.Problems) {
	en := loadEnglish(folders)
	return en.lang, en.source, en.problems
}

// buildSummed builds a language and names what it was made from.
func buildSummed(f *file, src *source) (*Language, diag.Problems) {
	l, problems := build(f, src)
	if l != nil {
		l.sum = fmt.Sprintf("%x.%x", f.sum, src.file.sum)
	}
	return l, problems
}

// readFile reads the file of a language from the last folder that has it.
func readFile(tag string, folders []fs.FS) (*file, diag.Problems) {
	data, problem := findFile(tag, folders)
	if problem != nil {
		return nil, diag.Problems{*problem}
	}
	return read(shownPath(tag), tag, data)
}

// shownPath is the path of a language file as people know it.
func shownPath(tag string) string { return "locales/" + tag + ".toml" }

func findFile(tag string, folders []fs.FS) ([]byte, *diag.Problem) {
	p := &diag.Problem{File: shownPath(tag)}
	if _, wrong := parseTag(tag); wrong != nil {
		p.Text, p.Hint = wrong.text, wrong.hint
		return nil, p
	}
	for _, folder := range slices.Backward(folders) {
		data, err := readLimited(folder, tag+".toml")
		if err == nil {
			return data, nil
		}
		if !errors.Is(err, fs.ErrNotExist) {
			p.Text = err.Error()
			return nil, p
		}
	}
	p.Text = fmt.Sprintf("there is no language file for %q", tag)
	p.Hint = "there are files for " + strings.Join(Tags(folders...), ", ")
	return nil, p
}

// readLimited reads a file, and no more of it than a language file may have.
func readLimited(folder fs.FS, name string) ([]byte, error) {
	info, err := fs.Lstat(folder, name)
	if err != nil {
		return nil, err
	}
	if !info.Mode().IsRegular() { // a link leads elsewhere, a pipe lets us wait for ever
		return nil, errors.New("this is not a file")
	}
	f, err := folder.Open(name)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	var data bytes.Buffer
	data.Grow(int(min(info.Size(), maxFile)) + bytes.MinRead)
	_, err = data.ReadFrom(io.LimitReader(f, maxFile+1))
	return data.Bytes(), err
}

// Language returns a language by its tag.
func (c *Catalog) Language(tag string) (*Language, bool) {
	for _, l := range c.languages {
		if l.tag == tag {
			return l, true
		}
	}
	return nil, false
}

// Languages lists the languages in the order in which they were asked for.
func (c *Catalog) Languages() []*Language { return slices.Clone(c.languages) }

// With is a catalog with more languages, such as those of Pseudo.
func (c *Catalog) With(languages ...*Language) *Catalog {
	return &Catalog{languages: slices.Concat(c.languages, languages), source: c.source}
}

// Source is English, also when the site does not use it.
func (c *Catalog) Source() *Language { return c.source }

// Told reports whether every language of the catalog has a message or block,
// and lists the tags of those that have not.
func (c *Catalog) Told(id string) (bool, []string) {
	var without []string
	for _, l := range c.languages {
		if !l.Has(id) {
			without = append(without, l.tag)
		}
	}
	return len(without) == 0, without
}
