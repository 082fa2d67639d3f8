package activity

import (
	"slices"

	"homebuild/internal/mistake"
	"homebuild/internal/problem"
)

// wantExtra asks one of the stories for a number that is not needed. It reports
// whether a story could take one.
func wantExtra(r Request, stories []Activity) bool {
	for i := range shuffled(uint64(len(stories)), draw(r.Key, r.Week, "extra")) {
		if takesExtra(stories[i].Problem) {
			stories[i].WantsExtra = true
			return true
		}
	}
	return false
}

// takesExtra reports whether a story may have a number that is not needed. Chains
// have enough numbers as it is, and any number answers a question with many right
// answers.
func takesExtra(p problem.Problem) bool {
	return p.Kind().Steps() == nil && p.Kind() != problem.TogetherBoth
}

// With is the activity with a number that is not needed, 0 for none, in its story.
func (a Activity) With(extra int) Activity {
	a.ExtraNumber = extra
	a.estimate()
	return a
}

// extra is the number that is not needed where a child who uses it can be
// helped: not in chains, and not where another mistake gives the same.
func (g Given) extra() int {
	if !takesExtra(g.Problem) || g.ExtraNumber < 2 || !Apart(g.Problem, g.ExtraNumber) {
		return 0
	}
	return g.ExtraNumber
}

// Apart reports whether n may be a number that p does not need: it is none of p's
// own, and using it gives no number that another mistake gives too.
func Apart(p problem.Problem, n int) bool {
	if slices.ContainsFunc(p.Quantities(), func(q problem.Quantity) bool { return q.Value == n }) {
		return false
	}
	return !slices.ContainsFunc(mistake.Of(p, n), func(m mistake.Mistake) bool {
		return m.Cause == mistake.UsedExtra && !m.Only
	})
}
