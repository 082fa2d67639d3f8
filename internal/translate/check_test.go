package translate

import (
	"io/fs"
	"regexp"
	"strings"
	"testing"
	"testing/fstest"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/locales"
)

// toDo is everything that is wrong with a language file, or to be read again.
func toDo(t *testing.T, tag string, folders ...fs.FS) diag.Diagnostics {
	t.Helper()
	draft, problems := Open(tag, folders...)
	if len(problems) > 0 {
		return problems
	}
	return append(draft.ToDo(), draft.Stale...)
}

func TestCheckFixtures(t *testing.T) {
	folder := fixtures
	for _, tag := range i18n.Tags(folder) {
		if got := toDo(t, tag, folder); len(got) > 0 {
			t.Errorf("%s: want no problems, got %v", tag, got)
		}
	}
}

// What is surely a slip, beside what Load refuses.
func TestCheck(t *testing.T) {
	tests := []struct{ name, tag, old, new, want string }{
		{"two spaces", "es", `Aquí puede ayudar`, `Aquí  puede ayudar`, `
			locales/es.toml:36: help.way has two spaces side by side
			  hint: write one`},
		{"space at the end", "es", `"Idioma"`, `"Idioma "`, `
			locales/es.toml:24: page.language begins or ends with a space
			  hint: take it out`},
		{"no full stop", "es", `puede ayudar {{.Way}}.`, `puede ayudar {{.Way}}`, `
			locales/es.toml:36: help.way ends without '.', where the English ends with '.'
			  hint: write '.' at the end, or say it as the English does`},
		{"statement for a question", "es", `¿Cuántos platos de sopa se comieron los vecinos de arriba?`, `Los vecinos comieron.`, `
			locales/es.toml:78: event.kitchen.soup.ask-out ends without '?', where the English ends with '?'
			  hint: write '?' at the end, or say it as the English does`},
		{"question not opened", "es", `¿Cuántos platos de sopa se`, `Cuántos platos de sopa se`, `
			locales/es.toml:78: event.kitchen.soup.ask-out: a question or exclamation is not opened or not closed
			  hint: write ¿ ... ? and ¡ ... !`},
		{"European question mark", "ar", `الأعلى؟`, `الأعلى?`, `
			locales/ar.toml:76: event.kitchen.soup.ask-out has the mark "?" of another script
			  hint: write the mark of your own`},
		{"Latin word", "ar", `"في الميناء"`, `"في port الميناء"`, `
			locales/ar.toml:33: setting.harbour.at: "port" has letters of another script
			  hint: write it in the script of ar`},
		{"Latin letter in a Cyrillic word", "ru", `"гавань"`, `"гaвань"`, `
			locales/ru.toml:39: setting.harbour.name: "гaвань" has letters of another script
			  hint: write it in the script of ru`},
		{"still English", "es", `"En casa, semana del {{.Week}}"`, `"At home, week of {{.Week}}"`, `
			locales/es.toml:23: page.title is still English
			  hint: write the sentence for the English "At home, week of {{.Week}}"`},
		{"still English in a story", "es", `“¡Sopa para todos!”, gritaba el abuelo de piso en piso.`, `\"Soup for everyone!\" called grandfather, floor by floor.`, `
			locales/es.toml:68: event.kitchen.soup.open is still English
			  hint: tell it in es: "\"Soup for everyone!\" called grandfather, floor by floor."`},
		{"two spaces in a story", "es", `gritaba el abuelo`, `gritaba  el abuelo`, `
			locales/es.toml:68: event.kitchen.soup.open has two spaces side by side
			  hint: write one`},
		{"stale story", "es", "[event.kitchen.soup]", "[event.kitchen.soup]\nsource = \"0000000000\"", `
			locales/es.toml:66: event.kitchen.soup: the English has changed since this was told
			  hint: read the English again; where the telling fits it, write source = "5ea882e718" below [event.kitchen.soup]`},
		{"stale", "es", `language = "Idioma"`, `language = { hash = "0000000000", other = "Idioma" }`, `
			locales/es.toml:24: page.language: the English has changed since this was translated
			  hint: the English is "Language"; where the text fits it, write hash = "802e6425d4" in its table`},
		{"refused by Load too", "es", `language = "Idioma"`, ``, `
			locales/es.toml:23: page.language is missing
			  hint: write the sentence for the English "Language"`},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			folder := fstest.MapFS{"en.toml": {Data: fixture(t, "en", "", "")}}
			folder[test.tag+".toml"] = &fstest.MapFile{Data: fixture(t, test.tag, test.old, test.new)}
			want := strings.TrimPrefix(strings.ReplaceAll(test.want, "\n\t\t\t", "\n"), "\n")
			if got := toDo(t, test.tag, folder).Error(); got != want {
				t.Errorf("%s: %q for %q\nwant\n%s\ngot\n%s", test.tag, test.new, test.old, want, got)
			}
		})
	}
}

// A signature covers the very words that were read: what changes afterwards is open
// again, alone, and the language says that some of it is newer.
func TestSignatureCoversExactWords(t *testing.T) {
	english := string(fixture(t, "en", "", ""))
	folder := fstest.MapFS{"en.toml": {Data: []byte(english)}, "es.toml": {Data: stamp(t, "es")}}
	data, err := Sign("es", "M. G.", "2026-10-01", folder)
	if err != nil {
		t.Fatal(err)
	}
	signed := string(data)
	edited := func(old, new string) string {
		if !strings.Contains(signed, old) {
			t.Fatalf("the signed file has no %q", old)
		}
		return strings.Replace(signed, old, new, 1)
	}
	tests := []struct {
		name, en, es string
		open         string // what is open again; empty for nothing
	}{
		{"as it was signed", english, signed, ""},
		{"a note changed", strings.Replace(english, "Top of the page", "Head of the page", 1), signed, ""},
		{"a remark changed", english, edited("[language]", "# ours\n[language]"), ""},
		{"English changed", strings.Replace(english, "with big spoons", "with spoons", 1), signed, "event.kitchen.soup"},
		{"a text changed", english, edited(`"Idioma"`, `"Lengua"`), "page.language"},
		{"a form changed", english, edited(`one = "{{.N}} piso"`, `one = "{{.N}} planta"`), "thing.floor.count"},
		{"a sentence changed", english, edited("cucharas enormes", "cucharas grandes"), "event.kitchen.soup"},
		{"a gender changed", english, edited(`gender = "masculine"`, `gender = "feminine"`), "the head of the file, a number word or a gender"},
		{"a message without a hash", english, regexp.MustCompile(`language = \{ hash = "[^"]*", other = "Idioma" \}`).ReplaceAllString(signed, `language = "Idioma"`), "page.language"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			folder := fstest.MapFS{"en.toml": {Data: []byte(test.en)}, "es.toml": {Data: []byte(test.es)}}
			es := loaded(t, folder)
			if es.Draft() || es.Reviewed() != "M. G., 2026-10-01" || es.PartlyRead() != (test.open != "") {
				t.Errorf("want it signed, partly %v; got draft %v, %q, partly %v", test.open != "", es.Draft(), es.Reviewed(), es.PartlyRead())
			}
			draft, _ := Open("es", folder)
			open := append(draft.Stale, draft.Unread...)
			if test.open == "" && len(open) > 0 || test.open != "" && (len(open) == 0 || !strings.HasPrefix(open[0].Text, test.open)) {
				t.Errorf("want %q open, got %v", test.open, open)
			}
			if len(draft.ToDo()) > 0 {
				t.Errorf("want nothing to mend, got %v", draft.ToDo())
			}
		})
	}
	// Another reader stands for what is new, and for nothing else.
	folder["es.toml"] = &fstest.MapFile{Data: []byte(edited(`"Idioma"`, `"Lengua"`))}
	data, err = Sign("es", "A. B.", "2026-11-02", folder)
	if err != nil {
		t.Fatal(err)
	}
	again := string(data)
	if !strings.Contains(again, `reviewed = "M. G., 2026-10-01; A. B., 2026-11-02"`) || strings.Count(again, ` 2"`) != 1 || !regexp.MustCompile(`hash = "\w+ \w+ 2", other = "Lengua"`).MatchString(again) {
		t.Errorf("want the new text signed by the second reader alone, got\n%s", again)
	}
	folder["es.toml"] = &fstest.MapFile{Data: data}
	if es := loaded(t, folder); es.PartlyRead() {
		t.Error("signed again: want all of it read")
	}
}

// stamp gives every message of a fixture its hash.
func stamp(t testing.TB, tag string) []byte {
	t.Helper()
	data, err := Stamp(tag, fixtures)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

func TestStamp(t *testing.T) {
	for _, tag := range []string{"es", "ar", "ru", "vi", "ht"} {
		folder := fstest.MapFS{"en.toml": {Data: fixture(t, "en", "", "")}, tag + ".toml": {Data: stamp(t, tag)}}
		draft, problems := Open(tag, folder)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		for _, m := range draft.file.Messages {
			if m.Stale() || m.Unheld() {
				t.Errorf("%s: %s: want the hash of its English after stamping", tag, m.ID)
			}
		}
		again, err := Stamp(tag, folder)
		if err != nil || string(again) != string(folder[tag+".toml"].Data) {
			t.Errorf("%s: stamping twice changed the file: %v", tag, err)
		}
	}
	lines := []struct {
		line, key string
		plain     bool
		want      string
	}{
		{`language = "Idioma"`, "language", true, `language = { HASH, other = "Idioma" }`},
		{`  language="a \" = b" # a note`, "language", true, `  language= { HASH, other = "a \" = b" } # a note`},
		{`weeks = { one = "a", other = "b" }`, "weeks", false, `weeks = { HASH, one = "a", other = "b" }`},
		{`  one = "a"`, "weeks", false, "  HASH\n  one = \"a\""},
		{`count.one = "a"`, "count", false, "count.HASH\ncount.one = \"a\""},
		{`change.feminine = "a"`, "feminine", true, `change.feminine = { HASH, other = "a" }`},
	}
	for _, test := range lines {
		if got := stampLine(test.line, "HASH", test.key, test.plain); got != test.want {
			t.Errorf("stampLine(%q): want %q, got %q", test.line, test.want, got)
		}
	}
	const own = "[help]\nway = \"Aquí puede ayudar {{.Way}}.\"\n"
	crowded := []byte("help = { way = \"Aquí puede ayudar {{.Way}}.\" }\n" + string(fixture(t, "es", own, "")))
	_, err := Stamp("es", fstest.MapFS{"en.toml": {Data: fixture(t, "en", "", "")}, "es.toml": {Data: crowded}})
	if err == nil {
		t.Error("Stamp of a message inside a table in one line: want an error, the file is left as it was")
	}
}

// Every file that comes with the program can be stamped, however it is written.
func TestStampLocales(t *testing.T) {
	for _, tag := range i18n.Tags(locales.Files) {
		if tag == i18n.SourceTag {
			continue
		}
		stamped, err := Stamp(tag, locales.Files)
		if err != nil {
			t.Errorf("%s: %v", tag, err)
			continue
		}
		folder := fstest.MapFS{tag + ".toml": {Data: stamped}}
		draft, problems := Open(tag, locales.Files, folder)
		if len(problems) > 0 {
			t.Errorf("%s, stamped: %v", tag, problems)
			continue
		}
		if unheld := unheld(draft.file); len(unheld) > 0 {
			t.Errorf("%s, stamped: %v", tag, unheld[0])
		}
	}
}
