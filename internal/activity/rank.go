package activity

import (
	"cmp"

	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// rank says how far a set of numbers is from meeting every wish, the weightiest
// wish first. All zero meets them all.
//
// No wish looks at a digit: the help that numbers get (an estimate, a mistake
// known by its answer) follows from the numbers, and does not choose them.
// Differences whose wrong answers have one cause each, for example, would hardly
// ever end in 9.
type rank struct {
	untold    int // 1: no story bears such amounts
	again     int // 1: the numbers are in this week already
	undone    int // as unfocused, for a story that is to practice the strategy of the week
	half      int // 1: not of the half of the range that is wished for
	stale     int // more: the class met the facts, and new ones come before all; see staleness
	unfocused int // 1: the strategy of the week is not at its best here; 2: it does not help
	recent    int // 1: the very same numbers were there in the last weeks
	unshown   int // more: of a story that is to practice the strategy, no good example, or of the other half
	met       int // how often the class met the facts
	seen      int // how often the class met the very same numbers
	last      int // the week that last had the fact, 0 for none: the oldest is the best to repeat
	flaws     int // see the flaws below
	echo      int // 1: another story of the week has the same answer
}

func (r rank) compare(other rank) int {
	return cmp.Or(
		cmp.Compare(r.untold, other.untold), cmp.Compare(r.again, other.again),
		cmp.Compare(r.undone, other.undone), cmp.Compare(r.half, other.half), cmp.Compare(r.stale, other.stale),
		cmp.Compare(r.unfocused, other.unfocused), cmp.Compare(r.recent, other.recent), cmp.Compare(r.unshown, other.unshown),
		cmp.Compare(r.met, other.met), cmp.Compare(r.seen, other.seen), cmp.Compare(r.last, other.last),
		cmp.Compare(r.flaws, other.flaws), cmp.Compare(r.echo, other.echo),
	)
}

// Flaws, each outweighing those below it together.
const (
	withOne    = 8 // a 1 among larger numbers shows little
	answerTold = 4 // the answer is a number that the story tells
	belowRange = 2 // numbers that an earlier range has already
	tooEasy    = 1 // no harder than when the class met the target first
)

// candidate is a set of numbers that was looked at for a target.
type candidate struct {
	holds   bool // whether it makes a problem of the target at all
	problem problem.Problem
	answer  int
	task    task
	facts   []fact // of its steps
	hard    bool   // hard for its target
	rank    rank   // without what the class has met, and without a strategy

	focus     strategy.Name // the last one that was asked about
	unfocused int           // for that one
}

// judge looks at a set of numbers for a target.
func judge(r Request, kind problem.Kind, n numbers) *candidate {
	c := &candidate{}
	if c.problem, c.holds = r.Target.holds(kind, n); !c.holds {
		return c
	}
	c.answer, c.task = c.problem.Answer(), taskOf(c.problem)
	c.facts = factsOf(c.problem)
	if r.Bears != nil && !r.Bears.Bears(c.problem) {
		c.rank.untold = 1
	}
	c.rank.flaws = c.flaws(r.Target)
	c.hard = r.Target.hard(c.problem)
	return c
}

// unfocusedBy is how little a strategy helps with the numbers; see [unfocused].
func (c *candidate) unfocusedBy(name strategy.Name) int {
	if name.Valid() && name != c.focus {
		c.focus, c.unfocused = name, unfocused(name, c.problem)
	}
	if !name.Valid() {
		return 0
	}
	return c.unfocused
}

func (c *candidate) flaws(t Target) int {
	n := 0
	one, told := false, false
	for _, q := range c.problem.Quantities() {
		one = one || q.Value == 1
		told = told || !q.Unknown && q.Value == c.answer
	}
	if one && t.Within > 10 {
		n += withOne
	}
	if told {
		n += answerTold
	}
	if largest(c.problem) <= earlierRange(t.Within) {
		n += belowRange
	}
	return n
}

// notHelped is how unfocused a problem is that a strategy does not help with.
const notHelped = 2

// unfocused says how little a strategy helps: 0 where it is at its best for a
// step of the problem, 1 where it may be used, 2 where it may not.
func unfocused(name strategy.Name, p problem.Problem) int {
	least := notHelped
	for _, step := range p.Steps() {
		c := step.Calculation()
		switch {
		case strategy.Suits(name, c):
			return 0
		case strategy.Fits(name, c):
			least = 1
		}
	}
	return least
}

// goodExample reports whether a step of the problem is a good example of a strategy, and
// no other is worked by it that had better be worked otherwise.
func goodExample(name strategy.Name, p problem.Problem) (good bool) {
	for _, step := range p.Steps() {
		c := step.Calculation()
		if strategy.Fits(name, c) && !strategy.Suits(name, c) {
			return false
		}
		good = good || strategy.Shows(name, c)
	}
	return good
}

// hard reports whether a problem is one of the harder ones of its target: it
// passes a ten, or where all or none of the target's do, its numbers are among
// the larger ones of the range.
func (t Target) hard(p problem.Problem) bool {
	if t.Crossing == CrossEither {
		return CrossAlways.allows(p)
	}
	const quarters = 4
	return quarters*largest(p) >= (quarters-1)*t.Within
}

// largest is the largest number of a problem's steps.
func largest(p problem.Problem) int {
	most := 0
	for _, step := range p.Steps() {
		most = max(most, step.Calculation().Largest())
	}
	return most
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
