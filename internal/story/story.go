// Package story tells a problem as sentences with roles. It chooses what happens
// and where, and the number that nobody needs; the words come from the language
// files.
//
// A [Place] of the town has its cast, its things and its events; an [Event] is a
// small tale, told for every unknown of what it tells. A [Teller] tells a week as
// one afternoon in one place.
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
	Event       string // "harbour.board"; empty for a teacher's own story
	Place       string // "harbour"
	Problem     problem.Problem
	ExtraNumber int      // 0 when every number is needed
	Cast        []string // "character.captain"
	Thing       string   // what is counted: "thing.passenger"
	Sentences   []Sentence
	Own         *OwnWords   // nil for a story of ours
	AnswerFrame phrase.Line // the question as a sentence with a blank
	Answer      phrase.Line // the same with the answer and its label
	So          phrase.Line // what the answer settles; none in a teacher's own story

	labels [2]phrase.Value // of the bigger and the smaller amount; none where nothing is compared
}

// Choice is the story without its words; see there.
func (s Story) Choice() Choice { return Choice{s.Event, s.Problem, s.ExtraNumber} }

// Compared says what stands beside the bigger and the smaller amount, where a
// story of ours compares two; false for other stories.
func (s Story) Compared() (bigger, smaller phrase.Value, ok bool) {
	return s.labels[0], s.labels[1], s.labels[0].ID != ""
}
