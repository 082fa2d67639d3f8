package estimate_test

import (
	"strings"
	"testing"

	"homebuild/internal/estimate"
	"homebuild/internal/problem"
)

// "A whole is never smaller than a part": common practice, no published source.
// What is said of the answer holds for the right one, and never for subtracting
// instead of adding or adding instead of subtracting, unless nothing is added or
// taken.
func TestPartWhole(t *testing.T) {
	for a := 0; a <= 100; a++ {
		for b := 0; b <= a; b++ {
			sum, difference := estimate.PartWhole(plus(a, b)), estimate.PartWhole(minus(a, b))
			part, whole := sum.Values[0].N, difference.Values[0].N
			if sum.ID != "check.part-whole.sum" || difference.ID != "check.part-whole.difference" || a+b < part || a-b > whole {
				t.Fatalf("%d and %d: %v and %v are not true", a, b, sum, difference)
			}
			if b > 0 && (a-b >= part || a+b <= whole) {
				t.Fatalf("%d and %d: the wrong operation passes", a, b)
			}
		}
	}
}

// Grades K to 2 never hear of rounding; grade 3 does (3.NBT.A.1 of CCSS-M
// 2010, from memory).
func TestWordsFitTheGrade(t *testing.T) {
	for grade := problem.Grade(0); grade <= 3; grade++ {
		e, ok := estimate.For(plus(23, 18), []int{5}, grade)
		if !ok {
			t.Fatal("23 + 18 has no estimate")
		}
		if got, want := strings.HasSuffix(e.Say().ID, ".round"), grade == 3; got != want {
			t.Errorf("grade %d is told %s", grade, e.Say().ID)
		}
	}
}

func TestInverse(t *testing.T) {
	for c, want := range map[string]string{"sum": "14 - 6 = 8", "difference": "9 + 4 = 13"} {
		calculation := plus(8, 6)
		if c == "difference" {
			calculation = minus(13, 4)
		}
		line, ok := estimate.Inverse(calculation)
		if !ok || line.ID != "check.inverse."+c || line.Values[0].Equation.String() != want {
			t.Errorf("Inverse(%v) = %s %v, want %s", calculation, line.ID, line.Values, want)
		}
	}
	if line, ok := estimate.Inverse(plus(8, 4, 2)); ok {
		t.Errorf("Inverse(8 + 4 + 2) = %v, want none", line)
	}
}

// Lines must know every sentence that the package says, with the same places.
func TestLinesAreComplete(t *testing.T) {
	known := map[string]int{}
	for _, line := range estimate.Lines() {
		known[line.ID] = len(line.Values)
	}
	said := map[string]bool{}
	for a := 0; a <= 400; a += 3 {
		for b := 0; b <= a; b++ {
			for _, c := range []problem.Calculation{plus(a, b), minus(a, b), plus(a, b, 4)} {
				for grade := problem.Grade(1); grade <= 3; grade++ {
					e, ok := estimate.For(c, []int{distance(a, b)}, grade)
					if !ok {
						continue
					}
					if places, found := known[e.Say().ID]; !found || places != len(e.Say().Values) {
						t.Fatalf("%v: Lines has no %s with %d places", c, e.Say().ID, len(e.Say().Values))
					}
					said[e.Say().ID] = true
				}
			}
		}
	}
	for id := range known {
		spoken := strings.HasSuffix(id, ".say") || strings.HasSuffix(id, ".round")
		if spoken && !said[id] {
			t.Errorf("Lines has %s, which nothing says", id)
		}
	}
}

func BenchmarkFor(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		estimate.For(plus(8, 6), []int{2, 13}, 1)
	}
}
