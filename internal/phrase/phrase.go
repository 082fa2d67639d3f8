// Package phrase is the only road from the mathematics to words: a Line is a
// sentence to be said, without its words. It names a message and the numbers,
// things and people that go into the message's places; internal/i18n says it
// in a language. Nothing here knows any language.
package phrase

import (
	"cmp"
	"maps"
	"slices"

	"homebuild/internal/problem"
)

// Kind says what a value is, and so how a language writes it.
type Kind uint8

const (
	KindNumber   Kind = iota + 1 // a bare number: 8
	KindCounted                  // a counted thing: 8 shells
	KindBlank                    // "____ shells", or "____" without a thing
	KindPerson                   // a name
	KindEquation                 // 8 + ? = 14, kept left to right
	KindMessage                  // another message, such as the name of a strategy
	KindText                     // the teacher's own text, shown as it is
)

// Value fills one place of a message.
type Value struct {
	Name     string // the place: "Start" fills {{.Start}}
	Kind     Kind
	N        int              // KindNumber, KindCounted
	Words    bool             // the number in words where the language has them
	ID       string           // the id of a thing ("thing.shell"), a person ("character.fox") or a message
	Equation problem.Equation // KindEquation
	Text     string           // KindText
}

// Line is a message to say.
type Line struct {
	ID     string // the message
	Values []Value
	// Subject is the person who does what the sentence tells; a language whose
	// verbs agree with the person picks its form of the message by it. Empty
	// where the message has no person.
	Subject string
	// Groups are groups of sentences in which a language may say the message in a
	// way of its own, the most special first: with the group "add-to", the message
	// "event.harbour.board.open" is looked for as "event.harbour.board.add-to.open"
	// first. A language has them or not as its grammar wants it.
	Groups []string
}

// Say makes a Line.
func Say(id string, values ...Value) Line { return Line{ID: id, Values: values} }

// About returns l with its subject set to a person.
func (l Line) About(person string) Line {
	l.Subject = person
	return l
}

// Number fills a place with a bare number.
func Number(name string, n int) Value { return Value{Name: name, Kind: KindNumber, N: n} }

// Counted fills a place with n of a thing.
func Counted(name, thing string, n int) Value {
	return Value{Name: name, Kind: KindCounted, ID: thing, N: n}
}

// InWords returns v with its number written as a word where the language can.
func (v Value) InWords() Value {
	v.Words = true
	return v
}

// Blank fills a place with a line to write on and the thing, or with the line
// alone when thing is empty.
func Blank(name, thing string) Value { return Value{Name: name, Kind: KindBlank, ID: thing} }

// Person fills a place with a name.
func Person(name, person string) Value { return Value{Name: name, Kind: KindPerson, ID: person} }

// Equation fills a place with an equation.
func Equation(name string, q problem.Equation) Value {
	return Value{Name: name, Kind: KindEquation, Equation: q}
}

// Expression fills a place with one side of an equation: "8 + 2".
func Expression(name string, e problem.Expression) Value {
	return Value{Name: name, Kind: KindEquation, Equation: problem.Alone(e)}
}

// Message fills a place with another message that has no places itself.
func Message(name, id string) Value { return Value{Name: name, Kind: KindMessage, ID: id} }

// Text fills a place with a person's own text.
func Text(name, text string) Value { return Value{Name: name, Kind: KindText, Text: text} }

// Distinct gives one line of each message, the last where there are several,
// sorted by message id.
func Distinct(lines []Line) []Line {
	last := map[string]Line{}
	for _, l := range lines {
		last[l.ID] = l
	}
	return slices.SortedFunc(maps.Values(last), func(a, b Line) int { return cmp.Compare(a.ID, b.ID) })
}
