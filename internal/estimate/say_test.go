package estimate_test

import (
	"strings"
	"testing"

	"homebuild/internal/estimate"
	"homebuild/internal/problem"
)

// "A whole is never smaller than a part": common practice, no published source.
func TestPartWhole(t *testing.T) {
	tests := []struct {
		c      problem.Calculation
		given  int
		passes bool
		id     string
	}{
		{plus(8, 6), 14, true, "fits"},
		{plus(8, 6), 13, true, "fits"},
		{plus(8, 6), 2, false, "too-small"},
		{plus(8, 6), 7, false, "too-small"},
		{plus(8, 6), 8, false, "same-as-part"},
		{plus(8, 0), 8, true, "fits"},
		{plus(4, 9, 5), 9, false, "same-as-part"},
		{minus(13, 4), 9, true, "fits"},
		{minus(13, 4), 0, true, "fits"},
		{minus(13, 4), 17, false, "too-big"},
		{minus(13, 4), 13, false, "same-as-whole"},
		{minus(13, 0), 13, true, "fits"},
	}
	for _, test := range tests {
		check := estimate.PartWhole(test.c)
		if got := check.Passes(test.given); got != test.passes {
			t.Errorf("PartWhole(%v).Passes(%d) = %v, want %v", test.c, test.given, got, test.passes)
		}
		if got := check.Judge(test.given).ID; got != "check.part-whole."+test.id {
			t.Errorf("PartWhole(%v).Judge(%d) = %s, want %s", test.c, test.given, got, test.id)
		}
	}
}

// The test never refuses the right answer, and always catches subtracting for
// adding and adding for subtracting, unless nothing is added or taken.
func TestPartWholeCatchesTheWrongOperation(t *testing.T) {
	for a := 0; a <= 100; a++ {
		for b := 0; b <= a; b++ {
			sum, rest := estimate.PartWhole(plus(a, b)), estimate.PartWhole(minus(a, b))
			if !sum.Passes(a+b) || !rest.Passes(a-b) {
				t.Fatalf("%d and %d: a right answer is refused", a, b)
			}
			if b > 0 && (sum.Passes(a-b) || rest.Passes(a+b)) {
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

func TestJudge(t *testing.T) {
	e, _ := estimate.For(plus(6, 12), []int{6}, 1)
	for given, want := range map[int]string{18: "near", 15: "near", 25: "near", 14: "too-small", 6: "too-small", 26: "too-big", 612: "too-big"} {
		if got := e.Judge(given).ID; got != "estimate."+want {
			t.Errorf("%v: Judge(%d) = %s, want estimate.%s", e.Equation, given, got, want)
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
