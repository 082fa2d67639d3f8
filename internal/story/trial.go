package story

import (
	"slices"
	"sync"

	"homebuild/internal/problem"
)

// TrialNumbers try the grammar of a language hardest: they meet every plural
// category of CLDR 48 that a number up to 1000 can have, and those just beside
// them.
var TrialNumbers = []int{1, 2, 5, 11, 21, 22, 100, 101}

// others go with them, so that every amount of a story can be one of them.
var others = []int{0, 3, 10, 20, 40, 60, 99, 200, 300, 733}

// Trials gives stories of a kind in which each amount has each of TrialNumbers that
// the event bears there, in as few stories as are soon found; at most so many.
func (e *Event) Trials(k problem.Kind, most int) []Choice {
	var bears []problem.Problem
	for _, p := range TrialProblems(k) {
		if e.Bears(p) {
			bears = append(bears, p)
		}
	}
	var out []Choice
	met := map[problem.Quantity]bool{}
	for _, least := range []int{3, 2, 1} { // of amounts that are new
		for _, p := range bears {
			if len(out) == most {
				break
			}
			news := unmet(p, met)
			if len(news) < least {
				continue
			}
			for _, q := range news {
				met[q] = true
			}
			out = append(out, Choice{Event: e.ID, Problem: p})
		}
	}
	if len(out) > 0 && takesExtra(k) {
		out[len(out)-1].Extra = e.Extra.Least
	}
	return out
}

// unmet lists the amounts of a problem that are trial numbers and were not met.
func unmet(p problem.Problem, met map[problem.Quantity]bool) []problem.Quantity {
	return slices.DeleteFunc(p.Quantities(), func(q problem.Quantity) bool {
		return met[q] || !slices.Contains(TrialNumbers, q.Value)
	})
}

// takesExtra reports whether stories of a kind are ever told with a number that
// nobody needs.
func takesExtra(k problem.Kind) bool { return k.Steps() == nil && k != problem.TogetherBoth }

// TrialProblems are the problems of a kind that are made of trial numbers and
// others: those that try the sentences about them hardest. The list is everybody's.
func TrialProblems(k problem.Kind) []problem.Problem { return trialProblems()[k] }

// trialProblems are those of every kind; every event is tried with them.
var trialProblems = sync.OnceValue(func() map[problem.Kind][]problem.Problem {
	out := map[problem.Kind][]problem.Problem{}
	for _, k := range problem.Kinds() {
		out[k] = makeTrials(k)
	}
	return out
})

func makeTrials(k problem.Kind) []problem.Problem {
	var out []problem.Problem
	add := func(numbers ...int) {
		if p, err := problem.New(k, numbers...); err == nil {
			out = append(out, p)
		}
	}
	all := slices.Concat(TrialNumbers, others)
	few := all[:len(TrialNumbers)+3]
	for _, a := range all {
		for _, b := range all {
			if k.Numbers() == 2 {
				add(a, b)
				add(a+b, b)
				continue
			}
			for _, c := range few {
				if k.Numbers() == 3 {
					add(a, b, c)
					continue
				}
				for _, d := range few {
					add(a, b, c, d)
				}
			}
		}
	}
	return out
}
