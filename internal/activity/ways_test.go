package activity

import (
	"testing"

	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// A page works an answer by the week's way where that fits it, or the step before; what
// a week practices nothing in is worked by it always.
func TestByFocus(t *testing.T) {
	for _, row := range []struct {
		problem problem.Problem
		focus   strategy.Name
		want    bool
	}{
		{made(t, addTo, 8, 6), strategy.MakeTen, true},
		{made(t, addTo, 12, 3), strategy.MakeTen, false},
		{made(t, takeFrom, 14, 6), strategy.MakeTen, false},
		{made(t, addTo, 12, 3), 0, true},
		{made(t, problem.AddThenTake, 8, 6, 5), strategy.MakeTen, true},    // 8 + 6 first
		{made(t, problem.TakeThenAdd, 14, 6, 5), strategy.MakeTen, true},   // then 8 + 5
		{made(t, problem.TakeThenTake, 14, 6, 5), strategy.MakeTen, false}, // no sum at all
	} {
		a := Activity{Problem: row.problem, Grade: 2, focus: row.focus, good: []strategy.Name{strategy.MakeTen, strategy.CountOn, strategy.CountBack, strategy.BridgeBack}}
		if got := a.ByFocus(); got != row.want {
			t.Errorf("%v is worked by %v: %v, want %v", row.problem.Equation(), row.focus, got, row.want)
		}
	}
}

// The ways that the target is good for come first, two at most; of the others one stands
// only where none of these fits.
func TestWays(t *testing.T) {
	for _, row := range []struct {
		problem problem.Problem
		focus   strategy.Name
		good    []strategy.Name
		first   strategy.Name
		most    int
	}{
		{made(t, addTo, 8, 6), 0, []strategy.Name{strategy.MakeTen}, strategy.MakeTen, 1},
		{made(t, addTo, 8, 3), 0, []strategy.Name{strategy.CountOn}, strategy.CountOn, 1},
		{made(t, addTo, 8, 3), strategy.MakeTen, []strategy.Name{strategy.CountOn}, strategy.MakeTen, 2},
		{made(t, addTo, 8, 6), 0, []strategy.Name{strategy.BridgeBack}, 0, 2}, // which is for differences
	} {
		got := Activity{Problem: row.problem, Grade: 1, focus: row.focus, good: row.good}.Ways()
		if len(got) == 0 || len(got) > row.most || row.first.Valid() && got[0].Name != row.first {
			t.Errorf("%v by %v, good for %v: %d ways, want %v first and %d at most", row.problem.Equation(), row.focus, row.good, len(got), row.first, row.most)
		}
	}
	if one, chain := (Activity{Problem: made(t, addTo, 8, 6), Grade: 1}), (Activity{Problem: made(t, problem.AddThenTake, 8, 6, 5), Grade: 2}); len(one.FirstWays()) > 0 || len(chain.FirstWays()) == 0 {
		t.Errorf("one step has %d ways for its first step, two have %d", len(one.FirstWays()), len(chain.FirstWays()))
	}
}
