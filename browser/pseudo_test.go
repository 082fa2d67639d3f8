//go:build browser

package browser_test

import (
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/pelletier/go-toml/v2"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/page"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/site"
	"homebuild/internal/story"
	"homebuild/internal/strategy"
	schoolweek "homebuild/internal/week"
	"homebuild/locales"
	example "homebuild/site"
	"homebuild/themes"
)

// pseudoSite writes the pages of the example school that are looked at in the two
// languages that are made up for tests: English with accents, 40 % longer, and the same
// from right to left.
func pseudoSite(t *testing.T, views []view) string {
	t.Helper()
	dir := t.TempDir()
	files, _, problems := site.Assemble(pseudoInput(t))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	for _, f := range files {
		if !slices.ContainsFunc(views, func(v view) bool { path, _, _ := strings.Cut(v.path, "#"); return path == f.Path }) {
			continue
		}
		data, err := f.Render()
		must(t, err)
		name := filepath.Join(dir, filepath.FromSlash(f.Path))
		must(t, os.MkdirAll(filepath.Dir(name), 0o755))
		must(t, os.WriteFile(name, data, 0o644))
	}
	return dir
}

func pseudoInput(t *testing.T) site.Input {
	t.Helper()
	var in site.Input
	var err error
	in.Targets, err = activity.Targets()
	must(t, err)
	in.Places, err = story.LoadPlaces()
	must(t, err)
	in.WarmUps, err = site.WarmUps()
	must(t, err)
	base, err := fs.Sub(themes.Files, "base")
	must(t, err)
	paper, err := fs.Sub(themes.Files, "paper")
	must(t, err)
	in.Theme, err = page.ReadTheme(base, paper)
	must(t, err)
	read, problems := schoolweek.Read(example.Files, schoolweek.Allowed{
		Targets:    names(in.Targets, func(x activity.Target) string { return x.ID }),
		Strategies: names(strategy.Names(), strategy.Name.String),
		Pictures:   names(picture.Kinds(), picture.Kind.String),
		Places:     names(in.Places, func(p story.Place) string { return p.ID }),
		WarmUps:    names(in.WarmUps, func(x site.WarmUp) string { return x.ID }),
		Kinds:      names(problem.Kinds(), problem.Kind.String),
		Themes:     []string{"paper"},
		Languages:  i18n.Tags(locales.Files),
	})
	english, err := fs.ReadFile(locales.Files, "en.toml")
	must(t, err)
	in.Site = read
	in.Site.Languages, in.Site.School = []string{"en-XA", "ar-XB"}, "en-XA"
	var found diag.Diagnostics
	in.Catalog, found = i18n.Load(in.Site.Languages, locales.Files, fstest.MapFS{
		"en-XA.toml": {Data: madeUp(t, english, "ltr", accented)},
		"ar-XB.toml": {Data: madeUp(t, english, "rtl", mirrored)},
	})
	if problems = append(problems, found...); len(problems) > 0 {
		t.Fatal(problems)
	}
	return in
}

// Letters of the made-up languages. Vowels are doubled, which makes English about
// 40 % longer; the Arabic letters nobody can read.
var (
	accented = strings.NewReplacer(
		"a", "áá", "e", "éé", "i", "íí", "o", "óó", "u", "úú", "y", "ýý", "A", "Áá", "E", "Éé", "I", "Íí", "O", "Óó", "U", "Úú", "Y", "Ýý",
		"b", "ƀ", "c", "ç", "d", "đ", "g", "ĝ", "h", "ĥ", "j", "ĵ", "k", "ķ", "l", "ļ", "n", "ñ", "r", "ŕ", "s", "š", "t", "ţ", "w", "ŵ", "z", "ž",
		"C", "Ç", "D", "Đ", "G", "Ĝ", "H", "Ĥ", "J", "Ĵ", "K", "Ķ", "L", "Ļ", "N", "Ñ", "R", "Ŕ", "S", "Š", "T", "Ţ", "W", "Ŵ", "Z", "Ž")
	mirrored = mirror("abcdefghijklmnopqrstuvwxyz", "ابچدهفگحيجكلمنوپقرستعڤؤخيز", "aeiouy")
)

// mirror replaces letters, small or big, by those of another alphabet, and
// doubles some.
func mirror(from, to, doubled string) *strings.Replacer {
	var pairs []string
	letters := []rune(to)
	for i, c := range from {
		letter := string(letters[i])
		if strings.ContainsRune(doubled, c) {
			letter += letter
		}
		pairs = append(pairs, string(c), letter, strings.ToUpper(string(c)), letter)
	}
	return strings.NewReplacer(append(pairs, "?", "؟", ",", "،")...)
}

// madeUp is the English file in other letters, every message but the forms that
// stand inside sentences in brackets.
func madeUp(t *testing.T, english []byte, direction string, letters *strings.Replacer) []byte {
	t.Helper()
	var file map[string]any
	must(t, toml.Unmarshal(english, &file))
	header := file["language"].(map[string]any)
	delete(file, "language")
	turn(file, letters, true)
	file["language"] = map[string]any{
		"name": letters.Replace(header["name"].(string)), "direction": direction, "digits": "latn", "equations": "ltr", "review": "draft", "plurals": "en",
	}
	data, err := toml.Marshal(file)
	must(t, err)
	return data
}

// turn writes the texts of a table in other letters, but for their places.
func turn(table map[string]any, letters *strings.Replacer, whole bool) {
	for key, v := range table {
		switch v := v.(type) {
		case string:
			if key == "description" || key == "gender" {
				continue
			}
			text := placesAside.ReplaceAllStringFunc(v, func(part string) string {
				if strings.HasPrefix(part, "{{") {
					return part
				}
				return letters.Replace(part)
			})
			if whole {
				text = "[" + text + "]"
			}
			table[key] = text
		case map[string]any:
			turn(v, letters, whole && !slices.Contains(inSentences, key))
		}
	}
}

// inSentences are the families of messages that stand inside others.
var inSentences = []string{"words", "thing", "measure", "person", "character"}

var placesAside = regexp.MustCompile(`\{\{[^}]*\}\}|[^{]+`)

func names[T any](list []T, name func(T) string) []string {
	var out []string
	for _, x := range list {
		out = append(out, name(x))
	}
	return out
}

// plainEnglish is a word that no made-up language has: all their vowels have
// accents, or are Arabic.
var plainEnglish = regexp.MustCompile(`[A-Za-z]*[AEIOUaeiou][A-Za-z]*`)

// stray is a script that takes away what is not of the language's file, and gives the
// words that are left.
const stray = `(() => {
	for (const e of document.querySelectorAll(".note, .mark, .on-paper, .foot bdi, [lang]:not(html)")) e.remove();
	return document.body.textContent;
})()`

// No page takes words from anywhere but the language files. Texts that are 40 % longer
// than English leave nothing cut off and nothing to scroll sideways, in both directions,
// on small phones. 40 % is common practice, no published source.
func TestMadeUpLanguages(t *testing.T) {
	t.Parallel()
	all := slices.Concat(topViews(), views("en-XA"), views("ar-XB"))
	dir := pseudoSite(t, all)
	b := openTab(t)
	for _, v := range all {
		b.openAt("file://"+dir+"/", v)
		for _, width := range []int64{360, 320} {
			b.size(width, 740)
			b.none(fmt.Sprintf("%s, %d pixels", v.path, width), wide)
		}
		if !strings.Contains(v.path, "/") {
			continue // tells the languages' own names
		}
		if found := plainEnglish.FindString(eval[string](b, stray)); found != "" {
			t.Errorf("%s: %q is not from the language's file", v.path, found)
		}
	}
}
