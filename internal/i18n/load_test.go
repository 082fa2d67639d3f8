package i18n

import (
	"fmt"
	"os"
	"sync"
	"testing"
	"testing/fstest"

	"homebuild/internal/phrase"
)

func TestLoadOrderAndSource(t *testing.T) {
	c, problems := Load([]string{"es", "ar"}, os.DirFS("testdata/locales"))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	var got []string
	for _, l := range c.Languages() {
		got = append(got, l.Tag()+" "+l.Name()+" "+Direction(l.RightToLeft()))
	}
	if want := []string{"es español ltr", "ar العربية rtl"}; fmt.Sprint(got) != fmt.Sprint(want) {
		t.Errorf("Languages: want %v, got %v", want, got)
	}
	if _, ok := c.Language("en"); ok {
		t.Error("Language(en): want none, it was not asked for")
	}
	if s := c.Source(); s.Tag() != "en" || s.Draft() || s.Reviewed() != "" {
		t.Errorf("Source: want en, which is neither draft nor reviewed; got %s, %v, %q", s.Tag(), s.Draft(), s.Reviewed())
	}
}

func TestLoadLaterFolderWins(t *testing.T) {
	own := fstest.MapFS{"es.toml": {Data: fixture(t, "es", `"Idioma"`, `"Lengua"`)}}
	c, problems := Load([]string{"es", "ru"}, os.DirFS("testdata/locales"), own)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	if got := in(t, c, "es").Word("page.language"); got != "Lengua" {
		t.Errorf("es from the teacher's folder: want Lengua, got %s", got)
	}
	if got := in(t, c, "ru").Word("page.language"); got != "Язык" {
		t.Errorf("ru, which only the first folder has: want Язык, got %s", got)
	}
}

func TestLoadProblems(t *testing.T) {
	good := os.DirFS("testdata/locales")
	en := fixture(t, "en", "", "")
	tests := []struct {
		name   string
		tags   []string
		folder fstest.MapFS
		want   string
	}{
		{"no such file", []string{"ru", "fr"}, nil, "locales/fr.toml: there is no language file for \"fr\"\n  hint: there are files for ar, en, es, ht, ru, vi"},
		{"no language", []string{"xx"}, nil, "locales/xx.toml: \"xx\" is not a language tag\n  hint: name the file by the BCP 47 tag of its language: es.toml, pt-BR.toml, zh-Hant.toml"},
		{"path", []string{"../secret"}, nil, "locales/../secret.toml: \"../secret\" is not a language tag\n  hint: name the file by the BCP 47 tag of its language: es.toml, pt-BR.toml, zh-Hant.toml"},
		{"spelling", []string{"PT-br"}, nil, "locales/PT-br.toml: the usual tag for \"PT-br\" is \"pt-BR\"\n  hint: name the file pt-BR.toml"},
		{"older tag", []string{"iw"}, nil, "locales/iw.toml: the usual tag for \"iw\" is \"he\"\n  hint: name the file he.toml"},
		{"file of no language", nil, fstest.MapFS{"en.toml": {Data: en}, "notes.toml": {Data: en}}, "locales/notes.toml: \"notes\" is not a language tag\n  hint: name the file by the BCP 47 tag of its language: es.toml, pt-BR.toml, zh-Hant.toml"},
		{"English broken", []string{"en"}, fstest.MapFS{"en.toml": {Data: fixture(t, "en", `"Language"`, `""`)}}, "locales/en.toml:18: page.language has no text\n  hint: write its text"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			_, problems := Load(test.tags, good)
			if test.folder != nil {
				_, problems = Load(test.tags, test.folder)
			}
			if got := problems.Error(); got != test.want {
				t.Errorf("Load(%q)\nwant %s\ngot  %s", test.tags, test.want, got)
			}
		})
	}
}

// A problem in one language keeps that language out, and only that one.
func TestLoadKeepsSoundLanguages(t *testing.T) {
	folder := fstest.MapFS{
		"en.toml": {Data: fixture(t, "en", "", "")}, "ru.toml": {Data: fixture(t, "ru", "", "")},
		"es.toml": {Data: fixture(t, "es", `"Idioma"`, `""`)},
	}
	c, problems := Load([]string{"es", "ru"}, folder)
	if _, ok := c.Language("es"); ok || len(problems) != 1 {
		t.Errorf("es: want it kept out for one problem, got %v, %v", ok, problems)
	}
	if _, ok := c.Language("ru"); !ok {
		t.Error("ru: want it in the catalog")
	}
}

func TestHas(t *testing.T) {
	c := fixtures(t)
	tests := []struct {
		tag, id string
		want    bool
	}{
		{"es", "page.title", true}, {"es", "page.titel", false},
		{"es", "thing.floor", true}, {"ru", "thing.pot", false},
		{"vi", "character.fox", true}, {"vi", "character.heron", false},
		{"ar", "event.kitchen.soup", true}, {"ht", "event.kitchen.soup", false},
		{"vi", "setting.harbour", false}, {"ru", "own.starter", true},
	}
	for _, test := range tests {
		if got := in(t, c, test.tag).Has(test.id); got != test.want {
			t.Errorf("%s: Has(%q): want %v, got %v", test.tag, test.id, test.want, got)
		}
	}
	if without := c.Without("event.kitchen.soup"); fmt.Sprint(without) != "[ht vi]" {
		t.Errorf("Without(event.kitchen.soup): want ht and vi, got %v", without)
	}
	if without := c.Without("thing.floor"); len(without) > 0 {
		t.Errorf("Without(thing.floor): want none, got %v", without)
	}
}

// A language without a rule in CLDR can still be written: its file names one.
func TestStatedPluralRule(t *testing.T) {
	quechua := func(rule string) *Language {
		folder := fstest.MapFS{"en.toml": {Data: fixture(t, "en", "", "")}}
		folder["qu.toml"] = &fstest.MapFile{Data: fixture(t, "es", `review = "draft"`, "review = \"draft\"\nplurals = \""+rule+"\"")}
		c, problems := Load([]string{"qu"}, folder)
		if len(problems) > 0 {
			return nil
		}
		return in(t, c, "qu")
	}
	if l := quechua("es"); l == nil || l.Say(phrase.Say("page.weeks", phrase.Number("N", 1))).String() != "1\u00a0semana" {
		t.Error("plurals = es: want 1 to be one, as in Spanish")
	}
	if l := quechua("other"); l != nil {
		t.Error("plurals = other: want the forms for one refused")
	}
}

// Run with -race: a language is shared by all workers of a build.
func TestLanguagesAreSafeTogether(t *testing.T) {
	c := fixtures(t)
	var group sync.WaitGroup
	for range 8 {
		group.Go(func() {
			for n := range 1100 {
				for _, l := range c.Languages() {
					l.Say(phrase.Say("page.weeks", phrase.Number("N", n)))
					l.Word("page.language")
				}
			}
		})
	}
	group.Wait()
}
