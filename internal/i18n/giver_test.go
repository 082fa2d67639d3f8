package i18n

import (
	"strings"
	"testing"
)

// What stands beside a place: the nearest words, in small letters, without marks.
func TestSlotOf(t *testing.T) {
	for _, row := range []struct {
		text string
		want slot
	}{
		{"{{.Who}} gives some.", slot{"", "gives"}},
		{"Then {{.Who}} gives some.", slot{"then", "gives"}},
		{"Some go to {{.Who}}.", slot{"to", ""}},
		{"Some go to {{.Who}}", slot{"to", ""}},
		{"{{.With}}{{.Who}} gives", slot{"", "gives"}},
		{"to {{.Who}}{{.With}} gives", slot{"to", ""}},
		{"From «{{.Who}}» to", slot{"", ""}}, // marks, and no words
		{"Nobody gives.", slot{}},
	} {
		if got := slotOf(sentenceOf(t, row.text), "Who"); got != row.want {
			t.Errorf("%s: %+v, want %+v", row.text, got, row.want)
		}
	}
}

// Two places are alike when the same word stands before both or behind both; that
// nothing stands there says nothing.
func TestSlotsAlike(t *testing.T) {
	for _, row := range []struct {
		a, b slot
		want bool
	}{
		{slot{"to", ""}, slot{"to", ""}, true}, {slot{"", "gives"}, slot{"then", "gives"}, true},
		{slot{"to", "has"}, slot{"to", "gives"}, true}, {slot{"to", "has"}, slot{"from", "has"}, true},
		{slot{"to", "has"}, slot{"from", "gives"}, false}, {slot{"", ""}, slot{"", ""}, false},
		{slot{"to", ""}, slot{"from", ""}, false}, {slot{"", "has"}, slot{"", "gives"}, false},
	} {
		if got := row.a.alike(row.b); got != row.want {
			t.Errorf("%+v and %+v are alike: %v, want %v", row.a, row.b, got, row.want)
		}
	}
}

// Who gives and who takes are exchanged where more messages say it the other way round
// than say it so.
func TestTwoPeople(t *testing.T) {
	const gives, givesBack = "{{.Who}} gives some to {{.With}}.", "{{.With}} gives some to {{.Who}}."
	for _, row := range []struct {
		name  string
		texts []string
		wrong int // how many are told
	}{
		{"all alike", []string{gives, "Then {{.Who}} gives three to {{.With}}."}, 0},
		{"one the other way round", []string{gives, gives, givesBack}, 1},
		{"two against two", []string{gives, gives, givesBack, givesBack}, 4},
		{"one against one", []string{gives, givesBack}, 2},
		{"other words", []string{gives, "{{.With}} has more than {{.Who}}."}, 0},
		{"one person", []string{gives, "Some go to {{.Who}}.", "{{.With}} gives some."}, 0},
		{"alike on one side, crossed on none", []string{gives, "{{.Who}} gives {{.With}} some."}, 0},
		{"one message", []string{gives}, 0},
	} {
		b := &builder{file: &File{}, lang: &Language{messages: map[string]*ready{}}}
		for i, text := range row.texts {
			m := &Message{English: noEnglish, Line: i + 1}
			m.ID = "own.frame." + strings.Repeat("x", i+1)
			b.file.Messages = append(b.file.Messages, m)
			b.lang.messages[m.ID] = &ready{text: sentenceOf(t, text)}
		}
		b.checkTwoPeople()
		if got := len(b.proof.Wrong); got != row.wrong {
			t.Errorf("%s: %d are told, want %d: %v", row.name, got, row.wrong, b.proof.Wrong)
		}
	}
}
