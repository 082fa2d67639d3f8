package translate

import (
	"strings"
	"testing"
)

// reading has two groups and a sentence that two messages say.
var reading = Reading{Tag: "so", Name: "Soomaali", Part: 1, Parts: 2, Groups: []Group{
	{"Stories", []Sentence{{IDs: []string{"event.a.b.open"}, Said: "One."}, {IDs: []string{"event.a.b.start"}, Said: "21 shells.", Ends: true}}},
	{"Replies", []Sentence{{IDs: []string{"reply.draw", "reply.near"}, Said: "Draw it.", Of: "7 + 5 = ?: 2"}}},
}}

// What a reader writes below a sentence comes back by message, as she wrote it.
func TestRemarks(t *testing.T) {
	const below1, below2, below3 = "1  One.\n>", "2  21 shells.\n>", "3  Draw it.  (7 + 5 = ?: 2)\n>"
	tests := []struct {
		name     string
		old, new string
		want     string // id, number, remark
	}{
		{"nothing written", below1, below1, ""},
		{"a remark", below2, below2 + " 21 shell", "event.a.b.start 2 21 shell|"},
		{"without the space", below2, below2 + "21 shell", "event.a.b.start 2 21 shell|"},
		{"two lines", below2, below2 + " first\n> second", "event.a.b.start 2 first\nsecond|"},
		{"more than one message", below3, below3 + " so", "reply.draw 3 so|reply.near 3 so|"},
		{"the empty mark left standing", below1, below1 + "\n> two", "event.a.b.open 1 two|"},
		{"a mark of direction in front", below1, strings.Replace(below1, "1", "\u200f1", 1) + " x", "event.a.b.open 1 x|"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			text := reading.String()
			if !strings.Contains(text, test.old) {
				t.Fatalf("%q is not in\n%s", test.old, text)
			}
			remarks, problems := Remarks("so", "so.txt", strings.Replace(text, test.old, test.new, 1))
			var got strings.Builder
			for _, r := range remarks {
				for _, x := range r.Reading {
					got.WriteString(r.ID + " " + string(rune('0'+x.Number)) + " " + x.Remark + "|")
				}
			}
			if got.String() != test.want || len(problems) > 0 {
				t.Errorf("want %q, got %q and %v", test.want, got.String(), problems)
			}
		})
	}
}

// What cannot be told where it belongs is said, with its line.
func TestRemarksThatBelongNowhere(t *testing.T) {
	whole := reading.String()
	tests := []struct{ name, tag, text, want string }{
		{"another language", "ar", whole, `a reading of "so"`},
		{"without the list", "so", whole[:strings.Index(whole, "----")], "the list at the end is missing"},
		{"above all sentences", "so", "> hello\n" + whole, "so.txt:1: this remark stands below no sentence"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			_, problems := Remarks(test.tag, "so.txt", test.text)
			if !strings.Contains(problems.Error(), test.want) {
				t.Errorf("want %q, got %v", test.want, problems)
			}
		})
	}
}
