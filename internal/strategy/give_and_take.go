package strategy

import "homebuild/internal/problem"

// giving finds what to move over: enough to make one number round (29 + 36 as
// 30 + 35), or one to make a double of two numbers that differ by two (6 + 4
// as 5 + 5).
func giving(c problem.Calculation) (giver, taker, move int, ok bool) {
	if !isSum(c) {
		return 0, 0, 0, false
	}
	big, small, _ := bySize(c)
	if big == small+2 && knownDouble(small+1) {
		return big, small, 1, true
	}
	giver, taker, ok = oneNear(c)
	move = nextTen(taker) - taker
	return giver, taker, move, ok && giver > 10
}

func giveAndTakeFits(c problem.Calculation) bool {
	_, _, _, ok := giving(c)
	return ok
}

func giveAndTake(c problem.Calculation, w *working) {
	giver, taker, move, _ := giving(c)
	rest, filled := giver-move, taker+move
	w.step("give", made(taker, move), number("Giver", giver), number("Taker", taker),
		number("Move", move), number("Filled", filled))
	w.step("take", left(giver, move), number("Giver", giver), number("Move", move), number("Rest", rest))
	w.step("sum", made(filled, rest), number("Filled", filled), number("Rest", rest), number("Sum", filled+rest))
	if c.Numbers[0] == taker {
		w.chain(problem.Sum(filled, rest))
	} else {
		w.chain(problem.Sum(rest, filled))
	}
}
