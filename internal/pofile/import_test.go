package pofile

import (
	"strings"
	"testing"
	"time"
)

// entry is the lines of an entry of an export, from its remarks to its end.
func entry(t *testing.T, file, id string) string {
	t.Helper()
	for _, e := range strings.Split(file, "\n\n") {
		if strings.Contains(e, "\nmsgctxt \""+id+"\"\n") {
			return strings.TrimSuffix(e, "\n")
		}
	}
	t.Fatalf("there is no entry %s", id)
	return ""
}

// What a translator's program shows of a message, after the GNU gettext manual ("The
// Format of PO Files").
func TestEntry(t *testing.T) {
	ru := string(Export(open(t, "ru", read(t, "ru"))))
	if want := "# Places such as {{.Number}} stay as they are; put them where your language wants them.\n"; !strings.Contains(ru, want) {
		t.Errorf("the head: want %q, got %.600s", want, ru)
	}
	if want := `"Plural-Forms: nplurals=4; plural=n%10==1 && n%100!=11 ? 0 : n%10>=2 && n%10<=4 && (n%100<12 || n%100>14) ? 1 : 2;\n"`; !strings.Contains(ru, want) {
		t.Errorf("the head: want %s, got %.600s", want, ru)
	}
	got := entry(t, ru, "thing.letter.count-accusative")
	want := `#. msgstr[0] is one: 1, 21, 31, 41, 51, 61 …
#. msgstr[1] is few: 2, 3, 4, 22, 23, 24 …
#. msgstr[2] is many: 0, 5, 6, 7, 8, 9 …
#. msgstr[3] is other: no whole number
#: locales/ru.toml:`
	if !strings.Contains(got, want) || !strings.HasSuffix(got, `
msgctxt "thing.letter.count-accusative"
msgid "{{.N}} letter"
msgid_plural "{{.N}} letters"
msgstr[0] "{{.N}} письмо"
msgstr[1] "{{.N}} письма"
msgstr[2] "{{.N}} писем"
msgstr[3] "{{.N}} письма"`) {
		t.Errorf("a thing: got\n%s", got)
	}
	if got := entry(t, ru, "event.harbour.board.start"); !strings.HasPrefix(got, "#. People get on ") || !strings.HasSuffix(got, `
msgid "At the harbor, she counted {{.Start}} on board."
msgstr "В гавани на борту {{.Start.was}}."`) {
		t.Errorf("a sentence: got\n%s", got)
	}
}

// What is written in another program comes into the file, and what a check would refuse
// is told with its line.
func TestImport(t *testing.T) {
	es := read(t, "es")
	file := string(Export(open(t, "es", es)))
	tests := []struct {
		name, old, new  string
		changed         int
		inFile, refused string // that must be there; empty for none
	}{
		{"a text", `msgstr "Ir al contenido"`, `msgstr "Al contenido"`, 1, `other = "Al contenido"`, ""},
		{"a text on two lines", `msgstr "Ir al contenido"`, "msgstr \"\"\n\"Al \"\n\"contenido\"", 1, `other = "Al contenido"`, ""},
		{"a form", `msgstr[0] "{{.N}} piso"`, `msgstr[0] "{{.N}} planta"`, 1, `one = "{{.N}} planta", other = "{{.N}} pisos"`, ""},
		{"a text with quotes", `msgstr "Ir al contenido"`, `msgstr "Ir al \"contenido\""`, 1, `other = "Ir al \"contenido\""`, ""},
		{"an empty text leaves what there was", `msgstr "Ir al contenido"`, `msgstr ""`, 0, `other = "Ir al contenido"`, ""},
		{"fuzzy texts are not taken", "msgctxt \"page.skip\"\nmsgid \"Skip to the main part\"\nmsgstr \"Ir al contenido\"", "#, fuzzy\nmsgctxt \"page.skip\"\nmsgid \"Skip to the main part\"\nmsgstr \"Al contenido\"", 0, `other = "Ir al contenido"`, ""},
		{"an obsolete entry", `msgstr "Ir al contenido"`, "msgstr \"Ir al contenido\"\n\n#~ msgctxt \"page.old\"\n#~ msgid \"Old\"\n#~ msgstr \"Viejo\"", 0, "", ""},
		{"another expression of the same", "nplurals=2; plural=n==1 ? 0 : 1;", "nplurals=2; plural=(n != 1);", 0, "", ""},
		{"forms in another order", "nplurals=2; plural=n==1 ? 0 : 1;", "nplurals=2; plural=(n == 1);", 0, "", "look exchanged"},
		{"left in English", `msgstr "Ir al contenido"`, `msgstr "Skip to the main part"`, 0, `other = "Ir al contenido"`, "page.skip is still English"},
		{"a place lost", `msgstr "Semana del {{.Day}} de {{.Month}} de {{.Year}}"`, `msgstr "Semana del {{.Day}} de {{.Month}}"`, 0, `de {{.Year}}"`, "page.week: the place {{.Year}} is missing"},
		{"a message that is not there", `msgctxt "page.skip"`, `msgctxt "page.skipp"`, 0, "", "page.skipp is no text of the file"},
		{"no context", "msgctxt \"page.skip\"\n", "", 0, "", "has no msgctxt"},
		{"an entry twice", "msgid \"Skip to the main part\"\nmsgstr \"Ir al contenido\"", "msgid \"Skip to the main part\"\nmsgstr \"Ir al contenido\"\n\nmsgctxt \"page.skip\"\nmsgid \"Skip to the main part\"\nmsgstr \"Al contenido\"", 0, "", "page.skip stands twice, first in line"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if strings.Count(file, test.old) == 0 {
				t.Fatalf("the export has no %q", test.old)
			}
			in := taken(t, open(t, "es", es), strings.Replace(file, test.old, test.new, 1))
			if test.refused == "" && (in.Changed != test.changed || len(in.Refused) > 0) || !strings.Contains(string(in.Text), test.inFile) {
				t.Errorf("want %d changed and %q in the file, got %d, %v", test.changed, test.inFile, in.Changed, in.Refused)
			}
			if test.refused != "" && (len(in.Refused) == 0 || !strings.Contains(in.Refused.Error(), test.refused) || in.Refused[0].Line == 0 || in.Refused[0].File != "locales/xx.po") {
				t.Errorf("want %q refused with its line, got %v", test.refused, in.Refused)
			}
			if got := string(in.Text); in.Changed == 0 && test.name != "forms in another order" && got != es {
				t.Errorf("nothing was taken, and the file is another one: %s", difference(got, es))
			}
		})
	}
}

// One slip leaves the other texts to be taken.
func TestImportTakesTheOthers(t *testing.T) {
	es := read(t, "es")
	file := string(Export(open(t, "es", es)))
	file = strings.NewReplacer(`msgstr "Ir al contenido"`, `msgstr "Ir  al contenido"`, `msgstr "Idiomas"`, `msgstr "Lenguas"`).Replace(file)
	in := taken(t, open(t, "es", es), file)
	if in.Changed != 1 || len(in.Refused) != 1 || string(in.Text) != strings.Replace(es, `"Idiomas"`, `"Lenguas"`, 1) {
		t.Errorf("want one text taken and one refused, got %d and %v", in.Changed, in.Refused)
	}
}

// A text goes back with the English that it was made from: what is old stays marked,
// what was held against the English of today is marked so.
func TestImportKeepsStaleness(t *testing.T) {
	es := strings.Replace(read(t, "es"), `hash = "`+hashOfSkip(t)+`"`, `hash = "0000000000"`, 1)
	d := open(t, "es", es)
	file := string(Export(d))
	if got := entry(t, file, "page.skip"); !strings.Contains(got, "\n#, fuzzy\n") {
		t.Fatalf("want an entry whose English has changed fuzzy, got\n%s", got)
	}
	if in := taken(t, d, file); in.Fuzzy != 1 || string(in.Text) != es {
		t.Errorf("as it was: want one fuzzy entry and nothing changed, got %d", in.Fuzzy)
	}
	looked := strings.Replace(file, "#, fuzzy\n", "", 1)
	if in := taken(t, d, looked); in.Changed != 1 || string(in.Text) != read(t, "es") {
		t.Errorf("looked at: want the hash of today's English, got %s", difference(string(in.Text), read(t, "es")))
	}
	old := strings.Replace(looked, `msgid "Skip to the main part"`, `msgid "Skip to the page"`, 1)
	old = strings.Replace(old, `msgstr "Ir al contenido"`, `msgstr "Al contenido"`, 1)
	in := taken(t, d, old)
	if after := open(t, "es", string(in.Text)); in.Changed != 1 || len(after.Stale) != 1 {
		t.Errorf("made from an older English: want the text taken and marked, got %d changed, %v", in.Changed, after.Stale)
	}
}

// hashOfSkip is the hash of the message page.skip in the Spanish file.
func hashOfSkip(t *testing.T) string {
	t.Helper()
	line, _, _ := strings.Cut(read(t, "es")[strings.Index(read(t, "es"), "skip = { hash ="):], "\n")
	return strings.Split(line, `"`)[1]
}

// What the file lacks goes out behind all else and comes into its place.
func TestImportOfWhatIsMissing(t *testing.T) {
	ru := read(t, "ru")
	for _, lost := range [][2]string{
		{`few = "{{.N}} письма", many = "{{.N}} писем"`, `many = "{{.N}} писем"`},
		{"\nblank-accusative = { hash = \"225413206d\", other = \"{{.N}} писем\" }", ""},
		{"\nstart = \"В гавани на борту {{.Start.was}}.\"", ""},
		{"other = \"Что дальше?\"", "other = \"\""},
	} {
		less := strings.Replace(ru, lost[0], lost[1], 1)
		d := open(t, "ru", less)
		if len(d.Missing) == 0 {
			t.Fatalf("nothing is missing without %q", lost[0])
		}
		in := taken(t, d, string(Export(open(t, "ru", ru))))
		after := open(t, "ru", string(in.Text))
		if in.Changed != 1 || len(in.Refused) > 0 || !after.Whole() || len(after.Stale) > 0 {
			t.Errorf("without %q: want one text taken and nothing missing, got %d, %v, %v", lost[0], in.Changed, in.Refused, after.Missing)
		}
		if lines := strings.Count(string(in.Text), "\n") - strings.Count(less, "\n"); lines > 1 {
			t.Errorf("without %q: %d lines more", lost[0], lines)
		}
	}
}

// Files from strangers: told, at once, and without harm.
func TestHostileFiles(t *testing.T) {
	d := open(t, "es", read(t, "es"))
	head := "msgid \"\"\nmsgstr \"\"\n\"Plural-Forms: nplurals=2; plural=n!=1;\\n\"\n\n"
	for _, test := range []struct{ name, text, want string }{
		{"not a PO file", "PK\x03\x04", "xx.po:1: this line is not of a PO file"},
		{"empty", "", "the head has no Plural-Forms"},
		{"a text alone", "\"text\"\n", "xx.po:1: this line is not of a PO file"},
		{"an index that fills the memory", head + "msgctxt \"page.skip\"\nmsgid \"a\"\nmsgid_plural \"b\"\nmsgstr[999999999] \"x\"\n", "xx.po:8: this line is not of a PO file"},
		{"two entries without a line between", head + "msgctxt \"page.skip\"\nmsgid \"a\"\nmsgstr \"x\"\nmsgctxt \"page.week\"\nmsgid \"a\"\nmsgstr \"x\"\n", "xx.po:8: this line is not of a PO file"},
		{"an entry without its text", head + "msgctxt \"page.skip\"\nmsgid \"a\"\n\nmsgstr \"x\"\n", "xx.po:7: this line is not of a PO file"},
		{"another language", strings.Replace(head, `"Plural`, "\"Language: fr\\n\"\n\"Plural", 1), `the head says that the language is "fr"`},
		{"an expression without an end", strings.Replace(head, "n!=1", strings.Repeat("(", 900), 1), "the head has no Plural-Forms"},
		{"an expression of one parenthesis", strings.Replace(head, "n!=1", "(", 1), "the head has no Plural-Forms"},
		{"forms that do not fit", strings.Replace(head, "n!=1", "n>2", 1), "1 has the form 0, and so has a number of another kind"},
	} {
		start := time.Now()
		_, problems := Import(d, "locales/xx.po", test.text)
		if len(problems) != 1 || !strings.Contains(problems.Error(), test.want) || time.Since(start) > 5*time.Second {
			t.Errorf("%s: want %q at once, got %v after %v", test.name, test.want, problems, time.Since(start))
		}
	}
}
