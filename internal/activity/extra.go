package activity

import (
	"slices"
	"strconv"

	"homebuild/internal/mistake"
	"homebuild/internal/problem"
)

// An extra number is of the size of the story's own: 2 to 20, or 11 to 50 where
// these are larger. 0 and 1 show nothing.
func extraRange(p problem.Problem, within int) (least, most int) {
	if p.Calculation().Largest() > 20 {
		return 11, min(50, within)
	}
	return 2, min(20, within)
}

// placeExtra gives one of the stories a number that is not needed, such that
// using it gives a wrong number of its own. It reports whether a story could
// take one.
func placeExtra(r Request, stories []Activity) bool {
	for i := range shuffled(uint64(len(stories)), draw(r.Key, r.Week, "extra")) {
		if n, ok := extraFor(r, stories[i].Problem); ok {
			stories[i].ExtraNumber = n
			return true
		}
	}
	return false
}

// extraFor finds an extra number for p. Chains have enough numbers as it is,
// and any number answers a question with many right answers.
func extraFor(r Request, p problem.Problem) (int, bool) {
	if p.Kind().Steps() != nil || p.Kind() == problem.TogetherBoth {
		return 0, false
	}
	least, most := extraRange(p, r.Target.Within)
	seed := draw(r.Key, r.Week, "extra number", strconv.Itoa(p.Answer()))
	for i := range shuffled(uint64(most-least+1), seed) {
		if n := int(i) + least; distinct(p, n) {
			return n, true
		}
	}
	return 0, false
}

// extra is the number that is not needed where a child who uses it can be
// helped: not in chains, and not where another mistake gives the same.
func (g Given) extra() int {
	if g.Problem.Kind().Steps() != nil || g.Problem.Kind() == problem.TogetherBoth || g.ExtraNumber < 2 || !distinct(g.Problem, g.ExtraNumber) {
		return 0
	}
	return g.ExtraNumber
}

// distinct reports whether n is not a number of p, and using it gives no number
// that another mistake gives too.
func distinct(p problem.Problem, n int) bool {
	if slices.ContainsFunc(p.Quantities(), func(q problem.Quantity) bool { return q.Value == n }) {
		return false
	}
	return !slices.ContainsFunc(mistake.Of(p, n), func(m mistake.Mistake) bool {
		return m.Cause == mistake.UsedExtra && !m.Only
	})
}
