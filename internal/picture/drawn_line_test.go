package picture_test

import (
	"fmt"
	"strings"
	"testing"

	"homebuild/internal/picture"
)

// On a line each number stands below its stop, each hop goes from its stop to the next,
// its arrow's tip there, and how far it goes stands over the middle of its arch (below
// the line where the walk turns round).
func TestLineIsReadFromStopToStop(t *testing.T) {
	for _, stops := range [][]int{{8, 14}, {14, 8}, {0, 10}, {40, 50}, {99, 100}, {90, 99, 100}, {18, 24, 19}, {30, 32, 36}, {36, 32, 30}, {45, 85, 84}, {248, 348, 418, 420, 423}, {305, 205, 135, 130, 127}} {
		drawing := drawn(picture.Walk(stops...))
		inside(t, fmt.Sprint(stops), drawing)
		all, _ := things(drawing)
		var numbers []thing
		hops := map[int][]thing{}
		for _, m := range all {
			switch {
			case m.class == "hop":
				hops[m.group] = append(hops[m.group], m)
			case m.text():
				numbers = append(numbers, m)
			}
		}
		dots := shapes(t, drawing, "solid")
		if len(numbers) != len(stops) || len(dots) != len(stops) || len(hops) != len(stops)-1 {
			t.Fatalf("%v: %d numbers, %d dots, %d hops", stops, len(numbers), len(dots), len(hops))
		}
		at := make([]int, len(stops))
		for i, dot := range dots {
			x, _ := numbers[i].middle()
			at[i], _ = dot.middle()
			if x != at[i] || numbers[i].y1 < dot.y2 || numbers[i].y1 > dot.y2+16 || !strings.Contains(numbers[i].line, fmt.Sprintf(">%d<", stops[i])) {
				t.Errorf("%v: %s stands at %v, and its stop at %v", stops, numbers[i].line, numbers[i].area, dot)
			}
		}
		for i := range len(stops) - 1 {
			arch, label := hops[i+1][0], hops[i+1][1]
			ways := strings.Split(attr(arch.line, "d"), "M")[1:]
			bow, head := corners("M"+ways[0]), corners("M"+ways[1])
			from, top, to, tip := bow[0], bow[1], bow[2], head[1]
			if from[0] != at[i] || to[0] != at[i+1] || tip != to {
				t.Errorf("%v: hop %d goes from %v to %v, its tip %v, stops %v", stops, i+1, from, to, tip, at)
			}
			if x, _ := label.middle(); x < (at[i]+at[i+1])/2-1 || x > (at[i]+at[i+1])/2+1 {
				t.Errorf("%v: how far hop %d goes stands at %d", stops, i+1, x)
			}
			away := top[1] - label.y2
			if turned := (stops[i+1] > stops[i]) != (stops[1] > stops[0]); turned {
				away = label.y1 - top[1]
			}
			if away < 2 || away > 12 {
				t.Errorf("%v: how far hop %d goes stands %d units from its arch", stops, i+1, away)
			}
		}
	}
}

// The longer of two hops has the higher arch, there and back.
func TestLongHopsHaveHighArches(t *testing.T) {
	for _, stops := range [][]int{{30, 32, 36}, {36, 34, 30}} {
		arches := shapes(t, drawn(picture.Walk(stops...)), "arch") // each with its head
		if short, long := arches[0], arches[2]; short.y2-short.y1 >= long.y2-long.y1 {
			t.Errorf("%v: a short hop over %v, a long one over %v", stops, short, long)
		}
	}
}

// A line that spans no more than ten has a mark for each number, equally far apart: the
// steps of a hop can be counted.
func TestNearNumbersHaveTicks(t *testing.T) {
	for _, stops := range [][]int{{8, 14}, {14, 8}, {0, 10}, {40, 50}, {18, 24, 19}, {83, 89}} {
		ticks := shapes(t, drawn(picture.Walk(stops...)), "tick")
		want := max(stops[0], stops[1]) - min(stops[0], stops[1]) + 1
		if len(ticks) != want {
			t.Errorf("%v: want %d marks, got %d", stops, want, len(ticks))
		}
		for i, tick := range ticks[1:] {
			if tick.x1-ticks[i].x1 != ticks[1].x1-ticks[0].x1 {
				t.Errorf("%v: marks at %v", stops, ticks)
			}
		}
	}
}
