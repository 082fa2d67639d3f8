package strategy

import (
	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// giveAndTake moves a bit over from one number to the other:
// 29 + 36 = 30 + 35, 6 + 8 = 7 + 7.
var giveAndTake = method{
	id:    "give-and-take",
	grade: 1,
	fits: func(c problem.Calculation) bool {
		_, _, _, ok := giving(c)
		return ok
	},
	work: func(c problem.Calculation, w *working) {
		giver, taker, move, _ := giving(c)
		rest, filled := giver-move, taker+move
		w.step("give", made(taker, move), number("Giver", giver), number("Taker", taker),
			number("Move", move), number("Filled", filled))
		w.step("take", left(giver, move), number("Giver", giver), number("Move", move), number("Rest", rest))
		w.step("sum", made(filled, rest), number("Filled", filled), number("Rest", rest), number("Sum", filled+rest))
		w.hint("hint", number("Giver", giver), number("Taker", taker), number("Move", move))
		for _, wrong := range [][2]int{{filled, giver}, {taker, rest}, {filled, giver + move}} {
			w.slip(NotTaken, problem.Sum(wrong[0], wrong[1]), number("Move", move))
		}
		after := []int{rest, filled}
		if c.Numbers[0] == taker {
			after = []int{filled, rest}
		}
		w.chain(problem.Sum(after...))
		w.show(picture.Bars(c.Numbers, after))
	},
}

// giving finds what to move over: enough to make one number round, or one to
// make a double of two numbers that differ by two. A giver that is round already gives
// nothing away: 28 + 30 would become 30 + 28.
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
	return giver, taker, move, ok && giver > 10 && !round(giver)
}
