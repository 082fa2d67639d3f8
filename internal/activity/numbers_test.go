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

// A span is the multiples of its step, from the first that is large enough.
func TestSpan(t *testing.T) {
	for _, row := range []struct{ least, most, step, first, size int }{
		{0, 5, 0, 1, 5}, {1, 10, 10, 10, 1}, {10, 40, 10, 10, 4}, {11, 40, 10, 20, 3}, {11, 49, 10, 20, 3},
		{5, 4, 1, 5, 0}, {4, 4, 1, 4, 1}, {1, 9, 10, 10, 0},
	} {
		s := spanOf(row.least, row.most, row.step)
		if s.least != row.first || s.size() != uint64(row.size) {
			t.Errorf("from %d to %d by %d: %d numbers from %d on, want %d from %d on", row.least, row.most, row.step, s.size(), s.least, row.size, row.first)
		}
	}
}

// A box has each of its sets at one place, and no other.
func TestBox(t *testing.T) {
	b := box{spanOf(10, 30, 10), spanOf(2, 4, 1)}
	seen := map[numbers]bool{}
	for at := range b.size() {
		seen[b.at(at)] = true
	}
	for first := range 41 {
		for second := range 6 {
			n := numbers{first, second}
			want := (first == 10 || first == 20 || first == 30) && 2 <= second && second <= 4
			if seen[n] != want || b.has(n) != want {
				t.Errorf("%v: at a place %v, in the box %v, want %v", n, seen[n], b.has(n), want)
			}
		}
	}
}

// The box of a kind goes as far as its numbers can, and no farther.
func TestBoxOfAKind(t *testing.T) {
	from11 := Target{Within: 20, Limits: Limits{FirstLeast: 11}}
	for _, row := range []struct {
		target Target
		kind   problem.Kind
		n      numbers
		want   bool
	}{
		{from11, problem.AddToResult, numbers{11, 9}, true}, {from11, problem.AddToResult, numbers{11, 10}, false},
		{from11, problem.AddToResult, numbers{10, 9}, false},
		{from11, problem.TakeFromResult, numbers{20, 19}, true}, {from11, problem.TakeFromResult, numbers{20, 20}, false},
		{Target{Within: 20}, problem.TogetherThree, numbers{1, 1, 18}, true}, {Target{Within: 20}, problem.TogetherThree, numbers{1, 1, 19}, false},
		{Target{Within: 20}, problem.TogetherThree, numbers{18, 1, 1}, true}, {Target{Within: 20}, problem.TogetherThree, numbers{19, 1, 1}, false},
		{from11, problem.TogetherThree, numbers{11, 1, 8}, true}, {from11, problem.TogetherThree, numbers{11, 1, 9}, false},
		{Target{Within: 20}, problem.TogetherFour, numbers{1, 1, 1, 17}, true}, {Target{Within: 20}, problem.TogetherFour, numbers{1, 1, 1, 18}, false},
		{Target{Within: 20}, problem.TogetherFour, numbers{17, 1, 1, 1}, true}, {Target{Within: 20}, problem.TogetherFour, numbers{18, 1, 1, 1}, false},
		{Target{Within: 20, Limits: Limits{SecondLeast: 3}}, problem.TogetherThree, numbers{1, 3, 16}, true}, {Target{Within: 20, Limits: Limits{SecondLeast: 3}}, problem.TogetherThree, numbers{1, 3, 17}, false},
		{Target{Within: 20, Limits: Limits{SecondLeast: 3}}, problem.TogetherThree, numbers{14, 3, 3}, true}, {Target{Within: 20, Limits: Limits{SecondLeast: 3}}, problem.TogetherThree, numbers{15, 3, 3}, false},
		{Target{Within: 100, Limits: Limits{SecondMost: 9}}, problem.AddToResult, numbers{50, 9}, true}, {Target{Within: 100, Limits: Limits{SecondMost: 9}}, problem.AddToResult, numbers{50, 10}, false},
		{Target{Within: 20}, problem.AddThenTake, numbers{20, 9, 9}, true}, {Target{Within: 20}, problem.AddThenTake, numbers{20, 10, 9}, false},
	} {
		if got := row.target.box(row.kind).has(row.n); got != row.want {
			t.Errorf("%v of %v with %+v: in the box %v, want %v", row.kind, row.n, row.target.Limits, got, row.want)
		}
	}
}

// What a target takes, and what not.
func TestHolds(t *testing.T) {
	to20, facts := Target{Within: 20}, Target{Within: 20, Limits: Limits{PartMost: 9}}
	whole := Target{Within: 10, Limits: Limits{Whole: 10}}
	for _, row := range []struct {
		name   string
		target Target
		kind   problem.Kind
		n      numbers
		want   bool
	}{
		{"up to the largest", to20, problem.AddToResult, numbers{12, 8}, true},
		{"beyond it", to20, problem.AddToResult, numbers{12, 9}, false},
		{"from the largest", to20, problem.TakeFromResult, numbers{20, 8}, true},
		{"from beyond it", to20, problem.TakeFromResult, numbers{21, 8}, false},
		{"one is left", to20, problem.TakeFromResult, numbers{9, 8}, true},
		{"nothing is left", to20, problem.TakeFromResult, numbers{8, 8}, false},
		{"three up to the largest", to20, problem.TogetherThree, numbers{8, 8, 4}, true},
		{"three beyond it", to20, problem.TogetherThree, numbers{8, 8, 5}, false},
		{"a chain beyond it on the way", to20, problem.AddThenTake, numbers{15, 9, 8}, false},
		{"a chain that comes to nothing on the way", to20, problem.TakeThenAdd, numbers{9, 9, 8}, false},
		{"the largest part", facts, problem.AddToResult, numbers{9, 9}, true},
		{"a larger part", facts, problem.AddToResult, numbers{10, 4}, false},
		{"the largest part is left", facts, problem.TakeFromResult, numbers{18, 9}, true},
		{"a larger part is left", facts, problem.TakeFromResult, numbers{13, 3}, false},
		{"a larger part is taken", facts, problem.TakeFromResult, numbers{13, 10}, false},
		{"the whole", whole, problem.AddToResult, numbers{6, 4}, true},
		{"another whole", whole, problem.AddToResult, numbers{5, 4}, false},
		{"a part of the whole", whole, problem.TogetherAddend, numbers{10, 4}, true},
		{"a part of another whole", whole, problem.TogetherAddend, numbers{9, 4}, false},
	} {
		if _, got := row.target.holds(row.kind, row.n); got != row.want {
			t.Errorf("%s: %v of %v is the target's: %v, want %v", row.name, row.kind, row.n, got, row.want)
		}
	}
}

// Within twenty the later numbers of two steps have one digit (Progressions for the
// CCSS-M, K-5 Operations and Algebraic Thinking, grade 2).
func TestLaterMost(t *testing.T) {
	for within, want := range map[int]int{10: 9, 20: 9, 21: 21, 100: 100} {
		if got := (Target{Within: within}).laterMost(); got != want {
			t.Errorf("within %d: later numbers up to %d, want %d", within, got, want)
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
