package activity

import (
	"slices"

	"homebuild/internal/problem"
)

// numbers are what a problem is made of. For a one-step kind they are the a and
// b of its working, a + b or a - b; for more addends and chains they are the
// story's own, in the order of problem.New. Those that
// a kind has not are 0.
type numbers [4]int

func (n numbers) problem(kind problem.Kind) (problem.Problem, error) {
	switch {
	case n[3] > 0:
		return problem.New(kind, n[:]...)
	case n[2] > 0:
		return problem.New(kind, n[:3]...)
	case kind.Steps() != nil:
		return problem.New(kind, n[0], n[1])
	}
	x, y := fromWorking(kind, n[0], n[1])
	return problem.New(kind, x, y)
}

// span bounds one number of a set: the multiples of step from least, which is one, up to
// most.
type span struct{ least, most, step int }

func (s span) size() uint64 {
	if s.most < s.least {
		return 0
	}
	return uint64((s.most-s.least)/s.step + 1)
}

// box bounds each number of a set by itself. It holds every set that a target
// allows for a kind, and others; telling them apart is for holds.
type box []span

// size is how many sets are in the box.
func (b box) size() uint64 {
	n := uint64(1)
	for _, s := range b {
		n *= s.size()
	}
	return n
}

// at is the set at a place of the box, from 0 on.
func (b box) at(place uint64) numbers {
	var n numbers
	for i, s := range b {
		n[i] = s.least + int(place%s.size())*s.step
		place /= s.size()
	}
	return n
}

// has reports whether a set is in the box.
func (b box) has(n numbers) bool {
	for i, s := range b {
		if n[i] < s.least || n[i] > s.most || n[i]%s.step != 0 {
			return false
		}
	}
	return true
}

// box holds the sets of numbers to draw from for stories of a kind. Zero is in
// none of them.
func (t Target) box(kind problem.Kind) box {
	l := t.Limits
	first := spanOf(l.FirstLeast, t.Within, l.FirstStep)
	switch {
	case kind == problem.TogetherThree:
		return t.sums(first, 2)
	case kind == problem.TogetherFour:
		return t.sums(first, 3)
	case kind.Steps() != nil && kind != problem.BiggerThenTogether:
		later := spanOf(1, t.laterMost(), 1)
		return box{first, later, later}
	}
	second := spanOf(l.SecondLeast, t.Within-1, l.SecondStep)
	if opOf(kind) == problem.Plus {
		second.most = t.Within - first.least
	}
	if l.SecondMost > 0 {
		second.most = min(second.most, l.SecondMost)
	}
	return box{first, second}
}

// sums is the box of a first addend and so many others.
func (t Target) sums(first span, others int) box {
	other := spanOf(t.Limits.SecondLeast, 0, 1)
	other.most = t.Within - first.least - (others-1)*other.least
	first.most = t.Within - others*other.least
	return append(box{first}, slices.Repeat(box{other}, others)...)
}

// spanOf is the multiples of step, from the first that is least or more.
func spanOf(least, most, step int) span {
	step = max(step, 1)
	return span{(max(least, 1) + step - 1) / step * step, most, step}
}

// laterMost is the largest later number of a chain. Within twenty it has one
// digit: two-step problems start with such numbers (Progressions for the CCSS-M,
// K-5 Operations and Algebraic Thinking, grade 2).
func (t Target) laterMost() int {
	if t.Within <= 20 {
		return 9
	}
	return t.Within
}

// holds makes the problem of a set of numbers and reports whether it is one of
// the target's: every number in range, no step that comes to nothing, the
// crossing rule kept.
func (t Target) holds(kind problem.Kind, n numbers) (problem.Problem, bool) {
	if !t.roughly(kind, n) {
		return problem.Problem{}, false
	}
	p, err := n.problem(kind)
	if err != nil {
		return p, false
	}
	for _, step := range p.Steps() {
		c := step.Calculation()
		if c.Largest() > t.Within || c.Value() == 0 || !t.Limits.allow(c) {
			return p, false
		}
	}
	return p, t.Crossing.allows(p)
}

// roughly sorts out at a glance what cannot hold: half of a box and more. It is
// there for speed alone.
func (t Target) roughly(kind problem.Kind, n numbers) bool {
	switch {
	case kind.Steps() != nil:
		return true
	case opOf(kind) == problem.Minus:
		return n[0] > n[1]
	}
	return n[0]+n[1]+n[2]+n[3] <= t.Within
}

// allow reports whether the parts and the whole of a calculation keep the limits
// that a box cannot keep.
func (l Limits) allow(c problem.Calculation) bool {
	if l.Whole > 0 && c.Largest() != l.Whole {
		return false
	}
	if l.PartMost == 0 {
		return true
	}
	parts := append([]int{c.Value()}, c.Numbers[1:]...)
	if c.Op == problem.Plus {
		parts = c.Numbers
	}
	return slices.Max(parts) <= l.PartMost
}

// mostPlaces bounds how long a box is searched for a set that holds.
const mostPlaces = 1_000_000

// possible reports whether the target has any problem of a kind.
func (t Target) possible(kind problem.Kind) bool {
	b := t.box(kind)
	for i := range min(b.size(), mostPlaces) {
		if _, ok := t.holds(kind, b.at(i)); ok {
			return true
		}
	}
	return false
}

// opOf is the operation that finds the answer of a one-step kind.
func opOf(kind problem.Kind) problem.Op {
	switch kind {
	case problem.AddToChange, problem.AddToStart, problem.TogetherAddend, problem.TakeFromResult, problem.TakeFromChange,
		problem.DifferenceMore, problem.DifferenceFewer, problem.SmallerMore, problem.SmallerFewer:
		return problem.Minus
	}
	return problem.Plus
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
