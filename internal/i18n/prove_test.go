package i18n

import (
	"strings"
	"testing"

	"golang.org/x/text/language"
)

// provedSmall is a small file, with some of its text replaced, held against English.
func provedSmall(t *testing.T, tag, old, new string, upTo int) *Proof {
	t.Helper()
	source, problems := smallSource()
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	f, problems := Parse(tag, string(fixture(t, tag, old, new)))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return source.Prove(f, upTo)
}

// A thing with something missing is not used, nor an event that counts it; everything
// else is.
func TestBlocksWithSomethingMissing(t *testing.T) {
	l := provedSmall(t, "es", "count = { one = \"{{.N}} piso\", other = \"{{.N}} pisos\" }\nblank = \"{{.N}} pisos\"", "count = { one = \"{{.N}} piso\", other = \"{{.N}} pisos\" }", maxProblems).Language
	for id, want := range map[string]bool{"thing.floor": false, "thing.soup-bowl": true, "event.kitchen.soup": false, "page.title": true, "character.fox": true} {
		if got := l.Has(id); got != want {
			t.Errorf("%s: in the language %v, want %v", id, got, want)
		}
	}
	if l.Whole() {
		t.Error("something is missing, and the language is whole")
	}
	if whole := provedSmall(t, "es", "", "", maxProblems).Language; !whole.Whole() || !whole.Has("thing.floor") || !whole.Has("event.kitchen.soup") {
		t.Error("nothing is missing, and the language is not whole")
	}
}

// No more is gathered than was asked for, of problems and of remarks.
func TestProofHasAnEnd(t *testing.T) {
	const language, weeks = `language = "Idioma"`, `title = "En casa, semana del {{.Week}}"`
	wrong := func(text string) string { return strings.Replace(text, `"`, `" `, 1) } // begins with a space
	for upTo, whole := range map[int]bool{1: false, 2: false, 3: true} {
		p := provedSmall(t, "es", weeks+"\n"+language, wrong(weeks)+"\n"+wrong(language), upTo)
		if len(p.Wrong) != min(upTo, 2) || (p.Language != nil) != whole {
			t.Errorf("up to %d problems: %d of 2 are told, a language %v, want %v", upTo, len(p.Wrong), p.Language != nil, whole)
		}
		p = provedSmall(t, "es", language, language+"\nold = \"a\"\nolder = \"b\"\noldest = \"c\"", upTo)
		if len(p.Unused) != upTo {
			t.Errorf("up to %d remarks: %d of 3 are told", upTo, len(p.Unused))
		}
	}
}

// Every event that asks a thing for a form that it has not is left out, not the first
// alone; the first one is named.
func TestEveryEventThatAsks(t *testing.T) {
	shelf, move := &Event{ID: "event.library.shelf", Line: 3}, &Event{ID: "event.library.move", Line: 9}
	for i, e := range []*Event{shelf, move} {
		e.Sentences = []Sentence{{Key: "start", Line: 10*i + 4}, {Key: "end", Line: 10*i + 5}}
	}
	b := &builder{file: &File{}, lang: &Language{blocks: map[string]bool{"thing.book": true}}, wanted: map[wanted]int{}, broken: map[string]bool{}, lacks: map[string]bool{}}
	w := wanted{"thing.book", "count", "old"}
	for _, e := range []*Event{shelf, move} {
		for i := range e.Sentences {
			b.wants(w, asker{event: e, sentence: i})
		}
	}
	b.checkThings()
	if !b.broken[shelf.ID] || !b.broken[move.ID] {
		t.Errorf("left out are %v, want both events", b.broken)
	}
	const want = "thing.book.count-old is missing; event.library.shelf.start asks for it in line 4"
	if len(b.proof.Missing) != 1 || b.proof.Missing[0].Text != want {
		t.Errorf("told %v, want once %q", b.proof.Missing, want)
	}
}

// The forms that stand beside a name, or behind the key of a message, each once.
func TestFormsOfStem(t *testing.T) {
	f := &File{}
	for _, id := range []string{
		"character.fox.name", "character.fox.gender", "character.fox.genitive", "character.heron.genitive", "character.heron.dative",
		"strategy.doubles.name", "strategy.doubles.name-instrumental", "strategy.make-ten.name-instrumental", "help.way-instrumental", "thing.pot.name-old",
	} {
		m := &Message{}
		m.ID = id
		m.split()
		f.Messages = append(f.Messages, m)
	}
	for s, want := range map[stem]string{
		{"character", "name"}: "genitive dative", {"strategy", "name"}: "instrumental", {"help", "way"}: "instrumental", {"setting", "name"}: "",
	} {
		if got := strings.Join((&builder{file: f}).formsOfStem(s), " "); got != want {
			t.Errorf("%v has the forms %q, want %q", s, got, want)
		}
	}
}

// Numbers beyond 1000 are of the category other where a file has it, and else say what
// 1000 says; in Cornish that is the dual (CLDR 48.2).
func TestFormsBeyondAThousand(t *testing.T) {
	cornish, err := NewPlurals(language.MustParse("kw"))
	if err != nil {
		t.Fatal(err)
	}
	for other, want := range map[string]string{"{{.N}} other": " other", "": " two"} {
		m := &Message{Family: "page", Key: "weeks", English: &Message{source: source{places: []string{"N"}}}}
		m.Zero, m.One, m.Two, m.Few, m.Many, m.Other = "{{.N}} zero", "{{.N}} one", "{{.N}} two", "{{.N}} few", "{{.N}} many", other
		b := &builder{file: &File{}, lang: &Language{header: header{script: "Latn"}, plural: cornish}, broken: map[string]bool{}, lacks: map[string]bool{}}
		if other == "" { // which Cornish needs; a rule like Russian's does not
			b.lang.plural = &Plurals{localizer: cornish.localizer, table: cornish.table, met: cornish.met}
			b.lang.plural.met[Other] = 0
		}
		forms := b.pluralForms(m)
		if forms == nil {
			t.Fatal(b.proof.Problems())
		}
		if got := forms[Other][1].text; got != want {
			t.Errorf("with %q for other it is %q, want %q", other, got, want)
		}
	}
}
