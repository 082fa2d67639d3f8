package strategy

import (
	"slices"

	"homebuild/internal/problem"
)

// countInTens works with tens as with ones: 80 - 50 is eight tens less five tens.
// It wants whole tens, or whole hundreds, of which there are at most twenty, and
// less than ten to add or to take away (1.NBT.C.6 and 2.NBT.B.8 of CCSS-M 2010).
var countInTens = method{
	id:    "count-in-tens",
	grade: 1,
	fits: func(c problem.Calculation) bool {
		unit := bundle(c)
		return c.Value() > 0 && c.Largest() <= 20*unit && slices.Min(c.Numbers) < 10*unit
	},
	work: func(c problem.Calculation, w *working) {
		unit := bundle(c)
		bundles := problem.Calculation{Op: c.Op}
		for _, n := range c.Numbers {
			bundles.Numbers = append(bundles.Numbers, n/unit)
			w.step(bundleID(c)+"-in", problem.Equation{}, number("A", n), number("N", n/unit))
		}
		w.step("as-ones", evaluated(bundles.Expression()))
		w.step(bundleID(c)+"-are", evaluated(c.Expression()), number("N", bundles.Value()), number("Answer", c.Value()))
		w.hint("hint")
		w.slip(TensCounted, bundles.Expression())
		w.chain()
		w.showPlaces()
	},
	variant: func(c problem.Calculation) string { return "count-in-" + bundleID(c) },
}

// bundle is what all numbers of c are whole bundles of: 100, else 10, else 0, which
// nothing is few of.
func bundle(c problem.Calculation) int {
	for _, unit := range []int{100, 10} {
		whole := true
		for _, n := range c.Numbers {
			whole = whole && n > 0 && n%unit == 0
		}
		if whole {
			return unit
		}
	}
	return 0
}

func bundleID(c problem.Calculation) string {
	if bundle(c) == 100 {
		return "hundreds"
	}
	return "tens"
}
