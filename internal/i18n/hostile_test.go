package i18n

import (
	"bytes"
	"fmt"
	"os"
	"strings"
	"testing"
	"testing/fstest"
	"time"
	"unicode"

	"homebuild/internal/phrase"
	"homebuild/internal/textfile"
)

// A message is text and places. Each row is something that Go templates, HTML
// or Unicode could do with more.
func TestHostileMessages(t *testing.T) {
	const place = "hint: a place is only a name, {{.Start}}, or a name and a form, {{.Start.accusative}}"
	tests := []struct{ name, tag, text, want string }{
		{"loop", "es", `{{range .X}}a{{end}}`, `"{{range .X}}" is not a place`},
		{"endless width", "es", `{{printf "%999999999d" 1}}`, `"{{printf \"%999999999d\" 1}}" is not a place`},
		{"call", "es", `{{call .F}}`, `"{{call .F}}" is not a place`},
		{"variable", "es", `{{$x := 1}}`, `"{{$x := 1}}" is not a place`},
		{"pipeline", "es", `{{.A | html}}`, `"{{.A | html}}" is not a place`},
		{"inclusion", "es", `{{template "x"}}`, `"{{template \"x\"}}" is not a place`},
		{"definition", "es", `{{define "x"}}{{end}}`, `"{{define \"x\"}}" is not a place`},
		{"condition", "es", `{{if .A}}a{{end}}`, `"{{if .A}}" is not a place`},
		{"comment", "es", `{{/* a */}}`, `"{{/* a */}}" is not a place`},
		{"trimming", "es", `{{- .A -}}`, `"{{- .A -}}" is not a place`},
		{"spaces", "es", `{{ .A }}`, `"{{ .A }}" is not a place`},
		{"path", "es", `{{.A.b.c}}`, `"{{.A.b.c}}" is not a place`},
		{"small letter", "es", `{{.a}}`, `"{{.a}}" is not a place`},
		{"left open", "es", `{{.A`, `"{{.A" is not a place`},
		{"only closed", "es", `A}}`, `"}}" is not a place`},
		{"one brace", "es", `{.A}`, `"{.A}" is not a place`},
		{"long", "es", `{{` + strings.Repeat("x", 200), `"{{` + strings.Repeat("x", 38) + `..." is not a place`},

		{"script", "es", `<script>alert(1)</script>`, `"<" is a sign of markup`},
		{"closing sign", "es", `a > b`, `">" is a sign of markup`},
		{"override", "es", `a\u202Eb`, "U+202E turns the direction of the text"},
		{"embedding", "ar", `\u202Bا`, "U+202B turns the direction of the text"},
		{"isolate", "ar", `\u2067ا\u2069`, "U+2067 turns the direction of the text"},
		{"mark", "ar", `ا\u200F`, "U+200F turns the direction of the text"},
		{"Arabic letter mark", "ar", `ا\u061C`, "U+061C turns the direction of the text"},
		{"zero-width space", "es", `a\u200Bb`, "U+200B is invisible or has no meaning"},
		{"non-joiner in Latin", "es", `a\u200Cb`, "U+200C is invisible and the Latn script does not use it"},
		{"joiner in Latin", "es", `a\u200Db`, "U+200D is invisible and the Latn script does not use it"},
		{"soft hyphen", "es", `a\u00ADb`, "U+00AD is invisible or has no meaning"},
		{"byte order mark", "es", `\uFEFFa`, "U+FEFF is invisible or has no meaning"},
		{"null", "es", `a\u0000`, "U+0000 is invisible or has no meaning"},
		{"escape", "es", `a\u001B[31m`, "U+001B is invisible or has no meaning"},
		{"line break", "es", `a\nb`, "the text has a line break or a tab"},
		{"lost letter", "es", `a\uFFFDb`, "U+FFFD stands for a letter that was lost"},
		{"private letter", "es", `a\uE000b`, "U+E000 is invisible or has no meaning"},
		{"no letter", "es", `a\uFFFEb`, "U+FFFE is invisible or has no meaning"},
		{"tag letter", "es", `a\U000E0041b`, "U+E0041 is invisible or has no meaning"},
		{"line separator", "es", `a\u2028b`, "U+2028 is invisible or has no meaning"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			old, line := `language = "Idioma"`, 24
			if test.tag == "ar" {
				old, line = `language = "اللغة"`, 10
			}
			got := problemsOf(t, test.tag, old, `language = "`+strings.ReplaceAll(test.text, `"`, `\"`)+`"`)
			want := fmt.Sprintf("locales/%s.toml:%d: page.language: %s", test.tag, line, test.want)
			if first, hint, _ := strings.Cut(got, "\n"); first != want || hint == "" || strings.Contains(test.want, "place") && strings.TrimSpace(hint) != place {
				t.Errorf("Load with %s\nwant %s\ngot  %s", test.text, want, got)
			}
		})
	}
}

// Of all letters of Unicode, those that are refused are the invisible, those without a
// meaning, and the two signs of markup: none of them slips through where most texts are
// written. Source: the general categories and properties of Unicode, as the standard
// library has them.
func TestEveryCharacter(t *testing.T) {
	last := unicode.MaxRune
	if testing.Short() {
		last = 0xffff
	}
	for c := rune(0); c <= last; c++ {
		if unicode.Is(unicode.Cs, c) {
			continue // half a letter: no text has one
		}
		refused := unicode.In(c, unicode.Cc, unicode.Cf, unicode.Co, unicode.Zl, unicode.Zp, unicode.Noncharacter_Code_Point, unicode.Bidi_Control) ||
			c == '<' || c == '>' || c == unicode.ReplacementChar
		if wrong := CheckCharacters(string(c), "Latn"); (wrong != nil) != refused {
			t.Errorf("%U: want it refused %v, got %v", c, refused, wrong)
		}
	}
}

// The Persian plural joins its letters with the non-joiner: it must pass.
func TestJoinersOfTheScript(t *testing.T) {
	if got := problemsOf(t, "ar", `language = "اللغة"`, `language = "زبان\u200Cها"`); got != "" {
		t.Errorf("Load with a non-joiner in Arabic script: want no problem, got %s", got)
	}
}

// Files of the largest size, built to cost as much as they can.
func TestHostileFiles(t *testing.T) {
	base := string(fixture(t, "es", "", ""))
	many, long := 9000, textfile.MaxSize-100
	if testing.Short() {
		many, long = 3*maxProblems, 20_000
	}
	fill := func(line func(i int) string) []byte {
		var b strings.Builder
		b.WriteString(base)
		for i := 0; i < many; i++ {
			b.WriteString(line(i))
		}
		return []byte(b.String())
	}
	tests := []struct {
		name string
		data []byte
		want string // the first problem; empty where all of it is left out
	}{
		{"too large", bytes.Repeat([]byte{'#'}, textfile.MaxSize+1), "locales/es.toml: the file is larger than 1 MB"},
		{"nested lists", append([]byte("a = "), []byte(strings.Repeat("[", long))...), "locales/es.toml:1: the list is not closed"},
		{"nested tables", append([]byte("a = "), []byte(strings.Repeat("{a=", long/3))...), "locales/es.toml:1: this line cannot be read: "},
		{"one long name", append([]byte("["), []byte(strings.Repeat("a.", long/2)+"a]")...), "locales/es.toml:1: names and lists stand more than 8 deep in each other"},
		{"one long name with a text", []byte(strings.Repeat("a.", long/2) + "a = \"x\""), "locales/es.toml:1: names and lists stand more than 8 deep in each other"},
		{"many unknown ids", fill(func(i int) string { return fmt.Sprintf("[page.titel-%d]\nother = \"x\"\n", i) }), ""},
		{"many forms", fill(func(i int) string { return fmt.Sprintf("[thing.floor.blank-x%d]\nother = \"x {{.N.a}}\"\n", i) }), "locales/es.toml:87: "},
		{"many bad messages", fill(func(i int) string { return fmt.Sprintf("[character.fox.x%d]\nother = \"{{\"\n", i) }), "locales/es.toml:87: character.fox.x0: "},
		{"many unknown events", fill(func(i int) string { return fmt.Sprintf("[event.kitchen.soup%d]\nopen = \"x\"\n", i) }), ""},
		{"many unknown sentences", fill(func(i int) string { return fmt.Sprintf("[event.kitchen.soup.x%d]\nopen = \"{{.A}}\"\n", i) }), ""},
		{"many number words", fill(func(i int) string { return fmt.Sprintf("[words.t%d]\n1000 = \"x\"\n", i) }), ""},
		{"one long text", []byte(strings.Replace(base, "Idioma", strings.Repeat("{{.A}}", 100_000), 1)), "locales/es.toml:24: page.language has 600000 characters"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			start := time.Now()
			c, problems := Load([]string{"es"}, fstest.MapFS{"en.toml": {Data: fixture(t, "en", "", "")}, "es.toml": {Data: test.data}})
			t.Logf("%d bytes: %d problems in %v", len(test.data), len(problems), time.Since(start))
			if test.want == "" && len(problems) == 0 {
				if n := len(in(t, c, "es").Unused()); n == 0 || n > maxProblems {
					t.Errorf("want up to %d remarks, got %d", maxProblems, n)
				}
				return
			}
			if test.want == "" || len(problems) == 0 || !strings.HasPrefix(problems[0].String(), test.want) {
				t.Fatalf("first problem: want %s..., got %.300s", test.want, problems.Error())
			}
			if len(problems) > 2*maxProblems {
				t.Errorf("want at most %d problems, got %d", 2*maxProblems, len(problems))
			}
		})
	}
}

// Places are filled, never read again: a person's own text that looks like a
// place stays as it is, and keeps its own kind for the page to escape.
func TestOwnTextIsNotATemplate(t *testing.T) {
	c, problems := Load([]string{"en"}, os.DirFS("testdata/locales"))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	const text = `<b>{{.Week}}{{printf "%d" 1}}`
	got := in(t, c, "en").Say(phrase.Say("page.title", phrase.Text("Week", text)))
	if last := got[len(got)-1]; last != (Run{RunOwnText, text}) {
		t.Errorf("Say: want the run %q as own text, got %+v", text, last)
	}
}
