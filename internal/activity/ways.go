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

// Focus is the way of working that the story's week practises; 0 for none.
func (a Activity) Focus() strategy.Name { return a.focus }

// FirstWays are the same for the first step of a chain; none for other problems.
func (a Activity) FirstWays() []strategy.Way {
	steps := a.Problem.Steps()
	if len(steps) == 1 {
		return nil
	}
	return a.waysFor(steps[0])
}

// waysFor gives the best two ways to work a step: the week's strategy first,
// then those that the target is good for; others only where none of these fit.
func (a Activity) waysFor(step problem.Problem) []strategy.Way {
	const shown = 2
	all := strategy.Ways(step.Calculation(), a.Grade, prefer(a.focus)...)
	var out []strategy.Way
	for _, w := range all {
		if w.Name == a.focus || slices.Contains(a.good, w.Name) {
			out = append(out, w)
		}
	}
	if len(out) == 0 {
		out = all
	}
	return out[:min(shown, len(out))]
}

func prefer(focus strategy.Name) []strategy.Name {
	if focus == 0 {
		return nil
	}
	return []strategy.Name{focus}
}
