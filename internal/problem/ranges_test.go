package problem

import "testing"

// Within 10, 20, 100 and 1000: CCSS-M 2010, K.OA.A.2, 1.OA.C.6, 2.NBT.B.5, 3.NBT.A.2.
func TestRangeOf(t *testing.T) {
	for n, want := range map[int]int{0: 10, 10: 10, 11: 20, 20: 20, 21: 100, 100: 100, 101: 1000, 1000: 1000, 1001: 1001} {
		if got := RangeOf(n); got != want {
			t.Errorf("%d is within %d, want %d", n, got, want)
		}
	}
}
