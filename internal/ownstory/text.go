package ownstory

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/pattern"
	"homebuild/internal/problem"
)

// Numeral is a whole number in a text: digits, a number word, or what a mark
// says to be one.
type Numeral struct {
	Value      int
	Start, End int  // bytes of Text.Plain; of a mark, all its words
	Marked     bool // the teacher marked it as one that counts
	Name       bool // the teacher marked it as part of a name, which never counts
	Word       bool // written in words

	said       bool // a mark says the number that the words have: [a dozen = 12]
	behindName bool // it stands behind a name, as in "Room 4"
}

// Text is a teacher's story, a translation of it or its answer, its marks taken
// out.
type Text struct {
	Plain    string // what is published
	Numerals []Numeral
}

// Error is what is wrong with a line of the teacher's, and what to write instead.
// Both are lower case without a full stop; Hint may hold lines to paste.
type Error struct {
	Setting    string // the line that it is about: "text", "kind"; empty for the text that was read
	Text, Hint string
	Code       string // as diagnostics have them; empty for most
	Value      string
}

func (e *Error) Error() string { return e.Text }

const marksHint = "write marks like this: [6 kites] for a number that counts, [a dozen = 12] for words, [Room 4 =] for a name"

var marks = pattern.Of(`\[([^\[\]]*)\]`)

// Read finds the numbers of a text and takes its marks out. The error is an
// *Error.
func (l Language) Read(text string) (Text, error) {
	var t Text
	at := 0
	for _, mark := range marks().FindAllStringSubmatchIndex(text, -1) {
		t.add(l, text[at:mark[0]])
		if err := t.addMarked(l, text[mark[2]:mark[3]]); err != nil {
			return Text{}, err
		}
		at = mark[1]
	}
	t.add(l, text[at:])
	if strings.ContainsAny(t.Plain, "[]") {
		return Text{}, &Error{Text: `a "[" or a "]" stands alone`, Hint: marksHint, Code: diag.Brackets}
	}
	t.findNames()
	return t, nil
}

// add adds words that stand outside of marks.
func (t *Text) add(l Language, words string) {
	for _, n := range l.numerals(words) {
		n.Start, n.End = n.Start+len(t.Plain), n.End+len(t.Plain)
		t.Numerals = append(t.Numerals, n)
	}
	t.Plain += words
}

// addMarked adds what stands between brackets: words with one number, which then
// counts; words, "=" and their number, which is one number among others; or words
// and "=", whose numbers are part of a name.
func (t *Text) addMarked(l Language, inside string) error {
	shown, meant, said := strings.Cut(strings.ReplaceAll(inside, "＝", "="), "=")
	name := said && strings.TrimSpace(meant) == ""
	if !said || name {
		meant = shown
	}
	shown = strings.TrimSpace(shown)
	found := l.numerals(meant)
	if len(found) == 0 || shown == "" || !name && (len(found) > 1 || found[0].Value > problem.Largest) {
		return &Error{Text: fmt.Sprintf("the mark %q does not hold one number up to %d", "["+inside+"]", problem.Largest), Hint: marksHint, Code: diag.Mark, Value: "[" + inside + "]"}
	}
	t.Numerals = append(t.Numerals, Numeral{
		Value: found[0].Value, Start: len(t.Plain), End: len(t.Plain) + len(shown),
		Marked: !said, Name: name, Word: found[0].Word && (!said || name), said: said && !name,
	})
	t.Plain += shown
	return nil
}

// Mark writes the text as a week file has it, with marks around the numbers that
// count where [Text.Counted] would take others.
func (t Text) Mark(counted []int) string {
	bare := t
	bare.Numerals = slices.Clone(t.Numerals)
	for i := range bare.Numerals {
		bare.Numerals[i].Marked = false
	}
	plainly := slices.Equal(bare.Counted(), counted)
	var out strings.Builder
	at := 0
	for i, n := range t.Numerals {
		words := t.Plain[n.Start:n.End]
		switch {
		case n.Name:
			words = "[" + words + " =]"
		case n.said && slices.Contains(counted, i):
			words = fmt.Sprintf("[%s = %d]", words, n.Value)
		case !plainly && slices.Contains(counted, i):
			words = "[" + words + "]"
		}
		out.WriteString(t.Plain[at:n.Start] + words)
		at = n.End
	}
	return out.String() + t.Plain[at:]
}
