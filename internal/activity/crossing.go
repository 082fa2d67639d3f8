package activity

import (
	"slices"

	"homebuild/internal/problem"
)

// allows reports whether numbers that make p fit the target's crossing rule. A
// chain passes a ten when one of its steps does.
func (c Crossing) allows(p problem.Problem) bool {
	if c == CrossEither {
		return true
	}
	passes, carries := false, false
	for _, step := range p.Steps() {
		one, other := crossing(step.Calculation())
		passes, carries = passes || one, carries || other
	}
	if c == CrossAlways {
		return passes
	}
	return !carries
}

// crossing tells of a calculation whether it passes a ten, and whether some
// column of its parts comes to ten or more. The two differ for parts that reach
// ten exactly within twenty: 8 + 2 passes no ten, yet it is no sum within the
// ones either, so it belongs to neither "always" nor "never". Beyond twenty a
// column that comes to ten exactly makes a new ten, and so passes it.
func crossing(c problem.Calculation) (passes, carries bool) {
	parts, whole := c.Numbers, c.Value()
	if c.Op == problem.Minus {
		whole = c.Numbers[0]
		parts = append(slices.Clone(c.Numbers[1:]), c.Value())
	}
	most := 0
	for unit := 1; unit <= whole; unit *= 10 {
		column := 0
		for _, n := range parts {
			column += n / unit % 10
		}
		most = max(most, column)
	}
	carries = most >= 10
	return carries && (most > 10 || whole > 20), carries
}
