package activity

import (
	"iter"

	"homebuild/internal/problem"
)

// numbers are what a problem is made of. For a one-step kind they are the a and
// b of its working, a + b or a - b; for three addends and chains they are the
// story's own, in the order of problem.New. The third is 0 where there are two.
type numbers [3]int

func (n numbers) problem(kind problem.Kind) (problem.Problem, error) {
	switch {
	case n[2] > 0:
		return problem.New(kind, n[0], n[1], n[2])
	case kind.Steps() != nil:
		return problem.New(kind, n[0], n[1])
	}
	x, y := fromWorking(kind, n[0], n[1])
	return problem.New(kind, x, y)
}

// shape is which lists of numbers kinds share.
type shape uint8

const (
	sums        shape = iota // a + b, also smaller and difference of the chain that compares
	differences              // a - b
	addends                  // three to add
	chains                   // three numbers in two steps
)

func shapeOf(kind problem.Kind) shape {
	switch {
	case kind == problem.TogetherThree:
		return addends
	case kind == problem.BiggerThenTogether:
		return sums
	case kind.Steps() != nil:
		return chains
	case opOf(kind) == problem.Minus:
		return differences
	}
	return sums
}

// sets gives, in a fixed order, sets of numbers for stories of a shape: every
// one to 100, or to 20 for three numbers, and beyond that an even spread, so
// that choosing stays quick. Zero is never among them. Whether a set really
// makes a problem of the target is for holds to say.
func (t Target) sets(s shape) iter.Seq[numbers] {
	switch s {
	case addends, chains:
		return t.triples(s)
	case differences:
		return t.pairs(problem.Minus)
	}
	return t.pairs(problem.Plus)
}

// holds makes the problem of a set of numbers and reports whether it is one of
// the target's: every number in range, no step that comes to nothing, the
// crossing rule kept.
func (t Target) holds(kind problem.Kind, n numbers) (problem.Problem, bool) {
	p, err := n.problem(kind)
	if err != nil {
		return p, false
	}
	for _, step := range p.Steps() {
		if c := step.Calculation(); c.Largest() > t.Within || c.Value() == 0 {
			return p, false
		}
	}
	return p, t.Crossing.allows(p)
}

// possible reports whether the target has any problem of a kind.
func (t Target) possible(kind problem.Kind) bool {
	for n := range t.sets(shapeOf(kind)) {
		if _, ok := t.holds(kind, n); ok {
			return true
		}
	}
	return false
}

// pairs gives the numbers of workings a + b or a - b, in order.
func (t Target) pairs(op problem.Op) iter.Seq[numbers] {
	l := t.Limits
	thin := 1
	if t.Within > 100 {
		thin = t.Within / 75 // about 75 x 75 / 2 sums
	}
	return func(yield func(numbers) bool) {
		for a := from(l.FirstLeast, l.FirstStep, 0, thin); a <= t.Within; a += stride(l.FirstStep, thin) {
			for b := from(l.SecondLeast, l.SecondStep, a, thin); b <= l.mostSecond(t.Within, op, a); b += stride(l.SecondStep, thin) {
				whole := a
				if op == problem.Plus {
					whole = a + b
				}
				if (l.Whole == 0 || whole == l.Whole) && !yield(numbers{a, b}) {
					return
				}
			}
		}
	}
}

// mostSecond is the largest second number of a working that starts with a.
func (l Limits) mostSecond(within int, op problem.Op, a int) int {
	most := within - a
	if op == problem.Minus {
		most = a - 1
	}
	if l.SecondMost > 0 {
		most = min(most, l.SecondMost)
	}
	return most
}

// triples gives three numbers, in order. The later numbers of a chain within
// twenty have one digit: two-step problems start with such numbers
// (Progressions for the CCSS-M, K-5 Operations and Algebraic Thinking, grade 2).
func (t Target) triples(s shape) iter.Seq[numbers] {
	thin, most := 1, 9
	if t.Within > 20 {
		thin, most = t.Within/12, t.Within // about 12 x 12 x 12 sets
	}
	return func(yield func(numbers) bool) {
		for a := from(t.Limits.FirstLeast, 0, 0, thin); a <= t.Within; a += thin {
			for b := from(0, 0, 7*a, thin); b <= most; b += thin {
				for c := from(0, 0, 3*a+5*b, thin); c <= most; c += thin {
					if s == addends && a+b+c > t.Within {
						break
					}
					if !yield(numbers{a, b, c}) {
						return
					}
				}
			}
		}
	}
}

// from is the first number to try: the least allowed, moved on by up to one
// stride where a range is thinned, so that all digits turn up.
func from(least, step, shift, thin int) int {
	least = max(1, least)
	if step > 1 {
		return (least + step - 1) / step * step
	}
	return least + shift%thin
}

// stride is how far apart the numbers to try are.
func stride(step, thin int) int {
	if step > 1 {
		return step
	}
	return thin
}

// opOf is the operation that finds the answer of a one-step kind.
func opOf(kind problem.Kind) problem.Op {
	p, err := problem.New(kind, 5, 2)
	if err != nil {
		return problem.Plus // three addends
	}
	return p.Calculation().Op
}

// fromWorking gives the numbers for problem.New of a one-step kind whose working
// is a + b or a - b: the inverse of problem.Calculation.
func fromWorking(kind problem.Kind, a, b int) (x, y int) {
	switch kind {
	case problem.AddToChange, problem.TogetherAddend:
		return b, a - b
	case problem.AddToStart:
		return a - b, b
	case problem.TakeFromChange:
		return a, a - b
	case problem.TakeFromStart:
		return a + b, b
	}
	return a, b
}
