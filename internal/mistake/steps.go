package mistake

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// firstIsOff reports whether the first of two steps cannot have come out right: from
// its result the second one leads away from n.
func (r reading) firstIsOff(n int) bool {
	if !r.chain() {
		return false
	}
	if r.calc.Op == problem.Plus {
		return n < r.middle
	}
	return n > r.middle
}

// takeFirst asks for the first of two steps.
func (r reading) takeFirst() phrase.Line {
	return phrase.Say("reply.first-step", r.firstExpression())
}

// inTurn names both steps, and the result of neither.
func (r reading) inTurn() phrase.Line {
	switch {
	case r.compares():
		return phrase.Say("reply.in-turn.compare", r.firstExpression())
	case r.calc.Op == problem.Plus:
		return phrase.Say("reply.in-turn.add", r.firstExpression(), phrase.Number("Next", r.told[2]))
	}
	return phrase.Say("reply.in-turn.take", r.firstExpression(), phrase.Number("Next", r.told[2]))
}

func (r reading) firstExpression() phrase.Value {
	return phrase.Expression("First", r.Problem.Steps()[0].Calculation().Expression())
}

// awayLines are what is said of a number that is one, ten or a hundred away; of two
// steps they name the one that trades the ten or the hundred, where only the first
// does, else both.
func (r reading) awayLines(n int) []phrase.Line {
	id := r.away(n)
	if id == "" {
		return nil
	}
	lines := []phrase.Line{phrase.Say(id)}
	off := max(n-r.answer, r.answer-n)
	switch first, ok := r.firstStep(); {
	case ok && off > 1 && first.trades(off) && !r.trades(off):
		return append(lines, r.takeFirst())
	case r.chain():
		return append(lines, r.inTurn())
	}
	return lines
}

// trades reports whether the calculation makes, or opens, a ten or a hundred: a unit.
func (r reading) trades(unit int) bool {
	rest := r.calc.Numbers[0] % unit
	for _, n := range r.calc.Numbers[1:] {
		if r.calc.Op == problem.Minus {
			rest -= n % unit
		} else {
			rest += n % unit
		}
	}
	return rest < 0 || rest >= unit
}
