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
