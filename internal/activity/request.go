package activity

import (
	"homebuild/internal/estimate"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// Request is what a week file asks for.
type Request struct {
	Week        string // the week's date, 2026-09-14
	Key         string // the site's key; another key gives other numbers
	Target      Target
	Focus       strategy.Name // the strategy the class practices; 0 for none
	Picture     picture.Kind  // 0 for the target's usual one
	Stories     int           // to try at home, 1 to 8; the worked one comes on top
	Extra       bool          // one story has a number that is not needed
	NumberWords bool          // numbers written as words
	Review      bool          // what was learned in an earlier week comes back in a story
	// Bears are the stories that problems are told in; nil for stories that bear
	// every amount. They are the same for all weeks of a year.
	Bears Bearer
	// Held reports whether stories of a kind are held back: they come back in no later
	// week. It is the same for all weeks of a year; nil holds nothing back.
	Held  func(problem.Kind) bool
	Kept  []Kept  // as families had them, the worked one first; empty: they are chosen
	Given []Given // problems of the teacher's own stories: they come first
	// Ladder asks for stories beside the week's own; empty for none.
	Ladder []Beside

	allows func(problem.Problem) bool // nil allows all
	review bool                       // for a story that brings an earlier week's skill back
	duty   duty
	unbent bool // stories of the kinds that the week would have without its strategy
}

// Given is the problem of a story that the teacher wrote: it is given, not chosen.
type Given struct {
	Problem     problem.Problem
	ExtraNumber int // a number that the story has and does not need; 0 for none
}

// Kept is a problem that stays as it was chosen.
type Kept struct {
	Problem problem.Problem
	Of      *Target // where it is not the week's: an earlier week's, whose skill it brought back; on a rung, a neighbor's
}

// Activity is one story problem with all that helps to solve it.
type Activity struct {
	Problem     problem.Problem
	ExtraNumber int  // 0 when every number is needed
	WantsExtra  bool // a number that nobody needs is to be chosen with the story; see With
	Estimate    estimate.Estimate
	HasEstimate bool // whether an estimate helps here; else the part-whole test does
	Picture     picture.Kind
	Grade       problem.Grade
	Given       bool // of a story that the teacher wrote
	Returns     bool // of a skill that an earlier week was about, brought back on purpose
	Rung        Rung
	Of          string // the id of the target that it is of: the week's, that earlier one's or a neighbor's

	within int             // the range of its target
	focus  strategy.Name   // the week's strategy; 0 for none
	good   []strategy.Name // those that the target is good for
}

// WeekPlan is a week's problems.
type WeekPlan struct {
	Request  Request
	Worked   Activity   // solved step by step on the page
	Stories  []Activity // to try at home
	Ladder   []Activity // beside them, the easier ones first
	Warnings []Warning
}

// All lists the worked problem and the ones to try, those of the ladder apart.
func (w WeekPlan) All() []Activity { return append([]Activity{w.Worked}, w.Stories...) }

// Warning tells the teacher of a wish that could not be met.
type Warning struct {
	Setting string // the setting of the week file that it is about
	Count   int    // how many stories, or sets of numbers, it is about
	Text    string // lower case, without a full stop
	Hint    string // the next step
}
