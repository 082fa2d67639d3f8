package i18n

import (
	"strings"
	"testing"

	"homebuild/internal/phrase"
)

// A marked language says what it has, and the rest in English; what is said of a
// message stands between the marks that name it, one within the other.
func TestMarked(t *testing.T) {
	file, problems := Parse("pl", `[language]
name = "polski"
direction = "ltr"
digits = "latn"
equations = "ltr"
review = "draft"
[learn]
next = "Dalej"
[event.mountain-hut.goats]
start = "W stodole dziewczynka naliczyła {{.Start.accusative}}."
open = ""
`)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	source := english(t)
	marks := &Marks{}
	l := source.Prove(file, 1000).Language.Marked(source.Language, marks)
	const event = "event.mountain-hut.goats"
	for _, test := range []struct {
		line phrase.Line
		want string
	}{
		{phrase.Say("learn.next"), "[learn.next:Dalej]"},
		{phrase.Say("learn.back"), "[learn.back?:Back]"},
		{phrase.Say(event + ".open"), "[event.mountain-hut.goats.open?:Not even the dog ate before the last goat was home.]"},
		{phrase.Say(event+".start", phrase.Counted("Start", "thing.goat", 7)),
			"[event.mountain-hut.goats.start:W stodole dziewczynka naliczyła [thing.goat.count-accusative?:7 goats].]"},
		{phrase.Say(event+".answer-end", phrase.Blank("Result", "thing.goat")), "[event.mountain-hut.goats.answer-end?:[thing.goat.blank?:____ goats] stood in the barn.]"},
	} {
		if got := readable(marks, l.Say(test.line).String()); got != test.want {
			t.Errorf("%s: want %s, got %s", test.line.ID, test.want, got)
		}
	}
	if got := readable(marks, l.Word("learn.back")); got != "[learn.back?:Back]" {
		t.Errorf("a word: got %s", got)
	}
}

// readable writes marks as brackets.
func readable(marks *Marks, text string) string {
	var b strings.Builder
	for _, c := range text {
		switch mark, ok := marks.Read(c); {
		case !ok:
			b.WriteRune(c)
		case mark.ID == "":
			b.WriteByte(']')
		case mark.Pencil:
			b.WriteString("[" + mark.ID + "?:")
		default:
			b.WriteString("[" + mark.ID + ":")
		}
	}
	return strings.ReplaceAll(b.String(), noBreakSpace, " ")
}

// Each message has one sign of its own, and another while it is in pencil; no other
// letter is a mark.
func TestMarks(t *testing.T) {
	m := &Marks{}
	first, second := []rune(m.sign("page.skip", written))[0], []rune(m.sign("page.next", written))[0]
	if again := []rune(m.sign("page.skip", written))[0]; again != first || first == second {
		t.Errorf("page.skip has the signs %U and %U, page.next %U", first, again, second)
	}
	pencil := []rune(m.sign("page.next", inPencil))[0]
	for _, row := range []struct {
		sign rune
		want Mark
		ok   bool
	}{
		{first, Mark{"page.skip", false}, true}, {second, Mark{"page.next", false}, true}, {pencil, Mark{"page.next", true}, true},
		{inPencil, Mark{"page.skip", true}, true}, {markEnd, Mark{}, true},
		{'a', Mark{}, false}, {'界', Mark{}, false}, {written - 1, Mark{}, false}, {second + 1, Mark{}, false},
		{inPencil - 1, Mark{}, false}, {pencil + 1, Mark{}, false},
	} {
		if got, ok := m.Read(row.sign); got != row.want || ok != row.ok {
			t.Errorf("%U is %+v, %v; want %+v, %v", row.sign, got, ok, row.want, row.ok)
		}
	}
}

// What first stood in the places of a message is kept, in English.
func TestMarkValues(t *testing.T) {
	c, marks := fixtures(t), &Marks{}
	l := in(t, c, "ru").Marked(c.Source(), marks)
	for _, n := range []int{5, 7} {
		l.Say(phrase.Say("page.weeks", phrase.Number("N", n)))
	}
	l.Say(soup("out", bowls("Change", 3)))
	l.Say(phrase.Say("page.language"))
	for _, row := range []struct{ id, place, want string }{
		{"page.weeks", "N", "5"}, {"page.weeks", "Week", ""}, {"event.kitchen.soup.out", "Change", "3\u00a0bowls of soup"},
		{"page.language", "N", ""}, {"page.title", "Week", ""},
	} {
		if got := marks.Value(row.id, row.place); got != row.want {
			t.Errorf("in {{.%s}} of %s stood %q, want %q", row.place, row.id, got, row.want)
		}
	}
}

// A capital at the start of a sentence is behind the mark of what stands there; a bare
// number has no mark.
func TestMarkedPlaces(t *testing.T) {
	c, marks := fixtures(t), &Marks{}
	fox := phrase.Person("Who", "character.fox")
	for _, row := range []struct {
		tag  string
		line phrase.Line
		want string
	}{
		{"en", phrase.Say("own.has", fox, phrase.Blank("Gap", "")), "[own.has:[character.fox.name:The fox] has ____.]"},
		{"es", phrase.Say("own.has", fox, phrase.Blank("Gap", "")), "[own.has:[character.fox.name:El zorro] tiene ____.]"},
		{"es", phrase.Say("page.weeks", phrase.Number("N", 3)), "[page.weeks:3 semanas]"},
		{"es", phrase.Say("help.way", phrase.Message("Way", "strategy.doubles")), "[help.way:Aquí puede ayudar [strategy.doubles.name:los dobles].]"},
		{"es", soup("answer-end", phrase.Blank("Result", "thing.soup-bowl")), "[event.kitchen.soup.answer-end:Todavía había sopa para [thing.soup-bowl.blank-bowl:____ platos].]"},
		{"vi", soup("start", bowls("Start", 3)), "[event.kitchen.soup.start?:He had cooked [thing.soup-bowl.count:3 bowls of soup].]"},
		{"vi", phrase.Say("own.has", phrase.Person("Who", "character.heron"), phrase.Blank("Gap", "")), "[own.has:[character.heron.name?:The heron] có ____.]"},
	} {
		l := in(t, c, row.tag).Marked(c.Source(), marks)
		if got := readable(marks, l.Say(row.line).String()); got != row.want {
			t.Errorf("%s, %s: %s, want %s", row.tag, row.line.ID, got, row.want)
		}
	}
}
