package mistake

import (
	"cmp"
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/strategy"
)

// mostSaid is how many causes are said of one number at most.
const mostSaid = 2

// likelihood orders the causes of one number: what children do often and what says
// exactly what was done comes first, a working that may have been another comes after,
// and what only says that something was left out comes last. Common practice, no
// published source.
type likelihood uint8

const (
	likely       likelihood = iota // stopped early, repeated a number, forgot a ten
	turnedDigits                   // took the smaller digit from the larger one
	exact                          // other slips, those of the week's way first
	signs                          // a sign somewhere on the way was the other one
	otherSet                       // another choice of numbers
	vague                          // something was left out
)

func (c Cause) likelihood() likelihood {
	switch c {
	case FirstStepOnly, PartOnly, CarryDropped:
		return likely
	case SmallerFromLarger:
		return turnedDigits
	case SecondTurned, StepsTurned, Cause(strategy.TurnedAround):
		return signs
	case UsedExtra, LeftOut:
		return otherSet
	case Cause(strategy.PartLost), Cause(strategy.JumpLost), Cause(strategy.StepLost):
		return vague
	}
	return exact
}

// sayable are the hints of the mistakes that give one number, the likeliest first and
// each once; of the same likelihood in the order in which they were found. A vague one
// is left out where an exact one is known.
func sayable(mistakes []Mistake) []phrase.Line {
	sorted := slices.Clone(mistakes)
	slices.SortStableFunc(sorted, func(a, b Mistake) int { return cmp.Compare(a.Cause.likelihood(), b.Cause.likelihood()) })
	var lines []phrase.Line
	for _, m := range sorted {
		known := func(l phrase.Line) bool { return same([]phrase.Line{l}, []phrase.Line{m.Hint}) }
		if m.Cause.likelihood() == vague && sorted[0].Cause.likelihood() <= exact || slices.ContainsFunc(lines, known) {
			continue
		}
		lines = append(lines, m.Hint)
	}
	return lines
}
