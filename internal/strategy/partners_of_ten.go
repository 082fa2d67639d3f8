package strategy

import "homebuild/internal/problem"

// partnersOfTen sees the two numbers that make ten on a ten frame: what is full
// and what is empty. It wants a sum that makes ten, or a difference from ten
// (K.OA.A.4 of CCSS-M 2010, from memory).
var partnersOfTen = method{
	id: "partners-of-ten",
	fits: func(c problem.Calculation) bool {
		if isSum(c) {
			return c.Value() == 10 && c.Numbers[0] > 0 && c.Numbers[1] > 0
		}
		return isDifference(c) && c.Numbers[0] == 10 && c.Numbers[1] > 0 && c.Value() > 0
	},
	work: func(c problem.Calculation, w *working) {
		if c.Op == problem.Plus {
			big, small, _ := bySize(c)
			w.step("fill", problem.Equation{}, number("A", big), number("B", 10-big))
			w.step("full", made(big, small), number("B", small))
			w.hint("hint", number("A", big), number("B", small))
			w.showFrames(problem.TogetherTotal, big, small)
		} else {
			part := c.Numbers[1]
			w.step("fill", problem.Equation{}, number("A", part), number("B", c.Value()))
			w.step("empty", left(10, part), number("A", part), number("B", c.Value()))
			w.hint("hint-empty", number("A", part))
			w.showFrames(problem.TogetherAddend, part, c.Value())
		}
		w.slipTo(BoxesAgain, c.Value()-1)
		w.slipTo(BoxesAgain, c.Value()+1)
		w.chain()
	},
}
