package picture

import (
	"slices"
	"testing"

	"homebuild/internal/problem"
)

const digitRoom = 12 // the least room for a digit of a label

func digits(n int) int {
	count := 1
	for n >= 10 {
		n /= 10
		count++
	}
	return count
}

func TestBarLabelsFit(t *testing.T) {
	pairsTo1000(func(a, b int) {
		bar := bar{joined(a, b)}
		for i, s := range bar.segments() {
			if digitRoom*digits(bar.parts[i].n) >= s.w {
				t.Fatalf("%d in a bar with %d and %d: %d units are too narrow", bar.parts[i].n, a, b, s.w)
			}
		}
	})
}

func TestComparisonLines(t *testing.T) {
	pairsTo1000(func(smaller, difference int) {
		c := comparison{bigger: given(smaller + difference), smaller: given(smaller), difference: given(difference)}
		longer, shorter, gap := c.spans()
		if shorter.end() != gap.x || longer.x != margin || gap.end() > Width-margin {
			t.Fatalf("%d and %d: %v %v %v do not meet", smaller, difference, longer, shorter, gap)
		}
		if difference > 0 && gap.end() != longer.end() || difference == 0 && shorter != longer {
			t.Fatalf("%d and %d: %v %v %v: the bars' ends tell something else", smaller, difference, longer, shorter, gap)
		}
		if gap.w < leastSegment || shorter.w < leastSegment {
			t.Fatalf("%d and %d: %v %v have no room for labels", smaller, difference, shorter, gap)
		}
	})
}

// apart wants dots that lie in a box and do not touch.
func apart(t *testing.T, dots []point, r int, in box) {
	t.Helper()
	for i, d := range dots {
		if d.x-r < in.x || d.x+r > in.x+in.w || d.y-r < in.y || d.y+r > in.y+in.h {
			t.Fatalf("dot %v with radius %d is outside %v", d, r, in)
		}
		for _, e := range dots[:i] {
			if dx, dy := d.x-e.x, d.y-e.y; dx*dx+dy*dy < 4*r*r {
				t.Fatalf("dots %v and %v with radius %d overlap", d, e, r)
			}
		}
	}
}

// sheetBox is where anything in a picture may lie.
var sheetBox = box{margin, 0, inner, 1000}

func TestDots(t *testing.T) {
	stories(func(p problem.Problem) {
		if !Fits(Drawing, p) || isCompare(p) {
			return
		}
		groups, radius := dotsOf(p, Solved).(dots).groups(40)
		var all []point
		for _, g := range groups {
			apart(t, g.dots, radius, g.box)
			if len(g.dots) != g.n || g.crossed > g.n || g.box.h != groups[0].box.h {
				t.Fatalf("%v: group %v", p.Numbers(), g)
			}
			for _, d := range g.dots {
				if d.x-radius < g.span.x || d.x+radius > g.span.end() {
					t.Fatalf("%v: dot %v is beside %v", p.Numbers(), d, g.span)
				}
			}
			all = append(all, g.dots...)
		}
		apart(t, all, radius, sheetBox)
		if len(all) != p.Fact().Whole.Value {
			t.Fatalf("%v of %v: %d dots in all", p.Kind(), p.Numbers(), len(all))
		}
	})
}

func TestRows(t *testing.T) {
	for smaller := 0; smaller <= Most; smaller++ {
		for difference := 0; smaller+difference <= Most; difference++ {
			bigger := smaller + difference
			r := rows{comparison: comparison{bigger: given(bigger), smaller: given(smaller), difference: given(difference)}}
			top, matched := r.dots(0, bigger, 40), r.dots(0, smaller, 90)
			apart(t, append(slices.Clone(top), matched...), r.radius(), sheetBox)
			if len(top) != bigger || len(matched) != smaller {
				t.Fatalf("%d and %d more: rows of %d and %d", smaller, difference, len(top), len(matched))
			}
			if extra := r.dots(smaller, bigger, 40); !slices.Equal(extra, top[smaller:]) {
				t.Fatalf("%d and %d more: the extra dots lie at %v", smaller, difference, extra)
			}
			for i, d := range matched {
				if top[i].x != d.x {
					t.Fatalf("%d and %d more: dot %d is not under its partner", smaller, difference, i)
				}
			}
		}
	}
}

func TestSplits(t *testing.T) {
	for total := 0; total <= Most; total++ {
		p, err := problem.New(problem.TogetherBoth, 0, total)
		if err != nil {
			t.Fatal(err)
		}
		pairs, ok := AllPairs(p)
		// CCSS-M 2010, K.OA.A.3: numbers are taken apart in more than one way;
		// a total of n has n + 1 ordered ways.
		s := pairs.(splits)
		if !ok || len(s) != total+1 {
			t.Fatalf("%d: got %d rows, ok %v", total, len(s), ok)
		}
		for _, pair := range s {
			if pair.First+pair.Second != total {
				t.Fatalf("%d: a row for %v", total, pair)
			}
		}
		row := s.row(40)
		if len(row) != total {
			t.Fatalf("%d: rows of %d dots", total, len(row))
		}
		apart(t, row, s.radius(), box{margin, 0, inner - splitLabel, 80})
	}
	if one, err := problem.New(problem.TogetherTotal, 3, 4); err != nil {
		t.Fatal(err)
	} else if _, ok := AllPairs(one); ok {
		t.Error("a story that asks for the total got a pattern of pairs")
	}
}

func TestLineHasRoom(t *testing.T) {
	pairsTo1000(func(start, hop int) {
		if hop == 0 {
			return
		}
		x, ticks := Walk(start, start+hop).(line).scale()
		if x[0] < margin+20 || x[1] > Width-margin-20 || x[1]-x[0] < 24 {
			t.Fatalf("%d + %d: stops at %v", start, hop, x)
		}
		if len(ticks) > 0 && (len(ticks) != hop+1 || ticks[0] != x[0] || ticks[hop] != x[1]) {
			t.Fatalf("%d + %d: stops at %v, ticks at %v", start, hop, x, ticks)
		}
		if len(ticks) == 0 && x[1]-x[0] < leastHop {
			t.Fatalf("%d + %d: a hop of %d units", start, hop, x[1]-x[0])
		}
	})
}

// Ways of several jumps have room for each.
func TestLineOfManyHops(t *testing.T) {
	for _, stops := range [][]int{{49, 50, 60, 65}, {1, 2, 3, 4}, {248, 348, 418, 420, 423}, {305, 205, 135, 130, 127}, {9, 10, 100, 900, 999, 1000}, {45, 85, 84}} {
		x, _ := Walk(stops...).(line).scale()
		for i := range stops {
			if x[i] < margin+20 || x[i] > Width-margin-20 {
				t.Errorf("%v: stops at %v", stops, x)
			}
			if i > 0 && max(x[i]-x[i-1], x[i-1]-x[i]) < 20 {
				t.Errorf("%v: hop %d is too narrow: %v", stops, i, x)
			}
		}
	}
}
