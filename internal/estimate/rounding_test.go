package estimate_test

import (
	"testing"

	"homebuild/internal/estimate"
	"homebuild/internal/problem"
)

func plus(n ...int) problem.Calculation {
	return problem.Calculation{Op: problem.Plus, Numbers: n}
}

func minus(n ...int) problem.Calculation {
	return problem.Calculation{Op: problem.Minus, Numbers: n}
}

func distance(a, b int) int { return max(a-b, b-a) }

// School rounding, half up: 3.NBT.A.1 of CCSS-M 2010 (wording from memory).
func TestNearest(t *testing.T) {
	tests := []struct {
		name     string
		round    func(int) int
		in, want []int
	}{
		{"ten", estimate.NearestTen, []int{4, 5, 14, 15, 25, 35, 44, 45, 95, 96}, []int{0, 10, 10, 20, 30, 40, 40, 50, 100, 100}},
		{"hundred", estimate.NearestHundred, []int{49, 50, 149, 150, 250, 349, 350, 449, 450, 949, 950},
			[]int{0, 100, 100, 200, 300, 300, 400, 400, 500, 900, 1000}},
		{"five", estimate.NearestFive, []int{0, 2, 3, 7, 8, 12, 13, 18}, []int{0, 0, 5, 5, 10, 10, 15, 20}},
	}
	for _, test := range tests {
		for i, n := range test.in {
			if got := test.round(n); got != test.want[i] {
				t.Errorf("nearest %s of %d = %d, want %d", test.name, n, got, test.want[i])
			}
		}
	}
}

// How far off rounding can be: bounds computed by hand from the rule, for
// numbers to 1000.
func TestErrorBounds(t *testing.T) {
	single, sum, difference, hundred := newSpan(), newSpan(), newSpan(), newSpan()
	for n := 0; n <= 1000; n++ {
		hundred.add(estimate.NearestHundred(n) - n)
	}
	for a := 0; a <= 100; a++ {
		single.add(estimate.NearestTen(a) - a)
		for b := 0; b <= 100; b++ {
			sum.add(estimate.NearestTen(a) + estimate.NearestTen(b) - a - b)
			difference.add(estimate.NearestTen(a) - estimate.NearestTen(b) - (a - b))
		}
	}
	for _, test := range []struct {
		name      string
		got, want span
	}{
		{"one number", single, span{-4, 5}}, {"a sum", sum, span{-8, 10}}, {"a difference", difference, span{-9, 9}},
		{"one number rounded to hundreds", hundred, span{-49, 50}},
	} {
		if test.got != test.want {
			t.Errorf("error of %s, rounded: %v, want %v", test.name, test.got, test.want)
		}
	}
}

type span struct{ low, high int }

func newSpan() span { return span{1 << 30, -1 << 30} }

func (s *span) add(n int) { s.low, s.high = min(s.low, n), max(s.high, n) }

// Estimates computed from the published rules (nearest ten, nearest hundred:
// general usage, no single authority).
func TestEstimateRows(t *testing.T) {
	tests := []struct {
		c                     problem.Calculation
		exact, tens, hundreds int // 0: not asked
	}{
		{plus(23, 18), 41, 40, 0},
		{plus(38, 25), 63, 70, 0},
		{plus(45, 35), 80, 90, 0},
		{minus(64, 29), 35, 30, 0},
		{plus(256, 178), 434, 440, 500},
		{minus(256, 178), 78, 80, 100},
		{plus(349, 451), 800, 800, 800},
	}
	for _, test := range tests {
		if got := test.c.Value(); got != test.exact {
			t.Errorf("%v = %d, want %d", test.c, got, test.exact)
		}
		with := func(name string, want int, numbers []int) {
			got := problem.Calculation{Op: test.c.Op, Numbers: numbers}.Value()
			if want > 0 && got != want {
				t.Errorf("%v by %s = %d, want %d", test.c, name, got, want)
			}
		}
		with("tens", test.tens, mapped(test.c.Numbers, estimate.NearestTen))
		with("hundreds", test.hundreds, mapped(test.c.Numbers, estimate.NearestHundred))
	}
}

func mapped(numbers []int, f func(int) int) []int {
	var out []int
	for _, n := range numbers {
		out = append(out, f(n))
	}
	return out
}
