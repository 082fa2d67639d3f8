package activity

import (
	"cmp"
	"slices"

	"homebuild/internal/mistake"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// rank says how far a set of numbers is from meeting every wish, the weightiest
// wish first. All zero meets them all.
type rank struct {
	again     int // 1: the numbers are in this week already
	trivial   int // 1: a number or the answer is 0 or 1
	unfocused int // 1: the strategy of the week does not help here
	repeated  int // the week that last had the numbers, 0 for none: the oldest is the best to repeat
	flaws     int // see the flaws below
	echo      int // 1: another story of the week has the same answer
}

func (r rank) compare(other rank) int {
	return cmp.Or(
		cmp.Compare(r.again, other.again), cmp.Compare(r.trivial, other.trivial),
		cmp.Compare(r.unfocused, other.unfocused), cmp.Compare(r.repeated, other.repeated),
		cmp.Compare(r.flaws, other.flaws), cmp.Compare(r.echo, other.echo),
	)
}

// Flaws, each outweighing those below it together.
const (
	answerTold   = 8 // the answer is a number that the story tells
	ambiguous    = 4 // a wrong number that more than one mistake gives
	belowRange   = 2 // numbers that an earlier range has already
	lameEstimate = 1 // an estimate that does not find every likely mistake
)

// trivialNumber is the largest number that shows nothing: 0 and 1.
const trivialNumber = 1

// candidate is a set of numbers that was looked at for a target.
type candidate struct {
	holds   bool // whether it makes a problem of the target at all
	problem problem.Problem
	fact    fact
	rank    rank // without what the class has met
}

// judge looks at a set of numbers for a target and a strategy to practise.
func judge(t Target, focus strategy.Name, kind problem.Kind, n numbers) *candidate {
	c := &candidate{}
	if c.problem, c.holds = t.holds(kind, n); !c.holds {
		return c
	}
	c.fact = factOf(c.problem)
	for _, q := range c.problem.Quantities() {
		if q.Value <= trivialNumber {
			c.rank.trivial = 1
		}
	}
	if focus != 0 && !helps(focus, c.problem) {
		c.rank.unfocused = 1
	}
	if c.rank == (rank{}) { // else it is never chosen for its finer points
		c.rank.flaws = flaws(c.problem, t)
	}
	return c
}

func flaws(p problem.Problem, t Target) int {
	n, answer := 0, p.Answer()
	if slices.ContainsFunc(p.Told(), func(q problem.Quantity) bool { return q.Value == answer }) {
		n += answerTold
	}
	if slices.ContainsFunc(mistake.Of(p, 0), func(m mistake.Mistake) bool { return !m.Only }) {
		n += ambiguous
	}
	if p.Calculation().Largest() <= earlierRange(t.Within) {
		n += belowRange
	}
	if e, ok := estimated(p, 0, t.Grade); ok && len(e.Missed) > 0 {
		n += lameEstimate
	}
	return n
}

// helps reports whether a strategy fits a step of the problem.
func helps(name strategy.Name, p problem.Problem) bool {
	return slices.ContainsFunc(p.Steps(), func(step problem.Problem) bool {
		return strategy.Fits(name, step.Calculation())
	})
}

// earlierRange is the range that comes before a target's own.
func earlierRange(within int) int {
	switch {
	case within > 100:
		return 100
	case within > 20:
		return 20
	case within > 10:
		return 10
	}
	return 0
}
