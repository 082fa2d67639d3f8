package page

import (
	"fmt"
	"io/fs"
	"maps"
	"os"
	"slices"
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

// pageWords are the messages of the pages themselves, as a language has them.
func pageWords(t testing.TB, tag string) string {
	t.Helper()
	source, err := fs.ReadFile(locales.Files, tag+".toml")
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
	words, err := toml.Marshal(all)
	if err != nil {
		t.Fatal(err)
	}
	return string(words)
}

var names = map[string][3]string{
	"en": {"English", "ltr", "source"}, "es": {"Español", "ltr", "draft"},
	"ar": {"العربية", "rtl", "draft"}, "zh-Hans": {"中文", "ltr", "draft"},
}

// order is that of the language links.
var order = []string{"en", "es", "ar", "zh-Hans"}

func newStock(t testing.TB) stock {
	t.Helper()
	files := fstest.MapFS{}
	for tag, n := range names {
		week, err := os.ReadFile("testdata/week." + tag + ".toml")
		if err != nil {
			t.Fatal(err)
		}
		head := fmt.Sprintf("[language]\nname = %q\ndirection = %q\ndigits = \"latn\"\nequations = \"ltr\"\nreview = %q\n", n[0], n[1], n[2])
		text := head + pageWords(t, tag) + string(week)
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
