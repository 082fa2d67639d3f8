package mistake

import (
	"cmp"
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// Lines lists a sample of every sentence that this package can ask for, sorted
// by message id, so that a catalogue can be checked for all of them.
func Lines() []phrase.Line {
	found := map[string]phrase.Line{}
	for _, c := range Causes() {
		found[c.Name().ID] = c.Name()
	}
	for _, s := range samples() {
		p, err := problem.New(s.kind, s.numbers...)
		if err != nil {
			panic(err) // a sample that makes no problem
		}
		r := newReplies(p, s.extra)
		for n := range 1000 {
			for _, line := range r.to(n).Lines {
				found[line.ID] = line
			}
		}
	}
	lines := make([]phrase.Line, 0, len(found))
	for _, line := range found {
		lines = append(lines, line)
	}
	slices.SortFunc(lines, func(a, b phrase.Line) int { return cmp.Compare(a.ID, b.ID) })
	return lines
}

type sample struct {
	kind    problem.Kind
	numbers []int
	extra   int
}

// samples are problems that together show every reply.
func samples() []sample {
	return []sample{
		{problem.TogetherTotal, []int{8, 6}, 5}, {problem.TogetherTotal, []int{28, 17}, 0},
		{problem.TogetherTotal, []int{47, 5}, 0}, {problem.AddToResult, []int{4, 8}, 0},
		{problem.TakeFromResult, []int{13, 4}, 0}, {problem.TakeFromResult, []int{103, 45}, 0},
		{problem.TakeFromResult, []int{304, 75}, 0}, {problem.TakeFromResult, []int{500, 283}, 0},
		{problem.TakeFromResult, []int{62, 44}, 0}, {problem.TakeFromResult, []int{50, 23}, 0},
		{problem.TogetherBoth, []int{4, 6}, 0}, {problem.TogetherThree, []int{5, 4, 6}, 0},
		{problem.BiggerMore, []int{8, 5}, 0}, {problem.SmallerMore, []int{12, 3}, 0},
		{problem.AddThenTake, []int{8, 5, 4}, 0},
	}
}
