package strategy

import (
	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// nearDoubles asks for neighbours: 6 + 7 = 6 + 6 + 1 = 12 + 1. A difference of
// two is worked by give and take: 6 + 8 = 7 + 7. Nobody doubles 9 for 9 + 10, which
// is a ten and nine ones.
var nearDoubles = method{
	id:    "near-doubles",
	grade: 1,
	fits:  forSum(func(big, small int) bool { return big == small+1 && big != 10 && knownDouble(small) }),
	work: func(c problem.Calculation, w *working) {
		big, small, _ := bySize(c)
		double := small + small
		w.step("double", made(small, small), number("A", small), number("Double", double))
		w.step("more", made(double, 1), number("A", small), number("B", big), number("Sum", double+1))
		w.hint("hint", number("A", small), number("B", big))
		w.nearSlip(NotMended, problem.Sum(small, small), small, big)
		w.nearSlip(NotMended, problem.Sum(big, big), big, small)
		w.nearSlip(MendedWrong, then(problem.Sum(small, small), problem.Minus, 1), small, big)
		w.nearSlip(MendedWrong, then(problem.Sum(big, big), problem.Plus, 1), big, small)
		w.chain(problem.Sum(small, small, 1), problem.Sum(double, 1))
		w.show(picture.Double(c.Numbers[0], c.Numbers[1]))
	},
}
