package estimate

import (
	"slices"

	"homebuild/internal/problem"
)

// Method is a way to find friendly numbers.
type Method uint8

const (
	Tens        Method = iota + 1 // every number to its nearest ten: 6 + 12, think 10 + 10
	Double                        // two close numbers as a double: 6 + 7, think 6 + 6
	Fives                         // every number to its nearest five: 13 - 4, think 15 - 5
	OneTen                        // one number to its nearest ten: 12 - 8, think 12 - 10
	Group                         // two of three addends as a ten: 8 + 3 + 4, think 10 + 5
	Hundreds                      // every number to its nearest hundred
	FirstDigits                   // front-end: the first digits alone, 256 + 178, think 200 + 100
	lastMethod  = FirstDigits
)

var methodIDs = [lastMethod + 1]string{
	Tens: "tens", Double: "double", Fives: "fives", OneTen: "one-ten", Group: "group",
	Hundreds: "hundreds", FirstDigits: "front-end",
}

// String gives the id used in message ids: "one-ten".
func (m Method) String() string {
	if m < Tens || m > lastMethod {
		return "no-method"
	}
	return methodIDs[m]
}

// Estimate is a friendly calculation and how near to it the answer must be.
type Estimate struct {
	Method    Method
	Friendly  []int            // the friendly numbers; for Group two for three addends
	Equation  problem.Equation // 10 + 10 = 20
	Value     int
	Tolerance int  // the right answer is at most this far from Value
	Catches   bool // every likely mistake is farther away than that

	calculation problem.Calculation
	grade       problem.Grade
}

// Near reports whether an answer is as near as the right one must be.
func (e Estimate) Near(given int) bool {
	return given-e.Value <= e.Tolerance && e.Value-given <= e.Tolerance
}

// For finds an estimate of c: among those that the right answer passes, the
// one that catches most of the likely wrong answers, and of these the
// simplest. It is false where no estimate is of use; then the part-whole test
// helps. Catches is false when no wrong answer is given.
func For(c problem.Calculation, likelyWrong []int, grade problem.Grade) (Estimate, bool) {
	answer := c.Value()
	wrong := slices.DeleteFunc(slices.Clone(likelyWrong), func(n int) bool { return n == answer })
	var best Estimate
	most := -1
	for _, k := range candidates(c, grade) {
		e, ok := k.estimate(c)
		if !ok || !e.Near(answer) {
			continue
		}
		caught := 0
		for _, n := range wrong {
			if !e.Near(n) {
				caught++
			}
		}
		if caught == 0 && e.Value <= e.Tolerance {
			continue // it would take any small number for near
		}
		if caught > most {
			best, most = e, caught
			best.Catches, best.grade = len(wrong) > 0 && caught == len(wrong), grade
		}
	}
	return best, most >= 0
}

// candidate is a choice of friendly numbers, perhaps not a useful one.
type candidate struct {
	method    Method
	friendly  []int
	tolerance int
}

// estimate makes k an estimate of c. It is false for what is of no use: the
// numbers of c themselves, a friendly number of nothing, nothing left.
func (k candidate) estimate(c problem.Calculation) (Estimate, bool) {
	if slices.Contains(k.friendly, 0) || slices.Equal(k.friendly, c.Numbers) {
		return Estimate{}, false
	}
	expression := problem.Calculation{Op: c.Op, Numbers: k.friendly}.Expression()
	value := expression.Value()
	if value <= 0 {
		return Estimate{}, false
	}
	return Estimate{
		Method: k.method, Friendly: k.friendly, Value: value, Tolerance: k.tolerance,
		Equation:    problem.Equal(expression, problem.Number(value)),
		calculation: c,
	}, true
}
