package estimate

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// PartWhole tells the test that needs no calculation, and that the answer passes:
// a whole is never smaller than a part; of two amounts that are compared, the
// bigger one is never less. It is false for a chain, whose answer need be neither.
// Common practice, no published source.
func PartWhole(p problem.Problem) ([]phrase.Line, bool) {
	if p.Kind().Steps() != nil {
		return nil, false
	}
	id, c := "check.part-whole", p.Calculation()
	part := slices.Max(c.Numbers)
	if p.Kind().Situation() == problem.Compare {
		id, part = "check.compare", c.Numbers[0] // the smaller amount: the sentence names it, and the difference is no amount
	}
	bound := phrase.Say(id+".sum", phrase.Number("Part", part))
	switch {
	case p.Kind() == problem.TogetherBoth:
		bound = phrase.Say(id+".difference", phrase.Number("Whole", c.Value()))
	case c.Op == problem.Minus:
		bound = phrase.Say(id+".difference", phrase.Number("Whole", c.Numbers[0]))
	}
	return []phrase.Line{bound, phrase.Say("check.part-whole.fits", phrase.Number("Given", p.Answer()))}, true
}
