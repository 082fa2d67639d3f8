package i18n

import (
	"fmt"
	"io/fs"
	"math"
	"slices"
	"strings"

	"golang.org/x/sync/errgroup"

	"homebuild/internal/diag"
	"homebuild/internal/story"
	"homebuild/internal/textfile"
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
// not in the catalog, and without a sound English the catalog is nil. A text that
// is still to be written is no problem: see [Language.Missing].
func Load(tags []string, folders ...fs.FS) (*Catalog, diag.Diagnostics) {
	return NewLoader(folders...).Load(tags...)
}

// Loader loads languages of folders that stay as they are: each is read and
// proved when it is first asked for. It is not for several callers at a time.
type Loader struct {
	folders []fs.FS
	english *Source
	wrong   diag.Diagnostics // in English
	proofs  map[string]*Proof
}

// NewLoader is a loader that has read nothing yet.
func NewLoader(folders ...fs.FS) *Loader {
	return &Loader{folders: folders, proofs: map[string]*Proof{}}
}

// Load is [Load] for the loader's folders.
func (l *Loader) Load(tags ...string) (*Catalog, diag.Diagnostics) {
	if len(tags) == 0 {
		tags = Tags(l.folders...)
	}
	l.prove(tags)
	if len(l.wrong) > 0 {
		return nil, l.wrong
	}
	c := &Catalog{source: l.english.Language}
	var problems diag.Diagnostics
	for _, tag := range tags {
		p := l.proofs[tag]
		problems = append(problems, p.Wrong...)
		if len(p.Wrong) == 0 && !slices.Contains(c.languages, p.Language) {
			c.languages = append(c.languages, p.Language)
		}
	}
	problems.Sort()
	return c, problems
}

// prove reads and proves those of the languages that were not asked for before.
func (l *Loader) prove(tags []string) {
	var fresh []string
	for _, tag := range tags {
		if l.proofs[tag] == nil && !slices.Contains(fresh, tag) {
			fresh = append(fresh, tag)
		}
	}
	files, proofs := make([]*File, len(fresh)), make([]Proof, len(fresh))
	together(len(fresh)+1, func(i int) {
		switch {
		case i == 0 && l.english == nil:
			l.english, l.wrong = LoadSource(l.folders...)
		case i > 0 && fresh[i-1] != SourceTag:
			files[i-1], proofs[i-1].Wrong = ReadFile(fresh[i-1], l.folders...)
		}
	})
	if len(l.wrong) > 0 {
		return
	}
	together(len(fresh), func(i int) {
		if fresh[i] == SourceTag {
			proofs[i].Language = l.english.Language
		} else if files[i] != nil {
			proofs[i] = *l.english.Prove(files[i], maxProblems)
		}
	})
	for i, tag := range fresh {
		l.proofs[tag] = &proofs[i]
	}
}

// together calls f with each number from 0 to n-1, several at a time.
func together(n int, f func(i int)) {
	var group errgroup.Group
	group.SetLimit(4)
	for i := range n {
		group.Go(func() error { f(i); return nil })
	}
	_ = group.Wait() // nothing fails
}

// LoadSource reads English, which must be sound.
func LoadSource(folders ...fs.FS) (*Source, diag.Diagnostics) {
	f, problems := ReadFile(SourceTag, folders...)
	if len(problems) > 0 {
		return nil, problems
	}
	places, err := story.LoadPlaces()
	if err != nil {
		panic("i18n: " + err.Error()) // they come with the program
	}
	s := newSource(f, places)
	p := s.Prove(f, math.MaxInt)
	s.Language = p.Language
	return s, p.Problems()
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

// ReadFile reads the file of a language from the last folder that has it.
func ReadFile(tag string, folders ...fs.FS) (*File, diag.Diagnostics) {
	wrong := func(p *diag.Diagnostic) diag.Diagnostics {
		p.File = shownPath(tag)
		return diag.Diagnostics{*p}
	}
	if _, problem := ParseTag(tag); problem != nil {
		return nil, wrong(problem)
	}
	for _, folder := range slices.Backward(folders) {
		if textfile.IsMissing(folder, tag+".toml") {
			continue
		}
		text, problem := textfile.Read(folder, tag+".toml")
		if problem != nil {
			return nil, wrong(problem)
		}
		return Parse(tag, text)
	}
	return nil, wrong(&diag.Diagnostic{
		Text: fmt.Sprintf("there is no language file for %q", tag), Hint: "there are files for " + strings.Join(Tags(folders...), ", "),
	})
}

// shownPath is the path of a language file as people know it.
func shownPath(tag string) string { return "locales/" + tag + ".toml" }

// Language returns a language by its tag.
func (c *Catalog) Language(tag string) (*Language, bool) {
	for _, l := range c.languages {
		if l.tag == tag {
			return l, true
		}
	}
	return nil, false
}

// With is the catalog with another language in the place of that of its tag.
func (c *Catalog) With(l *Language) *Catalog {
	with := *c
	with.languages = slices.Clone(c.languages)
	for i := range with.languages {
		if with.languages[i].tag == l.tag {
			with.languages[i] = l
		}
	}
	return &with
}

// Languages lists the languages in the order in which they were asked for.
func (c *Catalog) Languages() []*Language { return slices.Clone(c.languages) }

// Source is English, also when the site does not use it.
func (c *Catalog) Source() *Language { return c.source }

// Without lists the tags of the languages that do not have a message or block.
func (c *Catalog) Without(id string) []string {
	var without []string
	for _, l := range c.languages {
		if !l.Has(id) {
			without = append(without, l.tag)
		}
	}
	return without
}
