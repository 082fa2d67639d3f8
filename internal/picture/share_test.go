package picture

import "testing"

// checkSpans wants spans side by side from start over width, none under least.
func checkSpans(t *testing.T, spans []Span, start, width, least int, numbers ...int) {
	t.Helper()
	at := start
	for i, s := range spans {
		if s.X != at {
			t.Fatalf("Share(%v): span %d starts at %d, want %d", numbers, i, s.X, at)
		}
		if s.W < least {
			t.Fatalf("Share(%v): span %d is %d wide, want %d or more", numbers, i, s.W, least)
		}
		at = s.End()
	}
	if at != start+width {
		t.Fatalf("Share(%v): spans end at %d, want %d", numbers, at, start+width)
	}
}

// pairsTo runs over all pairs to 100, and over a sample of pairs to 1000.
func pairsTo1000(do func(a, b int)) {
	for a := 0; a <= 100; a++ {
		for b := 0; a+b <= 100; b++ {
			do(a, b)
		}
	}
	for a := 0; a <= 1000; a += 13 {
		for b := 0; a+b <= 1000; b += 7 {
			do(a, b)
		}
	}
	do(500, 500)
	do(1, 999)
	do(999, 1)
}

func TestShareOfPairs(t *testing.T) {
	pairsTo1000(func(a, b int) {
		s := Share(Margin, Inner, LeastSegment, a, b)
		checkSpans(t, s, Margin, Inner, LeastSegment, a, b)
		if a > b && s[0].W < s[1].W-1 || b > a && s[1].W < s[0].W {
			t.Fatalf("Share(%d, %d) is %v: the bigger number has the shorter span", a, b, s)
		}
		if a+b > 0 && s[0].W > LeastSegment && s[1].W > LeastSegment {
			// In proportion: the cut lies less than a unit from a/(a+b).
			if off := s[0].W*(a+b) - Inner*a; off > 0 || off <= -(a+b) {
				t.Fatalf("Share(%d, %d) is %v: not in proportion", a, b, s)
			}
		}
	})
}

func TestShareOfThree(t *testing.T) {
	for a := 0; a <= 30; a++ {
		for b := 0; b <= 30; b++ {
			for c := 0; c <= 30; c++ {
				checkSpans(t, Share(Margin, Inner, LeastSegment, a, b, c), Margin, Inner, LeastSegment, a, b, c)
			}
		}
	}
}

func TestShare(t *testing.T) {
	for _, tt := range []struct {
		numbers []int
		want    []int
		why     string
	}{
		{[]int{1, 1}, []int{50, 50}, "equal parts are equally wide"},
		{[]int{1, 3}, []int{25, 75}, "in proportion"},
		{[]int{1, 99}, []int{10, 90}, "a small part is widened to the least"},
		{[]int{1, 1, 1}, []int{33, 33, 34}, "the last one takes what dividing leaves"},
		{[]int{10, 1, 10}, []int{45, 10, 45}, "what a small part takes, all others give"},
		{[]int{0, 0}, []int{50, 50}, "nothing and nothing share equally"},
		{[]int{7, 0}, []int{90, 10}, "a part of nothing can still be labelled"},
	} {
		for i, s := range Share(0, 100, 10, tt.numbers...) {
			if s.W != tt.want[i] {
				t.Errorf("%s: Share(%v): want widths %v, span %d is %d wide", tt.why, tt.numbers, tt.want, i, s.W)
			}
		}
	}
}
