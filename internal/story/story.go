// Package story tells a problem as sentences with roles. It chooses ids only
// (frame, people, thing, setting); the words come from the language files.
package story

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// Role is what a sentence does in the story.
type Role uint8

const (
	Scene    Role = iota + 1 // nothing to count with
	Known                    // gives a quantity that the question needs
	Extra                    // gives a quantity that the question does not need
	Question                 // asks
)

// Sentence is one sentence of a story.
type Sentence struct {
	Role     Role
	Quantity problem.Role // what a Known sentence gives or the Question asks; empty otherwise
	Line     phrase.Line
}

// Story is a problem told, in no language yet.
type Story struct {
	Frame       string // "add-to-result.1": the kind and its wording
	Problem     problem.Problem
	ExtraNumber int    // 0 when every number is needed
	A, B        string // "person.lina"
	People      int    // how many of them the story is about: 0, A, or both
	Thing       string // "thing.shell"
	Setting     string // "setting.harbour"
	Sentences   []Sentence
	Own         *OwnWords   // nil for a story of ours
	AnswerFrame phrase.Line // the question as a sentence with a blank
	Answer      phrase.Line // the same with the answer and its label
}

// OwnWords are a story in a teacher's words, which take the place of Sentences.
type OwnWords struct {
	By     map[string]OwnText // by language tag; at least that of the class
	Class  string             // the tag of the class's language
	Answer OwnText            // in the class's language; no runs for none
}

// OwnText is a text in one language, its numbers apart.
type OwnText struct {
	Tag         string
	RightToLeft bool
	Runs        []OwnRun
}

// OwnRun is a piece of an OwnText.
type OwnRun struct {
	Text   string
	Number bool // a number, perhaps in words
	Asked  bool // the number that the story asks for: a line to write on until it is known
}

// In is the text for a page in a language: its own, or that of the class.
func (w *OwnWords) In(tag string) OwnText {
	if t, ok := w.By[tag]; ok {
		return t
	}
	return w.By[w.Class]
}

// Compared says who has the bigger and who the smaller amount, where a story
// compares two people; false for other stories and for baskets and boxes, which
// a picture leaves without names.
func (s Story) Compared() (bigger, smaller phrase.Value, ok bool) {
	if s.Problem.Kind().Situation() != problem.Compare || s.People < 2 {
		return bigger, smaller, false
	}
	a, b := phrase.Person("A", s.A), phrase.Person("B", s.B)
	for _, q := range s.Problem.Told() {
		switch q.Role {
		case problem.RoleBigger: // told first, of A
			return a, b, true
		case problem.RoleSmaller:
			return b, a, true
		}
	}
	return bigger, smaller, false
}
