package strategy

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// SlipName is a way to go wrong that belongs to how a child works, rather than
// to how the child reads the story. It is the id used in message ids. All of
// them: common practice, no published source.
type SlipName string

const (
	CountedStart  SlipName = "counted-start"  // counting on or back: the start number was counted as one
	OneTooFar     SlipName = "one-too-far"    // counting on or back: one count too many
	EachOnce      SlipName = "each-once"      // counting all: one left out, or counted twice
	BoxesAgain    SlipName = "boxes-again"    // partners of ten: one box too few or too many
	OtherDouble   SlipName = "other-double"   // a double next to the right one
	NotMended     SlipName = "not-mended"     // worked with a number near by and left it there
	MendedWrong   SlipName = "mended-wrong"   // mended what was too much by more, or too little by less
	NotTaken      SlipName = "not-taken"      // give and take: only one of the numbers changed
	RestForgotten SlipName = "rest-forgotten" // broke a number in two and used one part
	WholeUsed     SlipName = "whole-used"     // broke a number in two and then used all of it again
	TurnedAround  SlipName = "turned-around"  // the last part went the other way
	PartLost      SlipName = "part-lost"      // tens, ones or a piece of them were left out
	CarryDropped  SlipName = "carry-dropped"  // the ones made a ten, which got lost
	LeftOut       SlipName = "left-out"       // one of three or four numbers was left out
	JumpLost      SlipName = "jump-lost"      // a jump was not counted
	StepLost      SlipName = "step-lost"      // a step on the way up was not counted
	Landing       SlipName = "landing"        // a jump landed ten away
	TensCounted   SlipName = "tens-counted"   // the number of tens was given as the answer
	StepOff       SlipName = "step-off"       // a step of the way was one off
)

// SlipNames lists every slip.
func SlipNames() []SlipName {
	return []SlipName{
		CountedStart, OneTooFar, EachOnce, BoxesAgain, OtherDouble, NotMended, MendedWrong, NotTaken, RestForgotten,
		WholeUsed, TurnedAround, PartLost, CarryDropped, LeftOut, JumpLost, StepLost, Landing, TensCounted, StepOff,
	}
}

// Line tells a teacher what the child did.
func (n SlipName) Line() phrase.Line { return phrase.Say("mistake." + string(n) + ".name") }

// Slip is a wrong number that a way typically gives.
type Slip struct {
	Name   SlipName
	Answer int // never the right one, never negative
	// Working is what the child wrote or thought; nil where the number alone is
	// known.
	Working problem.Expression
	Ask     phrase.Line // what to ask a child who got it; it never tells the answer
}

// slip adds the wrong number that a wrong working comes to. Its sentence has the
// working as Equation, and the values.
func (w *working) slip(name SlipName, wrong problem.Expression, values ...phrase.Value) {
	n := wrong.Value()
	if n < 0 {
		return
	}
	shown := phrase.Equation("Equation", problem.Equal(wrong, problem.Number(n)))
	w.addSlip(Slip{name, n, wrong, ask(name, append([]phrase.Value{shown}, values...)...)})
}

// slipTo adds a wrong number that no single working shows.
func (w *working) slipTo(name SlipName, answer int, values ...phrase.Value) {
	w.addSlip(Slip{Name: name, Answer: answer, Ask: ask(name, values...)})
}

func ask(name SlipName, values ...phrase.Value) phrase.Line {
	return phrase.Say("mistake."+string(name)+".hint", values...)
}

// addSlip adds a slip that is one: its number is wrong, and its sentence keeps the
// answer back. The first of two that give the same number by the same slip stands
// for both.
func (w *working) addSlip(s Slip) {
	known := func(t Slip) bool { return t.Name == s.Name && t.Answer == s.Answer }
	wrong := s.Answer >= 0 && s.Answer != w.way.Calculation.Value()
	if wrong && !w.tells(s.Ask) && !slices.ContainsFunc(w.way.Slips, known) {
		w.way.Slips = append(w.way.Slips, s)
	}
}

// tells reports whether the answer can be read in a line, other than as a number
// that is given.
func (w *working) tells(line phrase.Line) bool {
	c := w.way.Calculation
	answer := func(t problem.Term) bool { return t.Value == c.Value() && !t.Unknown }
	return !slices.Contains(c.Numbers, c.Value()) && slices.ContainsFunc(line.Values, func(v phrase.Value) bool {
		return v.Kind == phrase.KindNumber && v.N == c.Value() ||
			slices.ContainsFunc(v.Equation.Sides(), func(e problem.Expression) bool { return slices.ContainsFunc(e, answer) })
	})
}

// then is e with one more term.
func then(e problem.Expression, op problem.Op, n int) problem.Expression {
	return append(slices.Clone(e), problem.Term{Op: op, Value: n})
}

// stepOff are the slips of a step that came out one too low or too high: the one to
// look at again, with its gap.
func (w *working) stepOff(step problem.Equation) {
	answer := w.way.Calculation.Value()
	for _, wrong := range []int{answer - 1, answer + 1} {
		w.slipTo(StepOff, wrong, phrase.Equation("Step", step))
	}
}

// missing is the step that asks what a part lacks of its whole: 2 + ? = 7.
func missing(part, whole int) problem.Equation {
	return problem.Equal(problem.Sum(part, whole-part).Asking(1), problem.Number(whole))
}

// nearSlip is one of the two slips of working with a number near by in place of the
// exact one. A working that comes to that one explains nothing: 10 + 2 = 12 for 12 + 2.
func (w *working) nearSlip(name SlipName, e problem.Expression, near, exact int) {
	if e.Value() != exact {
		w.slip(name, e, inPlaceOf(near, exact)...)
	}
}

// inPlaceOf are the values of the two slips of working with a number near by.
func inPlaceOf(near, exact int) []phrase.Value {
	return []phrase.Value{number("Near", near), number("B", exact)}
}

// brokenInTwo are the slips of adding need + rest to a number, the ten between
// them: one part forgotten, or all of it added once more.
func (w *working) brokenInTwo(start, need, rest int) {
	small, ten := need+rest, start+need
	for _, used := range []int{need, rest} {
		w.slip(RestForgotten, problem.Sum(start, used), number("Used", used), number("B", small))
	}
	w.slip(WholeUsed, problem.Sum(ten, small), number("Used", need), number("B", small), number("Ten", ten))
	w.stepOff(missing(need, small))
}
