package estimate

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// PartWhole tells the test that needs no calculation: a whole is never smaller
// than a part, so the answer of a sum is at least its biggest part, and that of a
// difference at most its whole. Common practice, no published source.
func PartWhole(c problem.Calculation) phrase.Line {
	if c.Op == problem.Minus {
		return phrase.Say("check.part-whole.difference", phrase.Number("Whole", c.Numbers[0]))
	}
	return phrase.Say("check.part-whole.sum", phrase.Number("Part", slices.Max(c.Numbers)))
}

// PartWholeFits tells that the right answer passes the test.
func PartWholeFits(c problem.Calculation) phrase.Line {
	return phrase.Say("check.part-whole.fits", phrase.Number("Given", c.Value()))
}
