package mistake

import (
	"slices"

	"homebuild/internal/problem"
)

// nearMisses are how far a number is off when one column went astray.
var nearMisses = []int{1, 10, 100}

// Choices lists the numbers that a child can pick, in order: every number of
// the range (to 10, 20 or 100) and the known wrong numbers beyond it; in a
// larger range the right answer, the known wrong ones, and the near misses.
func Choices(p problem.Problem, extra int) []int {
	var out []int
	for _, m := range Of(p, extra) {
		out = append(out, m.Answer)
	}
	most := largest(p, extra)
	for _, top := range []int{10, 20, 100} {
		if most > top {
			continue
		}
		for n := range top + 1 {
			out = append(out, n)
		}
		return sorted(out)
	}
	out = append(out, p.Answer())
	for _, off := range nearMisses {
		out = append(out, p.Answer()+off, max(0, p.Answer()-off))
	}
	return sorted(out)
}

func sorted(numbers []int) []int {
	slices.Sort(numbers)
	return slices.Compact(numbers)
}

// largest is the largest number of the story, the extra one included.
func largest(p problem.Problem, extra int) int {
	most := extra
	for _, step := range p.Steps() {
		most = max(most, step.Calculation().Largest())
	}
	return most
}
