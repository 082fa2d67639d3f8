package activity

import (
	"slices"

	"homebuild/internal/problem"
)

// fact is what a class has met when it has met a problem: for one step the
// numbers of the working, a sum in either order; for a chain also its kind; for
// both addends unknown the total alone.
type fact struct {
	op      problem.Op
	chain   problem.Kind
	numbers numbers
}

func factOf(p problem.Problem) fact {
	if p.Kind().Steps() != nil {
		f := fact{chain: p.Kind()}
		copy(f.numbers[:], p.Numbers())
		return f
	}
	c := p.Calculation()
	if p.Kind() == problem.TogetherBoth {
		return fact{chain: p.Kind(), numbers: numbers{c.Value()}}
	}
	f := fact{op: c.Op}
	copy(f.numbers[:], c.Numbers)
	if c.Op == problem.Plus {
		slices.Sort(f.numbers[:len(c.Numbers)])
	}
	return f
}

// meeting is when a class met a fact. Weeks count from 1.
type meeting struct {
	week    int // the last one
	times   int
	problem problem.Problem
}

// memory is what a class has met so far.
type memory struct {
	week  int // the one being planned
	facts map[fact]meeting
	order []fact // in the order of the first meeting
	kinds map[problem.Kind]int
	// answers holds the week that last had each answer.
	answers map[int]int
}

func newMemory() *memory {
	return &memory{facts: map[fact]meeting{}, kinds: map[problem.Kind]int{}, answers: map[int]int{}}
}

func (m *memory) meet(p problem.Problem) {
	f := factOf(p)
	if m.facts[f].times == 0 {
		m.order = append(m.order, f)
	}
	m.facts[f] = meeting{week: m.week, times: m.facts[f].times + 1, problem: p}
	m.kinds[p.Kind()]++
	m.answers[p.Answer()] = m.week
}

// due is the problem that should come back now: among those last met long
// enough ago, the one that has waited longest. The wait doubles with every
// meeting: two weeks, then four, then eight (common practice, no published
// source).
func (m *memory) due() (problem.Problem, bool) {
	var best meeting
	longest := -1
	for _, f := range m.order {
		met := m.facts[f]
		if late := m.week - met.week - 1<<met.times; late > longest {
			best, longest = met, late
		}
	}
	return best.problem, longest >= 0
}
