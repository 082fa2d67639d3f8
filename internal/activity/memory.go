package activity

import (
	"maps"
	"slices"

	"homebuild/internal/problem"
)

// working is a calculation's operation and numbers, those of a sum in order.
type working struct {
	op      problem.Op
	numbers numbers
}

func workingOf(c problem.Calculation) working {
	w := working{op: c.Op}
	copy(w.numbers[:], c.Numbers)
	if c.Op == problem.Plus {
		slices.Sort(w.numbers[:len(c.Numbers)])
	}
	return w
}

// fact is a piece of arithmetic that a class can meet. Of two one-digit numbers
// it is the pair, smaller first, whether they are added or one is taken from
// their sum: 8 + 6, 14 - 8 and 14 - 6 are one fact to know. Of other numbers it
// is the working itself.
type fact struct {
	pair    problem.Pair
	working working
}

// digits reports whether f is of one-digit numbers.
func (f fact) digits() bool { return f.pair.First > 0 }

func factOf(c problem.Calculation) fact {
	if len(c.Numbers) == 2 {
		a, b := c.Numbers[0], c.Numbers[1]
		if c.Op == problem.Minus {
			a -= b
		}
		if a >= 1 && b >= 1 && max(a, b) <= mostAddend {
			return fact{pair: problem.Pair{First: min(a, b), Second: max(a, b)}}
		}
	}
	return fact{working: workingOf(c)}
}

// factsOf lists the facts of a problem's steps. A total to take apart is one,
// whatever parts are chosen.
func factsOf(p problem.Problem) []fact {
	if p.Kind() == problem.TogetherBoth {
		return []fact{{working: taskOf(p).working}}
	}
	var facts []fact
	for _, step := range p.Steps() {
		facts = append(facts, factOf(step.Calculation()))
	}
	return facts
}

// task is what a child would call the same numbers again: a working; a chain
// with its numbers; a total to take apart.
type task struct {
	kind    problem.Kind // for the last two
	working working
}

func taskOf(p problem.Problem) task {
	switch {
	case p.Kind().Steps() != nil:
		t := task{kind: p.Kind()}
		copy(t.working.numbers[:], p.Numbers())
		return t
	case p.Kind() == problem.TogetherBoth:
		return task{p.Kind(), working{numbers: numbers{p.Calculation().Value()}}}
	}
	return task{working: workingOf(p.Calculation())}
}

// meetings is how often a class met something, and in which week last. Weeks
// count from 1.
type meetings struct{ times, week int }

// memory is what a class has met so far.
type memory struct {
	week    int // the one being planned
	facts   map[fact]meetings
	tasks   map[task]meetings
	kinds   map[problem.Kind]int
	answers map[int]int    // the week that last had an answer
	targets map[string]int // how many weeks were about a target
	ones    int            // the week that last had a story with a 1
	skills  map[skill]practice
	learned []skill // in the order of the first meeting
}

func newMemory() *memory {
	return &memory{
		facts: map[fact]meetings{}, tasks: map[task]meetings{}, kinds: map[problem.Kind]int{},
		answers: map[int]int{}, targets: map[string]int{}, skills: map[skill]practice{},
	}
}

// clone is a memory that goes its own way from now on.
func (m *memory) clone() *memory {
	c := *m
	c.facts, c.tasks, c.kinds = maps.Clone(m.facts), maps.Clone(m.tasks), maps.Clone(m.kinds)
	c.answers, c.targets, c.skills = maps.Clone(m.answers), maps.Clone(m.targets), maps.Clone(m.skills)
	c.learned = slices.Clone(m.learned)
	return &c
}

func (m *memory) meet(p problem.Problem) {
	for _, f := range factsOf(p) {
		m.facts[f] = meetings{m.facts[f].times + 1, m.week}
	}
	t := taskOf(p)
	m.tasks[t] = meetings{m.tasks[t].times + 1, m.week}
	m.kinds[p.Kind()]++
	m.answers[p.Answer()] = m.week
	if hasOne(p) {
		m.ones = m.week
	}
}

// hasOne reports whether a number of the story is 1.
func hasOne(p problem.Problem) bool {
	return slices.ContainsFunc(p.Quantities(), func(q problem.Quantity) bool { return q.Value == 1 })
}
