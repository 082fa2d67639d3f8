package mistake

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// reading is a question as the rules see it.
type reading struct {
	Question
	calc   problem.Calculation // the one that finds the answer
	told   []int               // the numbers that the story gives and the question needs
	answer int
	middle int // what the first of two steps comes to
	most   int // the largest number on the way to the answer, the extra one included
}

func newReading(q Question) reading {
	r := reading{Question: q, calc: q.Problem.Calculation(), answer: q.Problem.Answer(), most: q.largest()}
	if r.chain() {
		r.middle = q.Problem.Steps()[0].Calculation().Value()
	}
	for _, t := range q.Problem.Given() {
		r.told = append(r.told, t.Value)
	}
	return r
}

func (r reading) kind() problem.Kind { return r.Problem.Kind() }

func (r reading) chain() bool { return r.kind().Steps() != nil }

func (r reading) compares() bool { return r.kind().Situation() == problem.Compare }

// reversible reports whether the wrong operation is best told as a comparison
// read the other way round: the bigger or the smaller amount is asked.
func (r reading) reversible() bool {
	u := r.kind().Unknown()
	return u == problem.Bigger || u == problem.Smaller
}

// practices reports whether the week's way is n.
func (r reading) practices(n strategy.Name) bool { return r.leads() && r.Ways[0].Name == n }

// leads reports whether the first way leads the replies: the week's way does, and so
// does counting, which every child finds. Up to 20 a class may have met no other way
// that the numbers ask for; beyond, all ways of its target are taught beside each
// other (2.NBT.B.5 of CCSS-M 2010, from memory).
func (r reading) leads() bool {
	if len(r.Ways) == 0 {
		return false
	}
	switch n := r.Ways[0].Name; n {
	case strategy.CountAll, strategy.CountOn, strategy.CountBack, strategy.TwoParts, r.Focus:
		return true
	}
	return r.Focus == 0 || !r.small()
}

// small reports whether numbers are so small that children count with them, and do
// not write them place by place (common practice, no published source).
func (r reading) small() bool { return r.calc.Largest() <= 20 }

// away is what is said of a number that is one, ten or a hundred away from the
// answer, where numbers are written place by place; small ones are counted.
func (r reading) away(n int) string {
	if r.small() || r.kind() == problem.TogetherBoth {
		return ""
	}
	off := n - r.answer
	switch off = max(off, -off); {
	case off == 1:
		return "reply.away.one"
	case off == 10 && n > 0:
		return "reply.away.ten"
	case off == 100 && n > 0 && r.calc.Largest() > 100:
		return "reply.away.hundred"
	}
	return ""
}

// tells reports whether the answer can be read in a line, other than as a number
// that the story tells, or as a digit of one (7 - 4 for the ones of 44 - 37).
func (r reading) tells(line phrase.Line) bool {
	answer := r.answer
	if slices.Contains(r.told, answer) {
		return false
	}
	return slices.ContainsFunc(line.Values, func(v phrase.Value) bool {
		if v.Name == turnedValue {
			return false
		}
		return v.Kind == phrase.KindNumber && v.N == answer || slices.ContainsFunc(v.Equation.Sides(), func(e problem.Expression) bool {
			return slices.ContainsFunc(e, func(t problem.Term) bool { return t.Value == answer && !t.Unknown })
		})
	})
}

// hint is what to look at when a cause gave a wrong number.
func (r reading) hint(cause Cause, w wrong) phrase.Line {
	id := "mistake." + string(cause) + ".hint"
	switch {
	case cause == AddedInstead || cause == SubtractedInstead:
		id = "mistake.wrong-operation." + r.wrongOperation()
	case cause == FirstStepOnly && r.compares():
		id = "mistake.first-step-only.compare"
	case cause == SmallerFromLarger && (!r.Columns || r.small()):
		return r.turnedPlace()
	case cause == AllDigitsAdded && r.calc.Largest() >= 100:
		id = "mistake.all-digits-added.hundreds"
	case cause == CarryDropped:
		return strategy.CarryLine(r.calc.Value() - w.answer)
	}
	if w.working == nil {
		return phrase.Say(id)
	}
	shown := phrase.Equation("Equation", problem.Equal(w.working, problem.Number(w.answer)))
	return phrase.Say(id, append([]phrase.Value{shown}, w.values...)...)
}

// turnedValue names the value of a hint that is a working with digits of the numbers.
const turnedValue = "Turned"

// turnedPlace names what a child did who took the small digit from the large one: of
// the first place where that turns the numbers around.
func (r reading) turnedPlace() phrase.Line {
	a, b := r.calc.Numbers[0], r.calc.Numbers[1]
	place, id := problem.OnesPlace, "mistake.smaller-from-larger.ones-turned"
	if problem.PlacesOf(a)[place] >= problem.PlacesOf(b)[place] {
		place, id = problem.TensPlace, "mistake.smaller-from-larger.tens-turned"
	}
	turned := problem.Difference(problem.PlacesOf(b)[place], problem.PlacesOf(a)[place])
	return phrase.Say(id, phrase.Expression(turnedValue, turned), phrase.Number("A", a), phrase.Number("B", b))
}

// wrongOperation ends the id of the hint for a wrong operation: by what a child can
// see in the story.
func (r reading) wrongOperation() string {
	switch r.kind().Unknown() {
	case problem.Result:
		return "result"
	case problem.Change:
		return "change"
	case problem.Start:
		return "start"
	case problem.DifferenceUnknown:
		return "difference"
	}
	return "parts"
}
