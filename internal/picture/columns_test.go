package picture

import (
	"slices"
	"testing"

	"homebuild/internal/problem"
)

func TestColumns(t *testing.T) {
	check := func(op problem.Op, a, b int) {
		calc := problem.Calculation{Op: op, Numbers: []int{a, b}}
		c := expandedForm(calc)
		if c.result.Value() != calc.Value() || c.answer.n != calc.Value() {
			t.Fatalf("%v: columns come to %d and say %d", calc, c.result.Value(), c.answer.n)
		}
		for i, row := range append(slices.Clone(c.rows), c.result) {
			if slices.Min(row[:]) < 0 {
				t.Fatalf("%v: row %d is %v", calc, i, row)
			}
			if i < 2 && row.Value() != calc.Numbers[i] {
				t.Fatalf("%v: row %d is %v", calc, i, row)
			}
		}
		if op == problem.Minus && (c.result[problem.OnesPlace] > 9 || c.result[problem.TensPlace] > 90) {
			t.Fatalf("%v: result %v opens more than it needs", calc, c.result)
		}
	}
	pairsTo1000(func(a, b int) {
		check(problem.Plus, a, b)
		check(problem.Minus, a+b, b)
	})
}
