package activity

import (
	"testing"

	"homebuild/internal/problem"
)

// A number is of the upper half of a range where twice as much is beyond it.
func TestHalfWith(t *testing.T) {
	for _, row := range []struct {
		within, n int
		want      half
	}{{20, 10, lowerHalf}, {20, 11, upperHalf}, {5, 2, lowerHalf}, {5, 3, upperHalf}, {1000, 500, lowerHalf}} {
		if got := (Target{Within: row.within}).halfWith(row.n); got != row.want {
			t.Errorf("%d of %d is of half %d, want %d", row.n, row.within, got, row.want)
		}
	}
}

// What comes back is of the upper half of its range, but to ten while easy facts are to
// be met; a week about facts has an easy and a hard one in turn for as long.
func TestHalfFor(t *testing.T) {
	facts20 := named(t, "facts-within-20")
	plain20, plain10 := named(t, "add-within-20"), named(t, "add-within-10")
	for _, row := range []struct {
		name   string
		target Target
		place  int
		review bool
		knows  bool // the class has met every fact of the lower half
		want   half
	}{
		{"no wish", plain20, 0, false, false, eitherHalf},
		{"comes back", plain20, 4, true, false, upperHalf},
		{"comes back, to ten", plain10, 4, true, false, eitherHalf},
		{"comes back, to ten, and the easy ones are known", plain10, 4, true, true, upperHalf},
		{"facts: the worked story", facts20, 0, false, false, lowerHalf},
		{"facts: the first to try", facts20, 1, false, false, upperHalf},
		{"facts: the second to try", facts20, 2, false, false, lowerHalf},
		{"facts: the easy ones are known", facts20, 0, false, true, upperHalf},
		{"facts: comes back", facts20, 4, true, false, upperHalf},
	} {
		m := newMemory()
		if row.knows {
			for a := 1; a <= 9; a++ {
				for b := a; 2*(a+b) <= row.target.Within; b++ {
					m.meet(made(t, problem.AddToResult, a, b))
				}
			}
		}
		if got := m.halfFor(Request{Target: row.target, review: row.review}, row.place); got != row.want {
			t.Errorf("%s: half %d, want %d", row.name, got, row.want)
		}
	}
}
