package mistake

import (
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// workingRules are the causes of counting, for small numbers, and of place value,
// for others. They can happen whatever the way.
var workingRules = []rule{
	{CountedStart, countedStart},
	{OneTooFar, oneTooFar},
	{CarryDropped, inEachStep(carryDropped)},
	{SmallerFromLarger, digitsTurned},
	{AllDigitsAdded, digitsAdded},
}

// countedStart is one low for a sum and one high for a difference. Sources:
// Fuson (1988) and Steffe et al. (1983) on counting on, from memory.
func countedStart(r reading) []wrong { return r.counted(-1) }

func oneTooFar(r reading) []wrong { return r.counted(1) }

// counted is off by so many counts onward. A week of counting all, or of partners of
// ten, has its own words for that.
func (r reading) counted(off int) []wrong {
	if !r.small() || r.practices(strategy.CountAll) || r.practices(strategy.PartnersOfTen) {
		return nil
	}
	if r.calc.Op == problem.Minus {
		off = -off
	}
	return []wrong{{answer: r.calc.Value() + off}}
}

// carryDropped forgets the tens that the ones of a sum make, or the hundreds that its
// tens make, or one of each.
func carryDropped(r reading) []wrong {
	if r.calc.Op != problem.Plus {
		return nil
	}
	lost := tenLost(r)
	if len(lost) > 1 {
		const both = 110
		if n := lost[0].answer + lost[1].answer - r.calc.Value(); r.calc.Value()-n == both {
			lost = append(lost, wrong{answer: n})
		}
	}
	return lost
}

// inEachStep looks for what a rule finds in the last of two steps, which finds the
// answer, and in the first, which makes the answer as wrong as itself.
func inEachStep(find func(r reading) []wrong) func(r reading) []wrong {
	return func(r reading) []wrong {
		out := find(r)
		if first, ok := r.firstStep(); ok {
			for _, w := range find(first) {
				w.answer += r.calc.Value() - first.calc.Value()
				out = append(out, w)
			}
		}
		return out
	}
}

// firstStep is the reading of the first of two steps; false where there is one step,
// and where the first result is used twice.
func (r reading) firstStep() (reading, bool) {
	if !r.chain() || r.compares() {
		return reading{}, false
	}
	r.calc = r.Problem.Steps()[0].Calculation()
	return r, true
}

// tenLost is off by the ten, or by the hundred, that a sum makes on the way or a
// difference opens, once for each of them.
func tenLost(r reading) []wrong {
	if r.small() {
		return nil
	}
	var out []wrong
	for place, unit := range [...]int{problem.OnesPlace: 10, problem.TensPlace: 100} {
		var lost int
		if r.calc.Op == problem.Plus {
			for _, n := range r.calc.Numbers {
				lost -= problem.PlacesOf(n)[place]
			}
			lost = lost / unit * unit
		} else if problem.PlacesOf(r.calc.Numbers[0])[place] < problem.PlacesOf(r.calc.Numbers[1])[place] {
			lost = unit
		}
		if lost != 0 {
			out = append(out, wrong{answer: r.calc.Value() + lost})
		}
	}
	return out
}

// digitsTurned takes the small digit from the large one wherever the large one is
// taken away. In the teens the ones alone are left: 9 - 3 for 13 - 9.
func digitsTurned(r reading) []wrong {
	if !r.small() {
		return whereLarge(problem.Minus, smallerFromLarger)(r)
	}
	if r.chain() || r.calc.Op != problem.Minus || len(r.calc.Numbers) != 2 {
		return nil
	}
	ones, taken := r.calc.Numbers[0]-10, r.calc.Numbers[1]
	if ones <= 0 || taken >= 10 || ones >= taken {
		return nil
	}
	return []wrong{{answer: taken - ones}}
}

// digitsAdded adds every digit as if it were ones. A week of counting in tens has its
// own words for that.
func digitsAdded(r reading) []wrong {
	if r.practices(strategy.CountInTens) {
		return nil
	}
	return whereLarge(problem.Plus, allDigitsAdded)(r)
}

// whereLarge looks for the result of a rule of written working only where numbers
// are written.
func whereLarge(op problem.Op, column func(problem.Calculation) (int, bool)) func(reading) []wrong {
	return func(r reading) []wrong {
		if r.small() || r.calc.Op != op {
			return nil
		}
		if n, applies := column(r.calc); applies {
			return []wrong{{answer: n}}
		}
		return nil
	}
}
