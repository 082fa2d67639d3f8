package story

import (
	"slices"

	"homebuild/internal/problem"
)

// Loss is a kind of story that a language cannot tell, though others can.
type Loss struct {
	Kind   problem.Kind
	Beyond int // only with amounts beyond this; 0 for the kind as a whole
}

// Lost lists what weeks lose when only some of the events are told: a kind as a
// whole, or its amounts beyond 20 or 100, the ranges of the targets.
func (all Places) Lost(told Places) []Loss {
	var out []Loss
	for _, k := range problem.Kinds() {
		for _, beyond := range []int{0, 20, 100} {
			if all.reaches(k, beyond) && !told.reaches(k, beyond) {
				out = append(out, Loss{k, beyond})
				break // what is lost beyond 20 is lost beyond 100
			}
		}
	}
	return out
}

// reaches reports whether some event tells a kind with amounts beyond a number.
func (all Places) reaches(k problem.Kind, beyond int) bool {
	return all.any(func(e *Event) bool { return slices.Contains(e.Kinds, k) && e.Span(k).Most > beyond })
}
