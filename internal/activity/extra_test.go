package activity

import (
	"testing"

	"homebuild/internal/problem"
)

// made is a problem of numbers that make one.
func made(t *testing.T, kind problem.Kind, n ...int) problem.Problem {
	t.Helper()
	p, err := problem.New(kind, n...)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// A number that nobody needs is no other of the story, and who uses it comes to a wrong
// number that no other mistake gives: then the reply knows what the child did.
func TestApart(t *testing.T) {
	sum, difference := made(t, problem.AddToResult, 8, 6), made(t, problem.TakeFromResult, 14, 6)
	for _, row := range []struct {
		problem problem.Problem
		extra   int
		want    bool
		why     string
	}{
		{sum, 3, true, "8 + 3, 6 + 3 and 8 + 6 + 3 are nobody's else"},
		{sum, 8, false, "it is told"},
		{sum, 14, false, "it is the answer"},
		{sum, 5, false, "8 + 5 = 13 is also one counted too few"},
		{sum, 13, true, "8 + 13, 6 + 13 and 8 + 6 + 13 are nobody's else, though 13 is one counted too few"},
		{sum, 7, false, "8 + 7 = 15 is also one counted too many"},
		{sum, 2, false, "8 + 6 + 2 = 16 is also an estimate that was not mended: 10 + 6"},
		{difference, 3, true, "14 - 3 and 14 - 6 - 3 are nobody's else"},
		{difference, 5, false, "14 - 5 = 9 is also one taken too few"},
		{difference, 7, false, "14 - 7 = 7 is also one taken too many"},
		{difference, 8, false, "it is the answer"},
	} {
		if got := Apart(row.problem, row.extra); got != row.want {
			t.Errorf("%d beside %v: apart %v, want %v: %s", row.extra, row.problem.Equation(), got, row.want, row.why)
		}
	}
}

// A teacher's own story keeps a number of hers that nobody needs where a child who uses
// it can be helped.
func TestExtraNumberOfAnOwnStory(t *testing.T) {
	for _, row := range []struct {
		name string
		Given
		want int
	}{
		{"apart", Given{made(t, problem.AddToResult, 8, 6), 3}, 3},
		{"two", Given{made(t, problem.AddToResult, 13, 5), 2}, 2},
		{"none", Given{made(t, problem.AddToResult, 9, 6), 0}, 0},
		{"one stands for many things: one day, one boat", Given{made(t, problem.AddToResult, 9, 6), 1}, 0},
		{"not apart", Given{made(t, problem.AddToResult, 8, 6), 5}, 0},
		{"two steps", Given{made(t, problem.AddThenAdd, 8, 6, 2), 3}, 0},
		{"any parts are right", Given{made(t, problem.TogetherBoth, 8, 6), 3}, 0},
	} {
		if got := row.extra(); got != row.want {
			t.Errorf("%s: %v with %d keeps %d, want %d", row.name, row.Problem.Equation(), row.ExtraNumber, got, row.want)
		}
	}
}

// An estimate helps with one answer, and not where any parts of a number are right.
func TestEstimated(t *testing.T) {
	for kind, want := range map[problem.Kind]bool{problem.AddToResult: true, problem.TogetherTotal: true, problem.TogetherBoth: false} {
		if e, ok := estimated(made(t, kind, 48, 29), 0, 2); ok != want {
			t.Errorf("%v of 48 and 29 has the estimate %v: %v, want %v", kind, e.Equation, ok, want)
		}
	}
}
