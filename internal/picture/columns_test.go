package picture

import (
	"testing"

	"homebuild/internal/problem"
)

func TestColumns(t *testing.T) {
	check := func(op problem.Op, a, b int) {
		calc := problem.Calculation{Op: op, Numbers: []int{a, b}}
		c := columned(calc)
		if c.Result.Value() != calc.Value() || c.Answer.N != calc.Value() {
			t.Fatalf("%v: columns come to %d and say %d", calc, c.Result.Value(), c.Answer.N)
		}
		for i, row := range append(append([]Places(nil), c.Rows...), c.Result) {
			if row.Hundreds < 0 || row.Tens < 0 || row.Ones < 0 {
				t.Fatalf("%v: row %d is %v", calc, i, row)
			}
			if i < 2 && row.Value() != calc.Numbers[i] {
				t.Fatalf("%v: row %d is %v", calc, i, row)
			}
		}
		if op == problem.Minus && (c.Result.Ones > 9 || c.Result.Tens > 9) {
			t.Fatalf("%v: result %v opens more than it needs", calc, c.Result)
		}
	}
	pairsTo1000(func(a, b int) {
		check(problem.Plus, a, b)
		check(problem.Minus, a+b, b)
	})
}

func TestOpened(t *testing.T) {
	for _, tt := range []struct {
		whole, taken int
		want         Places
		why          string
	}{
		{65, 49, Places{0, 5, 15}, "a ten is opened for ones"},
		{65, 42, Places{0, 6, 5}, "nothing is opened where nothing lacks"},
		{305, 178, Places{2, 9, 15}, "a hundred is opened for tens, and one of them for ones"},
		{1000, 1, Places{9, 9, 10}, "a thousand is ten hundreds"},
	} {
		if got := opened(PlacesOf(tt.whole), PlacesOf(tt.taken)); got != tt.want {
			t.Errorf("%s: %d - %d: want %v, got %v", tt.why, tt.whole, tt.taken, tt.want, got)
		}
	}
}
