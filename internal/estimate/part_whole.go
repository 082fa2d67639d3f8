package estimate

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// PartWholeTest is the test that needs no calculation: a whole is never
// smaller than a part. Common practice, no published source.
type PartWholeTest struct {
	sum      bool
	known    int  // the biggest part of a sum, or the whole of a difference
	strictly bool // the other parts are something, so that the answer is not the known number
}

// PartWhole makes the test for c: the answer of a sum is the whole, that of a
// difference is a part.
func PartWhole(c problem.Calculation) PartWholeTest {
	if c.Op == problem.Minus {
		return PartWholeTest{known: c.Numbers[0], strictly: c.Value() < c.Numbers[0]}
	}
	part := slices.Max(c.Numbers)
	return PartWholeTest{sum: true, known: part, strictly: c.Value() > part}
}

// Passes reports whether a given answer can be right as far as the test sees.
func (t PartWholeTest) Passes(given int) bool {
	switch {
	case given == t.known:
		return !t.strictly
	case t.sum:
		return given > t.known
	}
	return given >= 0 && given < t.known
}

// Say tells the test.
func (t PartWholeTest) Say() phrase.Line {
	if t.sum {
		return phrase.Say("check.part-whole.sum", phrase.Number("Part", t.known))
	}
	return phrase.Say("check.part-whole.difference", phrase.Number("Whole", t.known))
}

// Judge tells what the test says about a given answer.
func (t PartWholeTest) Judge(given int) phrase.Line {
	number := phrase.Number("Given", given)
	switch {
	case t.Passes(given):
		return phrase.Say("check.part-whole.fits", number)
	case given == t.known && t.sum:
		return phrase.Say("check.part-whole.same-as-part", number)
	case given == t.known:
		return phrase.Say("check.part-whole.same-as-whole", number)
	case t.sum:
		return phrase.Say("check.part-whole.too-small", number, phrase.Number("Part", t.known))
	}
	return phrase.Say("check.part-whole.too-big", number, phrase.Number("Whole", t.known))
}
