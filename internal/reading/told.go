package reading

import (
	"fmt"

	"homebuild/internal/problem"
)

// fromTold makes a problem of a kind from the numbers that its story tells, in
// the order of the problem's Told; problem.New wants the true quantities
// instead, the asked one among them.
func fromTold(kind problem.Kind, told ...int) (problem.Problem, error) {
	want := 2
	switch {
	case kind == problem.TogetherBoth:
		want = 1
	case kind == problem.TogetherThree || kind.Steps() != nil && kind != problem.BiggerThenTogether:
		want = 3
	}
	if len(told) != want {
		return problem.Problem{}, fmt.Errorf("%w: %v tells %d numbers, not %d", problem.ErrNumbers, kind, want, len(told))
	}
	numbers := append([]int(nil), told...)
	switch kind {
	case problem.AddToChange, problem.TogetherAddend:
		numbers[1] = told[1] - told[0]
	case problem.TakeFromChange:
		numbers[1] = told[0] - told[1]
	case problem.AddToStart:
		numbers = []int{told[1] - told[0], told[0]}
	case problem.TakeFromStart:
		numbers = []int{told[1] + told[0], told[0]}
	case problem.TogetherBoth:
		first := (told[0] + 2) / 2 // one pair of many; not the two halves
		numbers = []int{min(first, told[0]), told[0] - min(first, told[0])}
	}
	return problem.New(kind, numbers...)
}
