package activity

import "testing"

// The first numbers for the seed 1234567, as other libraries' tests have them:
// 6457827717110365317, 3203168211198807973, 9817491932198370423 (from memory).
func TestMix(t *testing.T) {
	for n, want := range []uint64{6457827717110365317, 3203168211198807973, 9817491932198370423} {
		if got := mix(1234567, uint64(n)); got != want {
			t.Errorf("number %d is %d, want %d", n, got, want)
		}
	}
}

func TestShuffledGivesEveryPlaceOnce(t *testing.T) {
	for _, n := range []uint64{0, 1, 2, 3, 7, 36, 190, 4950} {
		seen := map[uint64]int{}
		for i := range shuffled(n, draw("puddle")) {
			seen[i]++
		}
		for i := range n {
			if seen[i] != 1 {
				t.Errorf("a shuffle of %d gives place %d %d times", n, i, seen[i])
			}
		}
		if uint64(len(seen)) != n {
			t.Errorf("a shuffle of %d gives %d places", n, len(seen))
		}
	}
}

// Over many seeds each of the six orders of three comes as often as another: of
// 6000 about 1000, with a standard deviation of 29 (binomial); 150 is beyond five.
func TestShuffledIsFair(t *testing.T) {
	count := map[[3]uint64]int{}
	for seed := range uint64(6000) {
		var order [3]uint64
		i := 0
		for at := range shuffled(3, mix(99, seed)) {
			order[i] = at
			i++
		}
		count[order]++
	}
	if len(count) != 6 {
		t.Errorf("%d orders of three, want 6", len(count))
	}
	for order, n := range count {
		if n < 850 || n > 1150 {
			t.Errorf("order %v comes %d times of 6000, want about 1000", order, n)
		}
	}
}
