package strategy

import "homebuild/internal/problem"

// jumpToTen wants ones that reach or pass the next ten:
// 58 + 26 = 58 + 2 + 24 = 60 + 24, 47 + 5. What is left is jumped in tens and
// ones. With hundreds it would be too large for that.
var jumpToTen = method{
	id:    "jump-to-ten",
	grade: 1,
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
		w.hint("hint", number("Start", big))
		w.step("to-ten", made(big, need), number("Start", big), number("Need", need), number("Ten", ten))
		if rest == 0 {
			w.chain(problem.Sum(big, need))
			w.walk(big, ten)
			return
		}
		w.brokenInTwo(big, need, rest)
		stops, sides := []int{big, ten}, []problem.Expression{problem.Sum(big, need, rest)}
		jumps := problem.PlacesOf(rest).Filled()
		for i, by := range jumps {
			at := stops[len(stops)-1]
			w.step("rest", made(at, by), number("Ten", at), number("Rest", by), number("Sum", at+by))
			sides = append(sides, problem.Sum(append([]int{at}, jumps[i:]...)...))
			stops = append(stops, at+by)
		}
		w.chain(sides...)
		w.walk(stops...)
	},
}
