package estimate

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// roundingGrade is the first grade that meets the word "round": 3.NBT.A.1 of
// CCSS-M 2010 (from memory).
const roundingGrade = 3

// rounds lists the methods that are called rounding from that grade on.
var rounds = [lastMethod + 1]bool{Tens: true, OneTen: true, Hundreds: true, OneHundred: true}

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
		phrase.Number("Least", e.least()), phrase.Number("Most", e.most()))
}

// Judge tells that the right answer is near. It is never called correct.
func (e Estimate) Judge() phrase.Line {
	return phrase.Say("estimate.near", phrase.Number("Given", e.calculation.Value()), phrase.Number("Value", e.Value))
}

// misses are the slips that an estimate can be blind to, by how far off they are.
var misses = map[int]string{-10: "ten-forgotten", 10: "ten-more", -100: "hundred-forgotten", 100: "hundred-more"}

// Honest says which likely slip the estimate cannot find; false where it finds all.
func (e Estimate) Honest() (phrase.Line, bool) {
	if len(e.Missed) == 0 {
		return phrase.Line{}, false
	}
	slip, known := misses[e.Missed[0]-e.calculation.Value()]
	if !known || len(e.Missed) > 1 {
		slip = "some"
	}
	return phrase.Say("estimate.misses." + slip), true
}

// Lines lists a sample of every sentence of this package, so that a catalog
// can be checked for all of them.
func Lines() []phrase.Line {
	sum := problem.Calculation{Op: problem.Plus, Numbers: []int{38, 25}}
	e := Estimate{Equation: problem.Equal(problem.Sum(40, 30), problem.Number(70)), Value: 70, Tolerance: 10, calculation: sum}
	lines := []phrase.Line{e.Close(), e.Judge(), phrase.Say("estimate.misses.some")}
	for e.Method = Tens; e.Method <= lastMethod; e.Method++ {
		e.grade = 0
		lines = append(lines, e.Say())
		if e.grade = roundingGrade; rounds[e.Method] {
			lines = append(lines, e.Say())
		}
	}
	for _, slip := range misses {
		lines = append(lines, phrase.Say("estimate.misses."+slip))
	}
	for _, kind := range []problem.Kind{problem.AddToResult, problem.AddToStart, problem.TakeFromResult, problem.BiggerMore, problem.SmallerMore} {
		p, err := problem.New(kind, 13, 4)
		if err != nil {
			panic(err) // a sample that makes no problem
		}
		test, _ := PartWhole(p)
		lines = slices.Concat(lines, test, []phrase.Line{GoingBack(p)})
	}
	return phrase.Distinct(lines)
}
