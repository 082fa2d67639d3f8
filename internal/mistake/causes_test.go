package mistake

import (
	"maps"
	"slices"
	"testing"

	"homebuild/internal/problem"
)

// What a cause gives, all of it, worked by hand beforehand by its rule (common
// practice, no published source), and where it gives nothing.
func TestAllThatACauseGives(t *testing.T) {
	sum, difference := problem.TogetherTotal, problem.TakeFromResult
	for _, row := range []struct {
		kind  problem.Kind
		a, b  int
		cause Cause
		want  []int
		why   string
	}{
		{sum, 38, 25, NotMended, []int{65}, "40 + 25; 25 is near to no ten"},
		{sum, 38, 25, MendedWrong, []int{67}, "40 + 25 + 2"},
		{sum, 12, 45, NotMended, []int{55}, "10 + 45"},
		{sum, 12, 45, MendedWrong, []int{53}, "10 + 45 - 2"},
		{sum, 96, 58, NotMended, []int{156, 158}, "96 + 60, 100 + 58"},
		{sum, 96, 58, MendedWrong, []int{158, 162}, "96 + 60 + 2, 100 + 58 + 4"},
		{sum, 7, 4, NotMended, []int{14}, "10 + 4"},
		{sum, 7, 4, MendedWrong, []int{17}, "10 + 4 + 3"},
		{sum, 20, 34, NotMended, nil, "20 is round, and 34 near to no ten"},
		{difference, 72, 29, NotMended, []int{42}, "72 - 30: nobody begins at 70"},
		{difference, 72, 29, MendedWrong, []int{41}, "72 - 30 - 1"},
		{difference, 50, 48, NotMended, []int{0}, "50 - 50"},
		{difference, 50, 48, MendedWrong, nil, "50 - 50 - 2 is below nothing"},
		{difference, 12, 8, MendedWrong, nil, "12 - 10 - 2 is nothing: 0 is no answer of such a working"},
		{difference, 49, 48, NotMended, nil, "50 cannot be taken from 49"},
		{difference, 10, 7, NotMended, nil, "nothing is rounder within ten"},
		{difference, 13, 9, SmallerFromLarger, []int{6}, "9 - 3"},
		{difference, 10, 9, SmallerFromLarger, nil, "there are no ones to turn around"},
		{difference, 15, 5, SmallerFromLarger, nil, "5 - 5 either way"},
		{difference, 13, 10, SmallerFromLarger, nil, "10 has no ones"},
		{difference, 20, 9, SmallerFromLarger, nil, "20 is no teen number"},
		{difference, 9, 3, SmallerFromLarger, nil, "there is no ten"},
		{difference, 503, 285, StopsBorrowAtZero, []int{228}, "the 0 gives, and nothing is taken for that"},
		{difference, 503, 285, BorrowNoDecrement, []int{328}, "15 - 5, 10 - 8 and 5 - 2 hundreds: neither is paid"},
		{difference, 8, 3, ReversedDigits, nil, "5 has one digit"},
		{difference, 48, 18, ReversedDigits, nil, "30 would be 03"},
		{difference, 49, 18, ReversedDigits, []int{13}, "31"},
	} {
		got := slices.Sorted(maps.Keys(gives(Of(mustNew(t, row.kind, row.a, row.b), 0), row.cause)))
		if !slices.Equal(got, row.want) {
			t.Errorf("%v of %d and %d: %v gives %v, want %v (%s)", row.kind, row.a, row.b, row.cause, got, row.want, row.why)
		}
	}
}

// A sum makes a ten from ten ones on, a difference opens one where the ones are too few.
func TestTrades(t *testing.T) {
	for _, row := range []struct {
		kind problem.Kind
		a, b int
		unit int
		want bool
	}{
		{problem.TogetherTotal, 28, 12, 10, true},
		{problem.TogetherTotal, 28, 11, 10, false},
		{problem.TogetherTotal, 160, 240, 100, true},
		{problem.TogetherTotal, 160, 230, 100, false},
		{problem.TakeFromResult, 42, 13, 10, true},
		{problem.TakeFromResult, 43, 13, 10, false},
		{problem.TakeFromResult, 340, 150, 100, true},
	} {
		r := newReading(Question{Problem: mustNew(t, row.kind, row.a, row.b)})
		if got := r.trades(row.unit); got != row.want {
			t.Errorf("%v of %d and %d trades a %d: %v, want %v", row.kind, row.a, row.b, row.unit, got, row.want)
		}
	}
}

// What is put right the wrong way is written as a child writes it.
func TestMendedWorking(t *testing.T) {
	for _, m := range Of(mustNew(t, problem.TogetherTotal, 12, 45), 0) {
		if m.Cause != MendedWrong {
			continue
		}
		if got := m.Hint.Values[0].Equation.String(); got != "10 + 45 - 2 = 53" {
			t.Errorf("12 + 45 with 10 for 12 is shown as %s", got)
		}
	}
}

// An answer of ten is no small one: four more are near it where numbers go to 100.
func TestCloseToTen(t *testing.T) {
	help := Question{Problem: mustNew(t, problem.TakeFromResult, 43, 33)}.Help(100, 0)
	if r, _ := help.To(14); r.Sort != Close {
		t.Errorf("43 - 33, reply to 14 is of the sort %d, want close", r.Sort)
	}
}
