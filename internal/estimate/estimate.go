package estimate

import (
	"slices"

	"homebuild/internal/problem"
)

// Method is a way to find friendly numbers.
type Method uint8

const (
	Tens       Method = iota + 1 // every number to its nearest ten: 38 + 25, think 40 + 30
	Double                       // two close numbers as a double: 6 + 7, think 6 + 6
	Fives                        // every number to its nearest five: 13 - 4, think 15 - 5
	OneTen                       // one number to its nearest ten: 17 - 9, think 17 - 10
	Group                        // two of three addends as a ten: 8 + 3 + 4, think 10 + 4
	Hundreds                     // every number to its nearest hundred
	OneHundred                   // one number to its nearest hundred: 256 + 178, think 256 + 200
	lastMethod = OneHundred
)

var methodIDs = [lastMethod + 1]string{
	Tens: "tens", Double: "double", Fives: "fives", OneTen: "one-ten", Group: "group",
	Hundreds: "hundreds", OneHundred: "one-hundred",
}

// String gives the id used in message ids: "one-ten".
func (m Method) String() string { return methodIDs[m] }

// Estimate is a friendly calculation and how near to it the answer must be.
type Estimate struct {
	Method    Method
	Friendly  []int            // the friendly numbers; for Group two for three addends
	Equation  problem.Equation // 40 + 30 = 70
	Value     int              // never the answer itself
	Tolerance int              // the right answer is at most this far from Value
	Missed    []int            // likely wrong answers that are as near

	calculation problem.Calculation
	grade       problem.Grade
}

// Near reports whether an answer is as near as the right one must be.
func (e Estimate) Near(given int) bool { return e.least() <= given && given <= e.most() }

func (e Estimate) least() int { return max(0, e.Value-e.Tolerance) }

func (e Estimate) most() int { return e.Value + e.Tolerance }

// For finds an estimate of c: the one that finds most of the likely wrong answers,
// none of which is the right one, and of these the simplest. It is false where none is of use: the calculation is
// as easy, or none is near enough, or none finds anything.
func For(c problem.Calculation, likelyWrong []int, grade problem.Grade) (Estimate, bool) {
	if easy(c) {
		return Estimate{}, false
	}
	var best Estimate
	most := 0
	for _, k := range candidates(c) {
		e, ok := k.estimate(c)
		if !ok {
			continue
		}
		found := 0
		for _, n := range likelyWrong {
			if !e.Near(n) {
				found++
			}
		}
		if found > most {
			best, most = e, found
		}
	}
	if most == 0 {
		return Estimate{}, false
	}
	best.grade = grade
	best.Missed = slices.DeleteFunc(slices.Clone(likelyWrong), func(n int) bool { return !best.Near(n) })
	friendly := problem.Calculation{Op: c.Op, Numbers: best.Friendly}
	best.Equation = problem.Equal(friendly.Expression(), problem.Number(best.Value))
	return best, true
}
