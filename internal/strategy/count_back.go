package strategy

import "homebuild/internal/problem"

// countBack takes away one by one: 11 - 2 = 11 - 1 - 1 = 10 - 1 = 9.
var countBack = method{
	id:    "count-back",
	grade: 1,
	fits: func(c problem.Calculation) bool {
		return c.Op == problem.Minus && c.Numbers[0]-c.Value() <= mostCounted
	},
	work: func(c problem.Calculation, w *working) {
		w.count(c.Numbers[0], c.Numbers[0]-c.Value(), problem.Minus)
		w.countingSlips(problem.Minus)
	},
}
