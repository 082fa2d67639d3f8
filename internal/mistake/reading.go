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
	calc problem.Calculation // the one that finds the answer
	told []int               // the numbers that the story gives and the question needs
}

func newReading(q Question) reading {
	r := reading{Question: q, calc: q.Problem.Calculation()}
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

// practises reports whether the week's way is n.
func (r reading) practises(n strategy.Name) bool { return len(r.Ways) > 0 && r.Ways[0].Name == n }

// small reports whether numbers are so small that children count with them, and do
// not write them place by place (common practice, no published source).
func (r reading) small() bool { return r.calc.Largest() <= 20 }

// away is what is said of a number that is one, ten or a hundred away from the
// answer, where numbers are written place by place; small ones are counted.
func (r reading) away(n int) string {
	if r.small() || r.kind() == problem.TogetherBoth {
		return ""
	}
	off := n - r.Problem.Answer()
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
// that the story tells.
func (r reading) tells(line phrase.Line) bool {
	answer := r.Problem.Answer()
	if slices.Contains(r.told, answer) {
		return false
	}
	return slices.ContainsFunc(line.Values, func(v phrase.Value) bool {
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
	case cause == SmallerFromLarger && !r.Columns:
		return phrase.Say("mistake.smaller-from-larger."+r.tooFew(), phrase.Number("A", r.calc.Numbers[0]))
	case cause == CarryDropped:
		return strategy.CarryLine(r.calc)
	}
	if w.working == nil {
		return phrase.Say(id)
	}
	return phrase.Say(id, phrase.Equation("Equation", problem.Equal(w.working, problem.Number(w.answer))))
}

// tooFew ends the id of the hint for a difference in which a place has too little.
func (r reading) tooFew() string {
	if problem.PlacesOf(r.calc.Numbers[0])[problem.OnesPlace] < problem.PlacesOf(r.calc.Numbers[1])[problem.OnesPlace] {
		return "ones"
	}
	return "tens"
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
