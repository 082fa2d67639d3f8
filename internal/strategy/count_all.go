package strategy

import (
	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// countAll shows the numbers with dots or things and counts from one: all of a
// sum, what is left of a difference. It is the first way of all, for numbers to
// ten (level 1 of the Progressions for the CCSS-M, K-5 Operations and Algebraic
// Thinking; secondary).
var countAll = method{
	id: "count-all",
	fits: func(c problem.Calculation) bool {
		return (isSum(c) || isDifference(c)) && c.Largest() <= 10
	},
	work: func(c problem.Calculation, w *working) {
		a, b := number("A", c.Numbers[0]), number("B", c.Numbers[1])
		w.step("show", problem.Equation{}, a)
		if c.Op == problem.Plus {
			w.step("more", problem.Equation{}, b)
			w.step("all", evaluated(c.Expression()), number("Answer", c.Value()))
			w.hint("hint", a, b)
			w.showDots(problem.TogetherTotal)
		} else {
			w.step("cross-out", problem.Equation{}, b)
			w.step("left", evaluated(c.Expression()), number("Answer", c.Value()))
			w.hint("hint-left", a, b)
			w.showDots(problem.TakeFromResult)
		}
		w.slipTo(EachOnce, c.Value()-1)
		w.slipTo(EachOnce, c.Value()+1)
		w.chain()
	},
}

// showDots shows the calculation as a small story of a kind in dots.
func (w *working) showDots(kind problem.Kind) {
	w.showStory(picture.Drawing, kind, w.way.Calculation.Numbers...)
}
