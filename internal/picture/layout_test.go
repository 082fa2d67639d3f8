package picture

import (
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
		bar := Bar{Parts: []Amount{Given(a), Given(b)}, Whole: Given(a + b)}
		for i, s := range bar.Segments() {
			if digitRoom*digits(bar.Parts[i].N) >= s.W {
				t.Fatalf("%d in a bar with %d and %d: %d units are too narrow", bar.Parts[i].N, a, b, s.W)
			}
		}
	})
}

func TestComparisonLines(t *testing.T) {
	pairsTo1000(func(smaller, difference int) {
		c := Comparison{Bigger: Given(smaller + difference), Smaller: Given(smaller), Difference: Given(difference)}
		longer, shorter, gap := c.Spans()
		if shorter.End() != gap.X || longer.X != Margin || gap.End() > Width-Margin {
			t.Fatalf("%d and %d: %v %v %v do not meet", smaller, difference, longer, shorter, gap)
		}
		if difference > 0 && gap.End() != longer.End() || difference == 0 && shorter != longer {
			t.Fatalf("%d and %d: %v %v %v: the bars' ends tell something else", smaller, difference, longer, shorter, gap)
		}
		if gap.W < LeastSegment || shorter.W < LeastSegment {
			t.Fatalf("%d and %d: %v %v have no room for labels", smaller, difference, shorter, gap)
		}
	})
}

// apart wants dots that lie in a box and do not touch.
func apart(t *testing.T, dots []Point, r int, in Box) {
	t.Helper()
	for i, d := range dots {
		if d.X-r < in.X || d.X+r > in.X+in.W || d.Y-r < in.Y || d.Y+r > in.Y+in.H {
			t.Fatalf("dot %v with radius %d is outside %v", d, r, in)
		}
		for _, e := range dots[:i] {
			if dx, dy := d.X-e.X, d.Y-e.Y; dx*dx+dy*dy < 4*r*r {
				t.Fatalf("dots %v and %v with radius %d overlap", d, e, r)
			}
		}
	}
}

// sheetBox is where anything in a picture may lie.
var sheetBox = Box{Margin, 0, Inner, 1000}

func TestDots(t *testing.T) {
	stories(func(p problem.Problem) {
		if !Fits(Drawing, p) || p.Kind().Situation() == problem.Compare {
			return
		}
		d := dotsOf(p, Solved)
		var all []Point
		for _, g := range d.Groups(40) {
			apart(t, g.Dots, d.Radius(), g.Box)
			if len(g.Dots) != g.N {
				t.Fatalf("%v: %d dots for %d", p.Numbers(), len(g.Dots), g.N)
			}
			if g.Box.H != d.Height() || g.Crossed > g.N {
				t.Fatalf("%v: group %v", p.Numbers(), g)
			}
			all = append(all, g.Dots...)
		}
		apart(t, all, d.Radius(), sheetBox)
		if len(all) != p.Fact().Whole.Value {
			t.Fatalf("%v of %v: %d dots in all", p.Kind(), p.Numbers(), len(all))
		}
	})
}

func TestRows(t *testing.T) {
	for smaller := 0; smaller <= Most; smaller++ {
		for difference := 0; smaller+difference <= Most; difference++ {
			r := Rows{Comparison: Comparison{Given(smaller + difference), Given(smaller), Given(difference), nil}}
			longer, shorter, extra := r.Spans()
			top, matched, over := r.Row(longer, 40), r.Row(shorter, 90), r.Row(extra, 40)
			apart(t, append(append([]Point(nil), top...), matched...), r.Radius(), sheetBox)
			if len(top) != smaller+difference || len(matched) != smaller || len(over) != difference {
				t.Fatalf("%d and %d more: rows of %d, %d and %d", smaller, difference, len(top), len(matched), len(over))
			}
			for i, d := range matched {
				if top[i].X != d.X {
					t.Fatalf("%d and %d more: dot %d is not under its partner", smaller, difference, i)
				}
			}
		}
	}
}

func TestPairs(t *testing.T) {
	for total := 0; total <= Most; total++ {
		p, err := problem.New(problem.TogetherBoth, 0, total)
		if err != nil {
			t.Fatal(err)
		}
		pairs, ok := AllPairs(p)
		// CCSS-M 2010, K.OA.A.3: numbers are taken apart in more than one way;
		// a total of n has n + 1 ordered ways.
		if !ok || len(pairs.List) != total+1 {
			t.Fatalf("%d: got %d rows, ok %v", total, len(pairs.List), ok)
		}
		for _, pair := range pairs.List {
			first, second := pairs.Row(pair, 40)
			if len(first) != pair.First || len(second) != pair.Second || pair.First+pair.Second != total {
				t.Fatalf("%d: row of %d and %d for %v", total, len(first), len(second), pair)
			}
			apart(t, append(first, second...), pairs.Radius(), Box{Margin, 0, Inner - pairLabel, 80})
		}
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
		l := Line{Stops: []Amount{Given(start), Given(start + hop)}, Hops: []Amount{Given(hop)}}
		x := l.X()
		ticks := l.Ticks()
		if x[0] < Margin+20 || x[1] > Width-Margin-20 || x[1]-x[0] < 24 {
			t.Fatalf("%d + %d: stops at %v", start, hop, x)
		}
		if l.Near() && (len(ticks) != hop+1 || ticks[0] != x[0] || ticks[hop] != x[1]) {
			t.Fatalf("%d + %d: stops at %v, ticks at %v", start, hop, x, ticks)
		}
		if !l.Near() && x[1]-x[0] < LeastHop {
			t.Fatalf("%d + %d: a hop of %d units", start, hop, x[1]-x[0])
		}
	})
}
