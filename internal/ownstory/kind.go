package ownstory

import (
	"fmt"
	"slices"

	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// sample is a problem of a kind with handy numbers.
func sample(kind problem.Kind) problem.Problem {
	for _, numbers := range [][]int{{8, 6}, {9, 4, 3}, {9, 4, 3, 5}} {
		if p, err := problem.New(kind, numbers...); err == nil {
			return p
		}
	}
	panic("ownstory: no numbers for " + kind.String())
}

// given is how many numbers the story of a kind gives.
func given(kind problem.Kind) int { return len(sample(kind).Given()) }

// fromGiven makes a problem of a kind from the numbers that its story gives, as
// many as given says, in the order of Problem.Given; problem.New wants the true
// quantities instead, the asked one among them.
func fromGiven(kind problem.Kind, numbers ...int) (problem.Problem, error) {
	switch a, b := numbers[0], numbers[len(numbers)-1]; kind {
	case problem.AddToChange, problem.TogetherAddend:
		return problem.New(kind, a, b-a)
	case problem.TakeFromChange:
		return problem.New(kind, a, a-b)
	case problem.AddToStart:
		return problem.New(kind, b-a, a)
	case problem.TakeFromStart:
		return problem.New(kind, b+a, a)
	case problem.TogetherBoth:
		first := min((a+2)/2, a) // one pair of many; not the two halves
		return problem.New(kind, first, a-first)
	}
	return problem.New(kind, numbers...)
}

// arrangements are all ways to take so many of the items, in every order; the
// order given comes first.
func arrangements(items []int, size int) [][]int {
	if size == 0 {
		return [][]int{nil}
	}
	var out [][]int
	for i, first := range items {
		rest := slices.Delete(slices.Clone(items), i, i+1)
		for _, tail := range arrangements(rest, size-1) {
			out = append(out, append([]int{first}, tail...))
		}
	}
	return out
}

// showable says why the problem of an equation cannot be shown on a page; nil when it can.
func showable(p problem.Problem) error {
	for _, q := range p.Quantities() {
		switch {
		case q.Value > problem.Largest:
			return &Error{Setting: "equation", Text: fmt.Sprintf("%d is larger than %d", q.Value, problem.Largest), Hint: "pages show numbers up to that one"}
		case q.Role == problem.RoleDifference && q.Value == 0:
			return &Error{Setting: "equation", Text: "both amounts are the same, so there is no difference to ask for", Hint: "change one of the numbers"}
		}
	}
	if _, ok := picture.AllPairs(p); p.Pairs() != nil && !ok {
		return &Error{
			Setting: "equation", Text: fmt.Sprintf("%d can be parted in too many ways to list them", p.Calculation().Value()),
			Hint: fmt.Sprintf("take a number up to %d", picture.Most),
		}
	}
	return nil
}
