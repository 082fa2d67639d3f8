package problem

import (
	"slices"
	"testing"
)

func TestOpenedFor(t *testing.T) {
	for _, row := range []struct {
		whole, taken int
		want         Places
		why          string
	}{
		{65, 49, Places{15, 50, 0}, "a ten is opened for ones"},
		{65, 42, Places{5, 60, 0}, "nothing is opened where nothing lacks"},
		{305, 178, Places{15, 90, 200}, "a hundred is opened for tens, and one of them for ones"},
		{1000, 1, Places{10, 90, 900}, "a thousand is ten hundreds"},
	} {
		if got := PlacesOf(row.whole).OpenedFor(PlacesOf(row.taken)); got != row.want {
			t.Errorf("%s: %d - %d: want %v, got %v", row.why, row.whole, row.taken, row.want, got)
		}
	}
}

// Whatever is opened, the number stays what it is and can be taken from.
func TestEveryNumberCanBeOpened(t *testing.T) {
	for whole := range 1001 {
		for taken := 0; taken <= whole; taken += 1 + taken/9 {
			p, q := PlacesOf(whole), PlacesOf(taken)
			opened := p.OpenedFor(q)
			if p.Value() != whole || opened.Value() != whole || !opened.Covers(q) || opened.Minus(q).Plus(q) != opened {
				t.Fatalf("%d - %d: %v opened to %v for %v", whole, taken, p, opened, q)
			}
			if p.Covers(q) && opened != p {
				t.Fatalf("%d - %d: %v is opened without need", whole, taken, p)
			}
		}
	}
}

// Expanded form; a place that is empty is not written (2.NBT.A.3 of CCSS-M 2010,
// from memory).
func TestFilled(t *testing.T) {
	for n, want := range map[int][]int{345: {300, 40, 5}, 305: {300, 5}, 340: {300, 40}, 45: {40, 5}, 7: {7}, 1000: {1000}, 0: nil} {
		if got := PlacesOf(n).Filled(); !slices.Equal(got, want) {
			t.Errorf("%d in its places: got %v, want %v", n, got, want)
		}
	}
}
