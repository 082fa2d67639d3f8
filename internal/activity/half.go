package activity

import (
	"slices"

	"homebuild/internal/problem"
)

// half is a half of a target's range: a problem is of the upper one where its largest
// number is.
type half uint8

const (
	eitherHalf half = iota
	lowerHalf
	upperHalf
)

func (t Target) halfOf(p problem.Problem) half { return t.halfWith(largest(p)) }

func (t Target) halfWith(n int) half {
	if 2*n > t.Within {
		return upperHalf
	}
	return lowerHalf
}

// halfFor is the half of the range that a story is wished to be of. What comes back
// is to be worth it: it is of the upper half, or to ten a fact that the class has not
// met. Where facts are the target, easy and hard ones stand on one page as long as the
// class has not met all the easy ones; so none is left over for the end of the year.
// Common practice, no published source.
func (m *memory) halfFor(r Request, place int) half {
	t := r.Target
	switch {
	case r.review && t.Within <= 10 && m.lacksEasy(t):
		return eitherHalf
	case t.aboutFacts() && !r.review && place%2 == 0 && m.lacksEasy(t):
		return lowerHalf
	case t.aboutFacts() || r.review:
		return upperHalf
	}
	return eitherHalf
}

// lacksEasy reports whether the class has not met a fact of the target's lower half.
func (m *memory) lacksEasy(t Target) bool {
	return slices.ContainsFunc(allFacts(), func(pair problem.Pair) bool {
		return t.halfWith(pair.First+pair.Second) == lowerHalf && m.facts[fact{pair: pair}].times == 0
	})
}

// aboutFacts reports whether a target is about the addition facts themselves.
func (t Target) aboutFacts() bool { return t.Limits.PartMost > 0 }

// allFacts lists the addition facts of one-digit numbers.
func allFacts() []problem.Pair {
	var all []problem.Pair
	for a := 1; a <= mostAddend; a++ {
		for b := a; b <= mostAddend; b++ {
			all = append(all, problem.Pair{First: a, Second: b})
		}
	}
	return all
}
