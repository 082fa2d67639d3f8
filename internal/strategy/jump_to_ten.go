package strategy

import "homebuild/internal/problem"

// jumpToTen wants ones that reach or pass the next ten:
// 58 + 26 = 58 + 2 + 24 = 60 + 24, 47 + 5. With hundreds the part that is left
// would be too large for one more jump.
var jumpToTen = method{
	id: "jump-to-ten",
	fits: forSum(func(big, small int) bool {
		return big > 10 && ones(big)+ones(small) >= 10 && (big < 100 || small < 10)
	}),
	work: func(c problem.Calculation, w *working) {
		big, small, _ := bySize(c)
		ten := nextTen(big)
		need := ten - big
		rest := small - need
		if rest > 0 {
			w.step("split", parted(need, rest), number("B", small), number("Need", need), number("Rest", rest))
		}
		w.step("to-ten", made(big, need), number("Start", big), number("Need", need), number("Ten", ten))
		if rest == 0 {
			w.chain(problem.Sum(big, need))
			w.walk(big, ten)
			return
		}
		w.step("rest", made(ten, rest), number("Ten", ten), number("Rest", rest), number("Sum", ten+rest))
		w.chain(problem.Sum(big, need, rest), problem.Sum(ten, rest))
		w.walk(big, ten, ten+rest)
	},
}
