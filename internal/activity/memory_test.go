package activity

import (
	"testing"

	"homebuild/internal/problem"
)

// Two one-digit numbers are one fact, whichever way they stand, whether they are added or
// one is taken from their sum (CCSS-M 2010, 2.OA.B.2: the sums to know from memory).
// Other numbers are met one working at a time.
func TestFactOf(t *testing.T) {
	sum := func(n ...int) problem.Calculation { return problem.Calculation{Op: problem.Plus, Numbers: n} }
	difference := func(a, b int) problem.Calculation {
		return problem.Calculation{Op: problem.Minus, Numbers: []int{a, b}}
	}
	for _, row := range []struct {
		c    problem.Calculation
		want problem.Pair // none where it is no fact
	}{
		{sum(8, 6), problem.Pair{First: 6, Second: 8}},
		{sum(6, 8), problem.Pair{First: 6, Second: 8}},
		{difference(14, 8), problem.Pair{First: 6, Second: 8}},
		{difference(14, 6), problem.Pair{First: 6, Second: 8}},
		{sum(1, 1), problem.Pair{First: 1, Second: 1}},
		{difference(2, 1), problem.Pair{First: 1, Second: 1}},
		{difference(10, 9), problem.Pair{First: 1, Second: 9}},
		{sum(9, 9), problem.Pair{First: 9, Second: 9}},
		{difference(18, 9), problem.Pair{First: 9, Second: 9}},
		{sum(10, 4), problem.Pair{}},
		{sum(4, 10), problem.Pair{}},
		{difference(13, 10), problem.Pair{}},
		{difference(13, 3), problem.Pair{}},
		{sum(2, 3, 4), problem.Pair{}},
	} {
		got := factOf(row.c)
		if got.pair != row.want || got.digits() != (row.want != problem.Pair{}) {
			t.Errorf("%v is the fact %v, want %v", row.c, got.pair, row.want)
		}
	}
	if factOf(sum(10, 4)) != factOf(sum(4, 10)) {
		t.Error("10 + 4 and 4 + 10 are two workings")
	}
	if factOf(difference(13, 3)) == factOf(difference(13, 10)) {
		t.Error("13 - 3 and 13 - 10 are one working")
	}
}

// The same numbers again, as a child would say.
func TestTaskOf(t *testing.T) {
	for _, row := range []struct {
		a, b problem.Problem
		same bool
	}{
		{made(t, problem.AddToResult, 8, 6), made(t, problem.TogetherTotal, 6, 8), true},
		{made(t, problem.AddToChange, 6, 8), made(t, problem.TakeFromResult, 14, 6), true}, // 14 - 6
		{made(t, problem.TakeFromResult, 14, 8), made(t, problem.TakeFromResult, 14, 6), false},
		{made(t, problem.TogetherBoth, 8, 6), made(t, problem.TogetherBoth, 9, 5), true},
		{made(t, problem.TogetherBoth, 8, 6), made(t, problem.TogetherTotal, 8, 6), false},
		{made(t, problem.AddThenAdd, 8, 6, 2), made(t, problem.AddThenAdd, 8, 2, 6), false},
		{made(t, problem.AddThenAdd, 8, 6, 2), made(t, problem.AddThenTake, 8, 6, 2), false},
		{made(t, problem.TogetherThree, 8, 6, 2), made(t, problem.TogetherThree, 2, 8, 6), true},
	} {
		if got := taskOf(row.a) == taskOf(row.b); got != row.same {
			t.Errorf("%v of %v and %v of %v are the same: %v, want %v", row.a.Kind(), row.a.Numbers(), row.b.Kind(), row.b.Numbers(), got, row.same)
		}
	}
}
