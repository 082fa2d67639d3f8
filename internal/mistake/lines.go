package mistake

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// Lines lists a sample of every sentence that this package can ask for, so that a
// catalog can be checked for all of them. The slips of the ways are listed by
// strategy.Lines.
func Lines() []phrase.Line {
	var lines []phrase.Line
	for _, c := range Causes() {
		lines = append(lines, c.Name())
	}
	for _, s := range samples() {
		p, err := problem.New(s.kind, s.numbers...)
		if err != nil {
			panic(err) // a sample that makes no problem
		}
		for _, columns := range []bool{false, true} {
			q := Question{Problem: p, Extra: s.extra, Columns: columns, Ways: strategy.Ways(p.Calculation(), 3)}
			for _, m := range q.Mistakes() {
				lines = append(lines, m.Hint)
			}
			for turn := range openers {
				for _, r := range q.Help(problem.RangeOf(q.largest()), turn).All() {
					lines = append(lines, r.Lines...)
				}
			}
			q.Focus = strategy.CountInTens // not the way of these numbers
			for _, r := range q.Help(problem.RangeOf(q.largest()), 0).All() {
				lines = append(lines, r.Lines...)
			}
		}
		lines = append(lines, Question{Problem: p}.Help(0, 0).Hint...)
	}
	return phrase.Distinct(lines)
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
		{problem.TogetherTotal, []int{147, 5}, 0}, {problem.TogetherTotal, []int{567, 278}, 0}, {problem.AddToResult, []int{4, 8}, 0}, {problem.AddToResult, []int{8, 4}, 0},
		{problem.AddToChange, []int{8, 6}, 0}, {problem.AddToStart, []int{8, 6}, 0}, {problem.TakeFromStart, []int{13, 4}, 0},
		{problem.TakeFromResult, []int{13, 4}, 0}, {problem.TakeFromResult, []int{103, 45}, 0}, {problem.TakeFromResult, []int{857, 167}, 0},
		{problem.TakeFromResult, []int{304, 75}, 0}, {problem.TakeFromResult, []int{500, 283}, 0},
		{problem.TakeFromResult, []int{62, 44}, 0}, {problem.TakeFromResult, []int{50, 23}, 0},
		{problem.TogetherAddend, []int{8, 6}, 0}, {problem.TogetherBoth, []int{4, 8}, 0}, {problem.TogetherThree, []int{5, 4, 6}, 0}, {problem.TogetherThree, []int{28, 37, 19}, 0},
		{problem.TogetherThree, []int{388, 80, 342}, 0}, {problem.TogetherFour, []int{24, 17, 36, 13}, 0},
		{problem.DifferenceMore, []int{14, 9}, 0}, {problem.BiggerMore, []int{8, 5}, 0}, {problem.SmallerMore, []int{12, 3}, 0},
		{problem.AddThenTake, []int{8, 5, 4}, 0}, {problem.TakeThenAdd, []int{8, 3, 4}, 0}, {problem.BiggerThenTogether, []int{8, 5}, 0},
	}
}
