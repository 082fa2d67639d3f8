package ownstory

import "homebuild/internal/problem"

// sample is a problem of a kind with handy numbers.
func sample(kind problem.Kind) problem.Problem {
	for _, numbers := range [][]int{{8, 6}, {9, 4, 3}} {
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

// plainWords are what happens in the stories of a kind, and what they ask: the
// two columns of docs/own-stories.md that a teacher chooses by.
var plainWords = map[problem.Kind]struct{ happens, asked string }{
	problem.AddToResult:        {"some come", "how many then?"},
	problem.AddToChange:        {"some come", "how many came?"},
	problem.AddToStart:         {"some come", "how many at first?"},
	problem.TakeFromResult:     {"some go", "how many are left?"},
	problem.TakeFromChange:     {"some go", "how many went?"},
	problem.TakeFromStart:      {"some go", "how many at first?"},
	problem.TogetherTotal:      {"two parts", "how many in all?"},
	problem.TogetherAddend:     {"two parts", "how many in the other part?"},
	problem.TogetherBoth:       {"two parts", "how many could be in each?"},
	problem.DifferenceMore:     {"two are compared", "how many more does one have?"},
	problem.DifferenceFewer:    {"two are compared", "how many fewer does one have?"},
	problem.BiggerMore:         {"one has so many more", "how many does that one have?"},
	problem.BiggerFewer:        {"one has so many fewer", "how many does the other have?"},
	problem.SmallerMore:        {"one has so many more", "how many does the other have?"},
	problem.SmallerFewer:       {"one has so many fewer", "how many does that one have?"},
	problem.TogetherThree:      {"three parts", "how many in all?"},
	problem.AddThenAdd:         {"some come, then more come", "how many then?"},
	problem.AddThenTake:        {"some come, then some go", "how many then?"},
	problem.TakeThenAdd:        {"some go, then some come", "how many then?"},
	problem.TakeThenTake:       {"some go, then more go", "how many are left?"},
	problem.TogetherThenTake:   {"two parts, then some go", "how many are left?"},
	problem.BiggerThenTogether: {"one has so many more", "how many do both have?"},
}

// Happens says what happens in the story, for a person who chooses: "some come".
func (c Choice) Happens() string { return plainWords[c.Problem.Kind()].happens }

// Asked says what is asked: "how many then?"
func (c Choice) Asked() string { return plainWords[c.Problem.Kind()].asked }
