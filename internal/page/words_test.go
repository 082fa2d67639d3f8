package page

import (
	"fmt"
	"io/fs"
	"maps"
	"os"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/pelletier/go-toml/v2"

	"homebuild/internal/i18n"
	"homebuild/locales"
	"homebuild/themes"
)

// stock is what the tests of this room need: languages with the pages' words
// and a made-up week, and the theme.
type stock struct {
	languages map[string]*i18n.Language
	theme     *Theme
	versions  []Version
}

// pageWords are the messages of the pages themselves, from the English source, in the
// plural forms of a language.
func pageWords(t testing.TB, tag string) string {
	t.Helper()
	source, err := fs.ReadFile(locales.Files, "en.toml")
	if err != nil {
		t.Fatal(err)
	}
	var all map[string]any
	if err := toml.Unmarshal(source, &all); err != nil {
		t.Fatal(err)
	}
	maps.DeleteFunc(all, func(family string, _ any) bool {
		return !slices.Contains([]string{"page", "month", "care", "learn", "try", "own", "print", "check", "index", "desk", "share"}, family)
	})
	inForms(all, tag)
	words, err := toml.Marshal(all)
	if err != nil {
		t.Fatal(err)
	}
	return string(words)
}

// categories are the plural forms that each language needs: CLDR 48, cardinal rules
// of English, Spanish, Arabic and Chinese.
var categories = map[string][]string{
	"en": {"one", "other"}, "es": {"one", "many", "other"},
	"ar": {"zero", "one", "two", "few", "many", "other"}, "zh-Hans": {"other"},
}

// shells is the thing of the made-up stories in the forms of a language.
func shells(tag string) string {
	var all []string
	for _, c := range categories[tag] {
		text := "{{.N}} shells"
		if c == "one" {
			text = "{{.N}} shell"
		}
		all = append(all, fmt.Sprintf("%s = %q", c, text))
	}
	return strings.Join(all, ", ")
}

// inForms gives every message with plural forms those of a language.
func inForms(words map[string]any, tag string) {
	other, plural := words["other"].(string)
	if _, one := words["one"]; plural && one {
		clear(words)
		for _, c := range categories[tag] {
			words[c] = other
		}
		return
	}
	for _, inner := range words {
		if table, ok := inner.(map[string]any); ok {
			inForms(table, tag)
		}
	}
}

var names = map[string][3]string{
	"en": {"English", "ltr", "source"}, "es": {"Español", "ltr", "draft"},
	"ar": {"العربية", "rtl", "draft"}, "zh-Hans": {"中文", "ltr", "draft"},
}

// order is that of the language links.
var order = []string{"en", "es", "ar", "zh-Hans"}

func newStock(t testing.TB) stock {
	t.Helper()
	week, err := os.ReadFile("testdata/week.toml")
	if err != nil {
		t.Fatal(err)
	}
	files := fstest.MapFS{}
	for tag, n := range names {
		head := fmt.Sprintf("[language]\nname = %q\ndirection = %q\ndigits = \"latn\"\nequations = \"ltr\"\nreview = %q\n", n[0], n[1], n[2])
		text := head + pageWords(t, tag) + strings.ReplaceAll(string(week), shells("en"), shells(tag))
		files[tag+".toml"] = &fstest.MapFile{Data: []byte(text)}
	}
	catalog, problems := i18n.Load(order, files)
	if len(problems) > 0 {
		t.Fatalf("the words of the tests do not load:\n%v", problems)
	}
	s := stock{languages: map[string]*i18n.Language{}, theme: paper(t)}
	for _, l := range catalog.Languages() {
		s.languages[l.Tag()] = l
		s.versions = append(s.versions, Version{Language: l, Class: l.Tag() == "en", Href: l.Tag() + "/index.html"})
	}
	return s
}

// in makes the fixture in one language.
func (s stock) in(tag string) fixture {
	return fixture{language: s.languages[tag], class: s.languages["en"], theme: s.theme, versions: s.versions}
}

func folder(t testing.TB, name string) fs.FS {
	t.Helper()
	f, err := fs.Sub(themes.Files, name)
	if err != nil {
		t.Fatal(err)
	}
	return f
}

func paper(t testing.TB) *Theme {
	t.Helper()
	theme, err := ReadTheme(folder(t, "base"), folder(t, "paper"))
	if err != nil {
		t.Fatalf("ReadTheme: %v", err)
	}
	return theme
}
