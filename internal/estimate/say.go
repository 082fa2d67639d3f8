package estimate

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// roundingGrade is the first grade that meets the word "round": 3.NBT.A.1 of
// CCSS-M 2010 (from memory).
const roundingGrade = 3

// rounds lists the methods that are called rounding from that grade on.
var rounds = [lastMethod + 1]bool{Tens: true, OneTen: true, Hundreds: true}

// Say tells which friendly calculation to think of. Younger grades hear of
// friendly numbers, grade 3 of rounding.
func (e Estimate) Say() phrase.Line {
	end := ".say"
	if e.grade >= roundingGrade && rounds[e.Method] {
		end = ".round"
	}
	return phrase.Say("estimate."+e.Method.String()+end,
		phrase.Expression("Exact", e.calculation.Expression()),
		phrase.Expression("Easy", e.Equation.Sides()[0]),
		phrase.Number("Value", e.Value))
}

// Close tells how near the answer must be.
func (e Estimate) Close() phrase.Line {
	return phrase.Say("estimate.close", phrase.Number("Value", e.Value), phrase.Number("Tolerance", e.Tolerance),
		phrase.Number("Least", max(0, e.Value-e.Tolerance)), phrase.Number("Most", e.Value+e.Tolerance))
}

// Fits tells that the right answer is as near as it must be; it is not called
// correct for that.
func (e Estimate) Fits() phrase.Line {
	return phrase.Say("estimate.near", phrase.Number("Given", e.calculation.Value()), phrase.Number("Value", e.Value))
}

// Honest is for an estimate that does not catch the likely mistake: it says
// that a near answer may still be wrong.
func (e Estimate) Honest() phrase.Line { return phrase.Say("estimate.misses") }

// Inverse tells the check by going back: 14 - 6 = 8 for 8 + 6 = 14. A sum of
// three has none.
func Inverse(c problem.Calculation) (phrase.Line, bool) {
	back, ok := c.Inverse()
	if !ok {
		return phrase.Line{}, false
	}
	id := "check.inverse.sum"
	if c.Op == problem.Minus {
		id = "check.inverse.difference"
	}
	return phrase.Say(id, phrase.Equation("Back", back), phrase.Number("Answer", c.Value())), true
}

// Lines lists a sample of every sentence of this package, so that a catalogue
// can be checked for all of them.
func Lines() []phrase.Line {
	sum := problem.Calculation{Op: problem.Plus, Numbers: []int{8, 6}}
	difference := problem.Calculation{Op: problem.Minus, Numbers: []int{13, 4}}
	e := Estimate{Equation: sum.Asked().Solved(), Value: 14, Tolerance: 5, calculation: sum}
	var lines []phrase.Line
	for e.Method = Tens; e.Method <= lastMethod; e.Method++ {
		e.grade = 0
		lines = append(lines, e.Say())
		if e.grade = roundingGrade; rounds[e.Method] {
			lines = append(lines, e.Say())
		}
	}
	lines = append(lines, e.Close(), e.Fits(), e.Honest())
	for _, c := range []problem.Calculation{sum, difference} {
		back, _ := Inverse(c)
		lines = append(lines, back, PartWhole(c))
	}
	return append(lines, PartWholeFits(sum))
}
