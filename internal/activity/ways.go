package activity

import (
	"slices"

	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// Ways are the best and the second best way for the answer's working. They are
// worked out when they are asked for: a plan of many weeks has no room for all
// their steps.
func (a Activity) Ways() []strategy.Way {
	steps := a.Problem.Steps()
	return a.waysFor(steps[len(steps)-1])
}

// Focus is the way of working that the story's week practices; 0 for none.
func (a Activity) Focus() strategy.Name { return a.focus }

// ByFocus reports whether a page works the answer, or the step before it, by the way
// that the week practices; true where it practices none.
func (a Activity) ByFocus() bool {
	leads := func(ways []strategy.Way) bool { return len(ways) > 0 && ways[0].Name == a.focus }
	return !a.focus.Valid() || leads(a.Ways()) || leads(a.FirstWays())
}

// FirstWays are the same for the first step of a chain; none for other problems.
func (a Activity) FirstWays() []strategy.Way {
	steps := a.Problem.Steps()
	if len(steps) == 1 {
		return nil
	}
	return a.waysFor(steps[0])
}

// waysFor gives the best two ways to work a step: the week's strategy first, which the
// class has learned whatever its grade, then those that the target is good for; others
// only where none of these fit.
func (a Activity) waysFor(step problem.Problem) []strategy.Way {
	const shown = 2
	c := step.Calculation()
	var all []strategy.Way
	if a.focus.Valid() {
		all = strategy.Ways(c, max(a.Grade, a.focus.FirstGrade()), a.focus)
	} else {
		all = strategy.Ways(c, a.Grade)
	}
	out := slices.DeleteFunc(all, func(w strategy.Way) bool { return w.Name != a.focus && !slices.Contains(a.good, w.Name) })
	if len(out) == 0 {
		out = strategy.Ways(c, a.Grade)
	}
	return out[:min(shown, len(out))]
}
