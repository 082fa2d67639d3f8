package estimate_test

import (
	"strings"
	"testing"

	"homebuild/internal/estimate"
	"homebuild/internal/problem"
)

func mustNew(t testing.TB, kind problem.Kind, numbers ...int) problem.Problem {
	t.Helper()
	p, err := problem.New(kind, numbers...)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// "A whole is never smaller than a part": common practice, no published source.
// Of a comparison nothing is called a part, and of a chain nothing is said.
func TestPartWhole(t *testing.T) {
	tests := []struct {
		kind    problem.Kind
		numbers []int
		id      string // empty for none
		bound   int
	}{
		{problem.AddToResult, []int{8, 6}, "check.part-whole.sum", 8},
		{problem.TogetherTotal, []int{4, 9}, "check.part-whole.sum", 9},
		{problem.TogetherThree, []int{4, 9, 5}, "check.part-whole.sum", 9},
		{problem.TakeFromResult, []int{13, 4}, "check.part-whole.difference", 13},
		{problem.AddToChange, []int{8, 6}, "check.part-whole.difference", 14},
		{problem.TogetherBoth, []int{3, 5}, "check.part-whole.difference", 8},
		{problem.BiggerFewer, []int{8, 5}, "check.compare.sum", 8},
		{problem.BiggerMore, []int{5, 8}, "check.compare.sum", 5},
		{problem.DifferenceMore, []int{14, 9}, "check.compare.difference", 14},
		{problem.AddThenTake, []int{8, 5, 4}, "", 0},
	}
	for _, test := range tests {
		p := mustNew(t, test.kind, test.numbers...)
		lines, ok := estimate.PartWhole(p)
		if ok != (test.id != "") || ok && (lines[0].ID != test.id || lines[0].Values[0].N != test.bound || lines[1].Values[0].N != p.Answer()) {
			t.Errorf("PartWhole(%v of %v) = %v, want %s with %d", test.kind, test.numbers, lines, test.id, test.bound)
		}
	}
}

// Going back is true of every kind: the answer stands in the story's own equation,
// or leads back to a number that the story tells.
func TestGoingBack(t *testing.T) {
	tests := []struct {
		kind    problem.Kind
		numbers []int
		want    string
	}{
		{problem.AddToResult, []int{8, 6}, "check.back 14 - 6 = 8"},
		{problem.AddToChange, []int{8, 6}, "check.put-in 8 + 6 = 14"},
		{problem.AddToStart, []int{8, 6}, "check.put-in 8 + 6 = 14"},
		{problem.TakeFromResult, []int{13, 4}, "check.back 9 + 4 = 13"},
		{problem.TakeFromChange, []int{13, 4}, "check.put-in 13 - 4 = 9"},
		{problem.TakeFromStart, []int{13, 4}, "check.put-in 13 - 4 = 9"},
		{problem.TogetherAddend, []int{8, 6}, "check.put-in 8 + 6 = 14"},
		{problem.TogetherBoth, []int{3, 5}, "check.put-in 8 = 3 + 5"},
		{problem.DifferenceMore, []int{14, 9}, "check.put-in 9 + 5 = 14"},
		{problem.BiggerFewer, []int{8, 5}, "check.back 13 - 5 = 8"},
		{problem.SmallerMore, []int{12, 3}, "check.back 9 + 3 = 12"},
		{problem.TogetherThree, []int{8, 4, 2}, "check.back 14 - 2 - 4 = 8"},
		{problem.AddThenTake, []int{8, 5, 4}, "check.back 9 + 4 - 5 = 8"},
		{problem.TakeThenTake, []int{20, 5, 3}, "check.back 12 + 3 + 5 = 20"},
		{problem.BiggerThenTogether, []int{8, 5}, "check.back 21 - 5 - 8 = 8"},
	}
	for _, test := range tests {
		p := mustNew(t, test.kind, test.numbers...)
		line := estimate.GoingBack(p)
		if got := line.ID + " " + line.Values[1].Equation.String(); got != test.want {
			t.Errorf("GoingBack(%v of %v) = %s, want %s", test.kind, test.numbers, got, test.want)
		}
		if line.ID == "check.back" && line.Values[2].N != p.Given()[0].Value {
			t.Errorf("GoingBack(%v of %v) leads to %d, which is not the first number told", test.kind, test.numbers, line.Values[2].N)
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

// What an estimate cannot find is named: a ten or a hundred, or slips of several
// sorts.
func TestHonest(t *testing.T) {
	for _, test := range []struct {
		c     problem.Calculation
		wrong []int
		want  string // empty where all is found
	}{
		{plus(38, 25), []int{13, 53}, ""},
		{plus(256, 178), []int{78, 433, 435}, "estimate.misses.some"},
	} {
		e, ok := estimate.For(test.c, test.wrong, 3)
		if !ok {
			t.Fatalf("%v has no estimate", test.c)
		}
		if line, blind := e.Honest(); blind != (test.want != "") || line.ID != test.want {
			t.Errorf("%v: %v says %q, want %q", test.c, e.Equation, line.ID, test.want)
		}
	}
	for off, want := range map[int]string{-10: "ten-forgotten", 10: "ten-more", -100: "hundred-forgotten", 100: "hundred-more"} {
		e, _ := estimate.For(plus(38, 25), []int{13}, 3)
		e.Missed = []int{63 + off}
		if line, _ := e.Honest(); line.ID != "estimate.misses."+want {
			t.Errorf("a slip of %d that is missed is called %s, want %s", off, line.ID, want)
		}
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
				for _, wrong := range [][]int{{a + b + b}, {distance(a, b), a - b + 10, a - b + 100, a + b - 10, a + b - 100}} {
					for grade := problem.Grade(2); grade <= 3; grade++ {
						e, ok := estimate.For(c, wrong, grade)
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
		estimate.For(plus(38, 25), []int{13, 53}, 2)
	}
}
