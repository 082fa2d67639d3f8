package picture

import "testing"

// checkSpans wants spans side by side from start over width, none under least.
func checkSpans(t *testing.T, spans []span, start, width, least int, numbers ...int) {
	t.Helper()
	at := start
	for i, s := range spans {
		if s.x != at {
			t.Fatalf("share(%v): span %d starts at %d, want %d", numbers, i, s.x, at)
		}
		if s.w < least {
			t.Fatalf("share(%v): span %d is %d wide, want %d or more", numbers, i, s.w, least)
		}
		at = s.end()
	}
	if at != start+width {
		t.Fatalf("share(%v): spans end at %d, want %d", numbers, at, start+width)
	}
}

// pairsTo1000 runs over all pairs to 100, and over a sample of pairs to 1000.
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
		s := share(margin, inner, leastSegment, a, b)
		checkSpans(t, s, margin, inner, leastSegment, a, b)
		if a > b && s[0].w < s[1].w || b > a && s[1].w < s[0].w {
			t.Fatalf("share(%d, %d) is %v: the bigger number has the shorter span", a, b, s)
		}
		if a+b > 0 && s[0].w > leastSegment && s[1].w > leastSegment {
			// In proportion: the cut lies within half a unit of a/(a+b).
			if off := s[0].w*(a+b) - inner*a; 2*max(off, -off) > a+b {
				t.Fatalf("share(%d, %d) is %v: not in proportion", a, b, s)
			}
		}
	})
}

func TestShareOfThree(t *testing.T) {
	for a := 0; a <= 30; a++ {
		for b := 0; b <= 30; b++ {
			for c := 0; c <= 30; c++ {
				fairOfThree(t, a, b, c)
			}
		}
	}
	for a := 0; a <= 1000; a += 37 {
		for b := 0; a+b <= 1000; b += 23 {
			for c := 0; a+b+c <= 1000; c += 19 {
				fairOfThree(t, a, b, c)
			}
		}
	}
	fairOfThree(t, 347, 158, 99)
	fairOfThree(t, 7, 5, 3)
}

// fairOfThree wants each wide span less than a unit from its share of the room
// that the wide ones have, and none narrower than that of a smaller number.
func fairOfThree(t *testing.T, numbers ...int) {
	t.Helper()
	spans := share(margin, inner, leastSegment, numbers...)
	checkSpans(t, spans, margin, inner, leastSegment, numbers...)
	room, whole := inner, 0
	for i, s := range spans {
		if s.w == leastSegment {
			room -= leastSegment
		} else {
			whole += numbers[i]
		}
	}
	for i, s := range spans {
		if off := s.w*whole - numbers[i]*room; whole > 0 && s.w > leastSegment && max(off, -off) >= whole {
			t.Fatalf("share(%v) is %v: span %d is a unit or more from its share", numbers, spans, i)
		}
		for j := range spans[:i] {
			if (numbers[i]-numbers[j])*(s.w-spans[j].w) < 0 {
				t.Fatalf("share(%v) is %v: the bigger number has the shorter span", numbers, spans)
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
		{[]int{1, 1, 1}, []int{34, 33, 33}, "of equal ones the first takes what dividing leaves"},
		{[]int{7, 5, 3}, []int{47, 33, 20}, "46.7 lost most, 33.3 and 20 stay"},
		{[]int{347, 158, 99}, []int{58, 26, 16}, "57.5 lost most, 26.2 and 16.4 stay"},
		{[]int{10, 1, 10}, []int{45, 10, 45}, "what a small part takes, all others give"},
		{[]int{0, 0}, []int{50, 50}, "nothing and nothing share equally"},
		{[]int{7, 0}, []int{90, 10}, "a part of nothing can still be labelled"},
	} {
		for i, s := range share(0, 100, 10, tt.numbers...) {
			if s.w != tt.want[i] {
				t.Errorf("%s: share(%v): want widths %v, span %d is %d wide", tt.why, tt.numbers, tt.want, i, s.w)
			}
		}
	}
}
