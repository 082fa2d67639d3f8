package strategy

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// bridgeBack wants a one-digit number to take away that passes a ten on the
// way back: 13 - 4 = 13 - 3 - 1 = 10 - 1, 74 - 8, but not 17 - 4.
var bridgeBack = method{
	id:    "bridge-back",
	grade: 1,
	fits: forDifference(func(a, b int) bool {
		return b < 10 && ones(a) > 0 && b > ones(a)
	}),
	work: func(c problem.Calculation, w *working) {
		a, b := c.Numbers[0], c.Numbers[1]
		first := ones(a)
		ten, rest := a-first, b-first
		w.step("split", parted(first, rest), number("B", b), number("First", first), number("Rest", rest))
		w.step("to-ten", left(a, first), number("A", a), number("First", first), number("Ten", ten))
		w.step("rest", left(ten, rest), number("Ten", ten), number("Rest", rest), number("Answer", ten-rest))
		w.hint("hint", number("A", a), number("Ten", ten))
		uses := func(n int) []phrase.Value { return []phrase.Value{number("Used", n), number("B", b)} }
		w.slip(RestForgotten, problem.Difference(a, first), uses(first)...)
		w.slip(RestForgotten, problem.Difference(a, rest), uses(rest)...)
		w.slip(WholeUsed, problem.Difference(ten, b), append(uses(first), number("Ten", ten))...)
		if first != rest { // else the child would be back at the start
			w.slip(TurnedAround, then(problem.Difference(a, first), problem.Plus, rest))
		}
		w.stepOff(missing(first, b))
		w.chain(problem.Difference(a, first, rest), problem.Difference(ten, rest))
		w.walk(a, ten, ten-rest)
		w.showTens() // dots crossed out for good: beside the step to ten they would not show ten
	},
}
