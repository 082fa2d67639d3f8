package i18n_test

import (
	"os"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"
	"unicode/utf8"

	"homebuild/internal/i18n"
	"homebuild/internal/translate"
)

// fixture reads a file of testdata with some text in it replaced.
func fixture(t testing.TB, tag, old, new string) []byte {
	t.Helper()
	data, err := os.ReadFile("testdata/locales/" + tag + ".toml")
	if err != nil {
		t.Fatal(err)
	}
	return []byte(strings.Replace(string(data), old, new, 1))
}

// Whatever a language file holds, loading ends; a language that is whole can say
// every message, and none of them holds markup or turns the reading direction.
func FuzzLanguageFile(f *testing.F) {
	en := fixture(f, "en", "", "")
	es := string(fixture(f, "es", "", ""))
	f.Add(es)
	f.Add(strings.Replace(es, "Idioma", "{{.A}}<b>", 1))
	f.Add(strings.Replace(es, "[language]", "[language]\nplurals = \"ar\"", 1))
	f.Add("[a.b.c.d.e.f.g]\nother = 'x'\n[a]\nb = {c = {d = \"{{\"}}")
	f.Add("a = 1\n[[language]]\n\xff")
	f.Fuzz(func(t *testing.T, text string) {
		c, problems := i18n.Load([]string{"es"}, fstest.MapFS{"en.toml": {Data: en}, "es.toml": {Data: []byte(text)}})
		for _, p := range problems {
			if p.File == "" || p.Text == "" || p.Line > 1+strings.Count(text, "\n")+strings.Count(text, "\r") {
				t.Errorf("problem without a true place: %+v", p)
			}
		}
		if len(problems) == 0 && c.Languages()[0].Whole() {
			checkSafe(t, c.Languages()[0])
		}
	})
}

// Whatever stands in one message, it is refused or said as harmless text.
func FuzzMessage(f *testing.F) {
	en := fixture(f, "en", "", "")
	for _, seed := range []string{
		"Idioma", "<b>", "{{.Start}}", "{{range .X}}{{end}}", "{{{{.A}}}}", "a\u202eb", "a\u200bb", "&lt;", "\"/><script>", "\x00", "\xff", "}}{{",
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		file := fixture(t, "es", `"Idioma"`, tomlText(text))
		c, problems := i18n.Load([]string{"es"}, fstest.MapFS{"en.toml": {Data: en}, "es.toml": {Data: file}})
		if len(problems) == 0 && c.Languages()[0].Whole() {
			checkSafe(t, c.Languages()[0])
		}
	})
}

// tomlText writes a text as a TOML string.
func tomlText(text string) string {
	var b strings.Builder
	b.WriteByte('"')
	for _, c := range text {
		switch {
		case c == '"' || c == '\\':
			b.WriteString(`\` + string(c))
		case c < 0x20 || c == 0x7f:
			b.WriteString(`\u00` + strconv.FormatInt(0x100+int64(c), 16)[1:])
		default:
			b.WriteRune(c)
		}
	}
	return b.String() + `"`
}

func checkSafe(t *testing.T, l *i18n.Language) {
	t.Helper()
	for _, s := range translate.Samples(l) {
		said := s.Text.String()
		if s.Fault != "" || !utf8.ValidString(said) || strings.ContainsAny(said, "<>\x00\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069") {
			t.Errorf("%s passed and says %q, fault %q", s.ID, said, s.Fault)
		}
	}
}
