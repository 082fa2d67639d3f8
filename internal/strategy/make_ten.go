package strategy

import (
	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// makeTen wants two one-digit numbers that pass ten. It fills the bigger one
// up to ten from the smaller one, and keeps the order of the calculation:
// 8 + 6 = 8 + 2 + 4, but 6 + 9 = 5 + 1 + 9.
var makeTen = method{
	id:    "make-ten",
	grade: 1,
	fits:  forSum(func(big, small int) bool { return big < 10 && big+small > 10 }),
	work: func(c problem.Calculation, w *working) {
		big, small, turned := bySize(c)
		need := 10 - big
		rest := small - need
		w.step("need", made(big, need), number("Big", big), number("Need", need), number("Ten", 10))
		w.step("split", parted(need, rest), number("Small", small), number("Need", need), number("Rest", rest))
		w.step("add", made(10, rest), number("Ten", 10), number("Rest", rest), number("Sum", 10+rest))
		w.hint("hint", number("Big", big), number("Ten", 10))
		w.brokenInTwo(big, need, rest)
		if turned {
			w.chain(problem.Sum(rest, need, big), problem.Sum(rest, 10))
		} else {
			w.chain(problem.Sum(big, need, rest), problem.Sum(10, rest))
		}
		w.show(picture.MakeTen(c.Numbers[0], c.Numbers[1]))
		w.walk(big, 10, 10+rest)
	},
}
