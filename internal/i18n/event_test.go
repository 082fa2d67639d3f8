package i18n

import (
	"regexp"
	"strings"
	"testing"
	"testing/fstest"
)

func TestEventProblems(t *testing.T) {
	for _, test := range []problemTest{
		{"missing sentence", "es", `so-out = "Luego subieron otra vez con sus cucharas, muy despacito."`, ``, `
			locales/es.toml:X: event.kitchen.soup.so-out is missing: stories of the kind take-from-change need it
			  hint: write the sentence for the English "Then they carried their spoons up again, very slowly."`},
		{"missing for all", "es", `open = "“¡Sopa para todos!”, gritaba el abuelo de piso en piso."`, ``, `
			locales/es.toml:X: event.kitchen.soup.open is missing: stories of the kind take-from-result need it
			  hint: write the sentence for the English "\"Soup for everyone!\" called grandfather, floor by floor."`},
		{"missing idea", "es", `idea = "El abuelo prepara sopa y los vecinos llegan a comer."`, ``, `
			locales/es.toml:X: event.kitchen.soup.idea is missing
			  hint: write the sentence for the English "Grandfather cooks soup, and the neighbors come to eat."`},
		{"empty", "es", `open = "“¡Sopa para todos!”, gritaba el abuelo de piso en piso."`, `open = ""`, `
			locales/es.toml:X: event.kitchen.soup.open has no text
			  hint: write the sentence for the English "\"Soup for everyone!\" called grandfather, floor by floor."`},
		{"misspelt key", "es", `so-out = `, `so-uot = `, `
			locales/es.toml:X: event.kitchen.soup.so-out is missing: stories of the kind take-from-change need it
			  hint: write the sentence for the English "Then they carried their spoons up again, very slowly."
			locales/es.toml:X: event.kitchen.soup.so-uot is said by no story and is left out
			  hint: did you mean "so-out"?`},
		{"key of other events", "es", `so-out = `, "first = \"Uno\"\nso-out = ", `
			locales/es.toml:X: event.kitchen.soup.first is said by no story and is left out
			  hint: take it out; the event tells no story that needs it, or others are said instead`},
		{"group of other events", "es", `so-start = `, "add-to.open = \"Uno\"\nso-start = ", `
			locales/es.toml:X: event.kitchen.soup.add-to.open is said by no story and is left out
			  hint: take it out: the event tells no such stories`},
		{"misspelt group", "es", `so-start = `, "take-form.open = \"Uno\"\nso-start = ", `
			locales/es.toml:X: event.kitchen.soup.take-form.open is said by no story and is left out
			  hint: did you mean "take-from"?`},
		{"unknown event", "es", `[event.kitchen.soup]`, `[event.kitchen.soop]`, `
			locales/es.toml:X: [event.kitchen.soop] is not an event and is left out
			  hint: did you mean "event.kitchen.soup"?`},
		{"missing quantity", "es", `comieron {{.Change.bowl}}.`, `comieron sopa.`, `
			locales/es.toml:X: event.kitchen.soup.out: the place {{.Change}} is missing
			  hint: write {{.Change}} where it belongs in the sentence`},
		{"quantity twice", "es", `comieron {{.Change.bowl}}.`, `comieron {{.Change.bowl}}, {{.Change.number}}.`, `
			locales/es.toml:X: event.kitchen.soup.out has {{.Change}} twice
			  hint: tell each number once`},
		{"other quantity", "es", `comieron {{.Change.bowl}}.`, `comieron {{.Change.bowl}} de {{.Start}}.`, `
			locales/es.toml:X: event.kitchen.soup.out has no place {{.Start}}
			  hint: did you mean "{{.Change}}"? there are: {{.Change}}`},
		{"quantity where none is told", "es", `cucharas enormes.`, `cucharas enormes: {{.Change}}.`, `
			locales/es.toml:X: event.kitchen.soup.out-unknown has no place {{.Change}}
			  hint: this message has no places`},
		{"form of no thing", "es", `En su olla había sopa para {{.Start.bowl}}.`, `En su olla había sopa para {{.Start.bowll}}.`, `
			locales/es.toml:X: thing.soup-bowl.count-bowll is missing; event.kitchen.soup.start asks for it in line X
			  hint: did you mean "bowl"?`},
		{"answer without a blank", "es", `blank-bowl = "{{.N}} platos"`, ``, `
			locales/es.toml:X: thing.soup-bowl.blank-bowl is missing; event.kitchen.soup.answer-end asks for it in line X
			  hint: add it there, or say the sentence without the form`},
		{"thing left out", "vi", `[thing.floor]`, `[thing.tray]`, `
			locales/vi.toml:X: thing.tray.count is not a message of en.toml and is left out
			  hint: did you mean "thing.floor.count"?
			locales/vi.toml:X: thing.tray.blank is not a message of en.toml and is left out
			  hint: did you mean "thing.floor.blank"?`},
		{"thing of an event left out", "es", `[thing.floor]
gender = "masculine"
count = { one = "{{.N}} piso", other = "{{.N}} pisos" }
blank = "{{.N}} pisos"`, "", `
			locales/es.toml:X: thing.floor.count is missing; event.kitchen.soup.extra asks for it in line X
			  hint: write [thing.floor] with all that is said of it`},
		{"not a sentence", "es", `so-start = `, "open-x = 3\nso-start = ", `
			locales/es.toml:X: event.kitchen.soup.open-x is not text
			  hint: put it in double quotes`},
		{"table in a group", "es", `so-start = `, "chain = { a = { b = \"c\" } }\nso-start = ", `
			locales/es.toml:X: event.kitchen.soup.chain.a is not a sentence
			  hint: write it in double quotes: a = "..."`},
		{"text in the place of an event", "es", `[event.kitchen.soup]`, "[event.kitchen]\nsop = \"a\"\n[event.kitchen.soup]", `
			locales/es.toml:X: event.kitchen.sop is not an event
			  hint: events stand in tables: [event.harbour.board], and their sentences below`},
		{"markup", "es", `cucharas enormes.`, `<b>cucharas</b>.`, `
			locales/es.toml:X: event.kitchen.soup.out-unknown: "<" is a sign of markup
			  hint: write words only; pages add their own markup`},
	} {
		want := strings.TrimPrefix(strings.ReplaceAll(test.want, "\n\t\t\t", "\n"), "\n")
		if got := anyLine.ReplaceAllString(problemsOf(t, test.tag, test.old, test.new), "${1}X"); got != want {
			t.Errorf("%s: %q for %q\nwant\n%s\ngot\n%s", test.name, test.new, test.old, want, got)
		}
	}
}

// anyLine is the number of a line.
var anyLine = regexp.MustCompile(`(\.toml:|in line )\d+`)

// A language has special sentences where its grammar wants them, and the most
// special is said; staleness follows from all sentences of an event.
func TestGroups(t *testing.T) {
	const special = `
[event.kitchen.soup.take-from]
out = "A, {{.Change}}."
[event.kitchen.soup.take-from-result]
out = "B, {{.Change}}."
[event.kitchen.soup.chain]
out = "C, {{.Change}}."
`
	load := func(spanish string) *Language {
		folder := fstest.MapFS{"en.toml": {Data: fixture(t, "en", "", "")}, "es.toml": {Data: []byte(spanish)}}
		c, problems := Load([]string{"es"}, folder)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		return in(t, c, "es")
	}
	spanish := string(fixture(t, "es", "", ""))
	es := load(strings.Replace(spanish, `out = "Los vecinos de arriba se comieron {{.Change.bowl}}."`, "", 1) + special)
	for groups, want := range map[string]string{
		"take-from-result take-from": "B, 3\u00a0platos de sopa.",
		"take-from-start take-from":  "A, 3\u00a0platos de sopa.",
		"take-then-add chain":        "C, 3\u00a0platos de sopa.",
	} {
		line := soup("out", bowls("Change", 3))
		line.Groups = strings.Fields(groups)
		if got := es.Say(line).String(); got != want {
			t.Errorf("%s: want %q, got %q", groups, want, got)
		}
	}
	source := hashSentences(eventOf(t, "en"))
	signed := strings.Replace(spanish, `review = "draft"`, `reviewed = "test only, 2026-10-01"`, 1)
	for _, row := range []struct {
		name, source string
		stale        bool
	}{{"no source", "", true}, {"old source", "source = \"0123456789\"", true}} {
		if l := load(strings.Replace(signed, "[event.kitchen.soup]", "[event.kitchen.soup]\n"+row.source, 1)); !l.open {
			t.Errorf("%s: want the language stale", row.name)
		}
	}
	f, problems := Parse("es", strings.Replace(spanish, "[event.kitchen.soup]", "[event.kitchen.soup]\nsource = \""+source+"\"", 1))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	e := f.Event("event.kitchen.soup")
	e.English = &Event{ID: e.ID, hash: source}
	if e.Stale() || e.Unheld() {
		t.Errorf("want a telling of this English, got stale %t, unheld %t", e.Stale(), e.Unheld())
	}
	if moved := eventOf(t, "en"); hashSentences(reversed(moved)) != source {
		t.Error("the order of the sentences changes their hash")
	}
}

// A telling keeps which English it was told from: it is stale when that has changed, and
// not held when it does not say. English itself, and what has no English, is neither.
func TestToldFromEnglish(t *testing.T) {
	english := &Event{ID: "event.kitchen.soup", hash: "new"}
	for _, row := range []struct {
		name           string
		event          *Event
		stale, notHeld bool
	}{
		{"told from this English", &Event{Source: "new", English: english}, false, false},
		{"told from another", &Event{Source: "old", English: english}, true, false},
		{"told from this, and read", &Event{Source: "new 0123456789 1", English: english}, false, false},
		{"told from another, and read", &Event{Source: "old 0123456789 1", English: english}, true, false},
		{"does not say", &Event{English: english}, false, true},
		{"has no English", &Event{Source: "old", English: noEvent}, false, false},
		{"has no English and does not say", &Event{English: noEvent}, false, false},
	} {
		if stale, notHeld := row.event.Stale(), row.event.Unheld(); stale != row.stale || notHeld != row.notHeld {
			t.Errorf("%s: stale %v, not held %v; want %v, %v", row.name, stale, notHeld, row.stale, row.notHeld)
		}
	}
	if english.English = english; english.Stale() || english.Unheld() {
		t.Error("English is told from itself")
	}
}

func eventOf(t *testing.T, tag string) *Event {
	t.Helper()
	f, problems := Parse(tag, string(fixture(t, tag, "", "")))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return f.Event("event.kitchen.soup")
}

func reversed(e *Event) *Event {
	out := &Event{ID: e.ID}
	for i := range e.Sentences {
		out.Sentences = append(out.Sentences, e.Sentences[len(e.Sentences)-1-i])
	}
	return out
}
