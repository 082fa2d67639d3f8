package activity

import (
	"slices"
	"testing"

	"homebuild/internal/problem"
)

// fromWorking is the inverse of problem.Calculation for every one-step kind.
func TestFromWorking(t *testing.T) {
	for _, kind := range problem.Kinds() {
		if kind.Steps() != nil || kind == problem.TogetherThree || kind == problem.TogetherFour {
			continue
		}
		for a := 1; a <= 30; a++ {
			for b := 1; b < a; b++ {
				p, err := numbers{a, b}.problem(kind)
				if err != nil {
					t.Fatal(err)
				}
				if c := p.Calculation(); !slices.Equal(c.Numbers, []int{a, b}) || c.Op != opOf(kind) {
					t.Errorf("%v from %d and %d is worked as %v", kind, a, b, c)
				}
			}
		}
	}
}

// regroups counts with single units whether adding the parts of a fact makes a
// new ten (or hundred): it writes the parts as sticks and dots and trades.
func regroups(parts []int) (traded, more bool) {
	for unit := 1; unit <= 1000; unit *= 10 {
		pieces := 0
		for _, n := range parts {
			for digit := n / unit; digit%10 != 0; digit-- {
				pieces++
			}
		}
		if pieces >= 10 {
			traded = true
		}
		if pieces > 10 {
			more = true
		}
	}
	return traded, more
}

// Every problem of every target stays in its range, keeps its crossing rule and
// its limits, whatever set is taken: all sets of small boxes, many of others.
func TestEverySetIsOfItsTarget(t *testing.T) {
	for _, target := range embedded(t) {
		for _, kind := range target.Kinds {
			n := 0
			box := target.box(kind)
			for at := range shuffled(box.size(), 7) {
				if p, ok := target.holds(kind, box.at(at)); ok {
					checkSet(t, target, p)
					if n++; n == 500/sparse(5) {
						break
					}
				}
			}
			if n == 0 {
				t.Errorf("%s has no set for %v", target.ID, kind)
			}
		}
	}
}

func checkSet(t *testing.T, target Target, p problem.Problem) {
	t.Helper()
	passes, trades := false, false
	for _, step := range p.Steps() {
		for _, q := range step.Quantities() {
			if q.Value < 1 || q.Value > target.Within {
				t.Errorf("%s: %v %v has %v %d, want 1 to %d", target.ID, p.Kind(), p.Numbers(), q.Role, q.Value, target.Within)
			}
		}
		fact := step.Fact()
		var parts []int
		for _, q := range fact.Parts {
			parts = append(parts, q.Value)
		}
		traded, more := regroups(parts)
		trades = trades || traded
		passes = passes || traded && (more || fact.Whole.Value > 20)
	}
	if target.Crossing == CrossAlways && !passes || target.Crossing == CrossNever && trades {
		t.Errorf("%s: %v %v breaks the rule that it %v passes a ten", target.ID, p.Kind(), p.Numbers(), target.Crossing)
	}
	c, l := p.Calculation(), target.Limits
	if p.Kind().Steps() != nil || len(c.Numbers) != 2 {
		return
	}
	a, b := c.Numbers[0], c.Numbers[1]
	if a < l.FirstLeast || b < l.SecondLeast || l.SecondMost > 0 && b > l.SecondMost ||
		l.FirstStep > 0 && a%l.FirstStep != 0 || l.SecondStep > 0 && b%l.SecondStep != 0 ||
		l.Whole > 0 && c.Largest() != l.Whole {
		t.Errorf("%s: %v is outside the limits %+v", target.ID, c, l)
	}
}

// How many sets there are, where a published count exists or is plain: pairs
// 1-9 that pass ten 36 (counted from the hundred one-digit pairs), partners of
// ten 9, sums a + b <= 20 of numbers from 1 190.
func TestCountsOfSets(t *testing.T) {
	for _, row := range []struct {
		id   string
		kind problem.Kind
		want int
	}{
		{"add-past-ten-within-20", problem.AddToResult, 36},
		{"subtract-past-ten-within-20", problem.TakeFromResult, 36},
		{"partners-of-ten", problem.AddToChange, 9},
		{"add-within-20", problem.TogetherTotal, 190},
		{"subtract-within-20", problem.TakeFromResult, 190},
		{"add-within-10", problem.AddToResult, 45},
		{"add-three-within-20", problem.TogetherThree, 1140},   // 20 over 3: where the three parts and the rest begin
		{"add-four-within-100", problem.TogetherFour, 487_635}, // 60 over 4: what is left of 100 above four elevens, and 4 bars between
	} {
		if testing.Short() && row.want > 1000 {
			continue
		}
		target, n := named(t, row.id), 0
		box := target.box(row.kind)
		for at := range box.size() {
			if _, ok := target.holds(row.kind, box.at(at)); ok {
				n++
			}
		}
		if n != row.want {
			t.Errorf("%s, %v: %d sets, want %d", row.id, row.kind, n, row.want)
		}
	}
}

func TestCrossing(t *testing.T) {
	for _, row := range []struct {
		a, b            int
		op              problem.Op
		passes, carries bool
	}{
		{8, 6, problem.Plus, true, true},
		{8, 2, problem.Plus, false, true}, // reaches ten and no further
		{12, 4, problem.Plus, false, false},
		{10, 4, problem.Plus, false, false},
		{28, 12, problem.Plus, true, true}, // a new ten to carry
		{61, 25, problem.Plus, false, false},
		{61, 52, problem.Plus, true, true}, // past a hundred
		{13, 4, problem.Minus, true, true},
		{14, 4, problem.Minus, false, false},
		{20, 4, problem.Minus, false, true},
		{50, 23, problem.Minus, true, true},
		{65, 41, problem.Minus, false, false},
	} {
		passes, carries := crossing(problem.Calculation{Op: row.op, Numbers: []int{row.a, row.b}})
		if passes != row.passes || carries != row.carries {
			t.Errorf("%d %v %d: passes %v, carries %v; want %v, %v", row.a, row.op, row.b, passes, carries, row.passes, row.carries)
		}
	}
}
