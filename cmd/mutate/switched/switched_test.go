package switched

import "testing"

const change = 3

// Each row is worked out by hand: with another change switched on, and with this one.
func TestSwitches(t *testing.T) {
	for _, row := range []struct {
		name      string
		value     func() any
		was, then any
	}{
		{"2 == 2", func() any { return Not(change, 2 == 1+1) }, true, false},
		{"2 < 2", func() any { return Less(change, 2, 2) }, false, true},
		{"1 < 2", func() any { return Less(change, 1, 2) }, true, true},
		{"2 <= 2", func() any { return LessOrEqual(change, 2, 2) }, true, false},
		{"3 <= 2", func() any { return LessOrEqual(change, 3, 2) }, false, false},
		{"2 > 2", func() any { return Greater(change, 2, 2) }, false, true},
		{"b > a", func() any { return Greater(change, "b", "a") }, true, true},
		{"2 >= 2", func() any { return GreaterOrEqual(change, 2, 2) }, true, false},
		{"1 >= 2", func() any { return GreaterOrEqual(change, 1, 2) }, false, false},
		{"7 + 2", func() any { return Add(change, 7, 2) }, 9, 5},
		{"7 - 2", func() any { return Subtract(change, 7, 2) }, 5, 9},
		{"6 * 2", func() any { return Multiply(change, 6, 2) }, 12, 3},
		{"6 / 2", func() any { return Divide(change, 6, 2) }, 3, 12},
		{"7.5 / 3", func() any { return Divide(change, 7.5, 3) }, 2.5, 22.5},
		{"7 % 2", func() any { return Remainder(change, 7, 2) }, 1, 14},
		{"one more", func() any { return One(change) }, 1, -1},
		{"-7", func() any { return Negate(change, 7) }, -7, 7},
	} {
		t.Run(row.name, func(t *testing.T) {
			t.Cleanup(func() { on = 0 })
			for _, other := range []int{0, change + 1} {
				if on = other; row.value() != row.was {
					t.Errorf("change %d is on: want %v, got %v", on, row.was, row.value())
				}
			}
			if on = change; row.value() != row.then {
				t.Errorf("the change is on: want %v, got %v", row.then, row.value())
			}
		})
	}
}

func TestChosen(t *testing.T) {
	for text, want := range map[string]int{"": 0, "0": 0, "12": 12, "twelve": 0} {
		if got := chosen(text); got != want {
			t.Errorf("%q: want %d, got %d", text, want, got)
		}
	}
}
