package strategy

import "homebuild/internal/problem"

// friendlyJump jumps by a friendly number near by, and mends what that was too
// much: 45 + 39 = 45 + 40 - 1, 311 - 109 = 311 - 110 + 1. It wants a ten to be
// passed: 49 - 39 needs no mending. A sum that does so goes far enough past the ten
// for what is too much: none leaves its range, as 61 + 40 would for 61 + 39.
var friendlyJump = method{
	id:    "friendly-jump",
	grade: 1,
	fits: func(c problem.Calculation) bool {
		switch {
		case !passes(c):
			return false
		case isDifference(c):
			return near(c.Numbers[1]) && nextTen(c.Numbers[1]) < c.Numbers[0]
		case !isSum(c):
			return false
		}
		stay, _, ok := oneNear(c)
		return bothNear(c) || ok && stay > 10
	},
	work: func(c problem.Calculation, w *working) {
		switch {
		case c.Op == problem.Minus:
			w.friendlyBack(c.Numbers[0], c.Numbers[1])
		case bothNear(c):
			w.friendlyBoth(c.Numbers[0], c.Numbers[1])
		default:
			w.friendlyOn(c)
		}
	},
}

// bothNear asks whether both numbers are worth making friendly: 47 + 38 as
// 50 + 40 - 5. In three digits only hundreds are.
func bothNear(c problem.Calculation) bool {
	a, b := c.Numbers[0], c.Numbers[1]
	if a < 17 || b < 17 || !round(nextTen(a)) || !round(nextTen(b)) {
		return false
	}
	twoDigits := max(a, b) < 100 && min(ones(a), ones(b)) >= 7
	return (near(a) && near(b)) || (twoDigits && (near(a) || near(b)))
}

// friendlyOn: 45 + 39 = 45 + 40 - 1 = 85 - 1 = 84.
func (w *working) friendlyOn(c problem.Calculation) {
	a, b, _ := oneNear(c)
	near := nextTen(b)
	over, landing := near-b, a+near
	jumps, stops := w.jumpNear(a, b, problem.Plus)
	w.step("back", left(landing, over),
		number("B", b), number("Near", near), number("Over", over), number("Landing", landing), number("Answer", landing-over))
	w.mended(problem.Sum(a, near), problem.Minus, over, near, b)
	sum := problem.Sum(append([]int{a}, jumps...)...)
	if c.Numbers[0] == b {
		sum = problem.Sum(append(jumps, a)...)
	}
	w.chain(then(sum, problem.Minus, over), problem.Difference(landing, over))
	w.walk(append(stops, landing-over)...)
}

// friendlyBack: 65 - 49 = 65 - 50 + 1 = 15 + 1 = 16.
func (w *working) friendlyBack(a, b int) {
	near := nextTen(b)
	over, landing := near-b, a-near
	jumps, stops := w.jumpNear(a, b, problem.Minus)
	w.step("put-back", made(landing, over),
		number("B", b), number("Near", near), number("Over", over), number("Landing", landing), number("Answer", landing+over))
	w.mended(problem.Difference(a, near), problem.Plus, over, near, b)
	w.chain(then(problem.Difference(a, jumps...), problem.Plus, over), problem.Sum(landing, over))
	w.walk(append(stops, landing+over)...)
}

// jumpNear goes from a by the friendly number of b: at once where that is round,
// as it is for sums, else hundreds first and then tens.
func (w *working) jumpNear(a, b int, op problem.Op) (jumps, stops []int) {
	id := "jump"
	if op == problem.Minus {
		id = "jump-back"
	}
	near := nextTen(b)
	stops = []int{a}
	for i, by := range problem.PlacesOf(near).Filled() {
		at := stops[i]
		e := then(problem.Number(at), op, by)
		if i == 0 {
			w.step(id, evaluated(e), number("A", a), number("B", b), number("Near", near), number("Jump", by), number("Landing", e.Value()))
		} else {
			w.step("further-back", evaluated(e), number("Jump", by), number("Landing", e.Value()))
		}
		jumps, stops = append(jumps, by), append(stops, e.Value())
	}
	return jumps, stops
}

// mended are the slips of working with a number near by: left there, or mended
// the wrong way; op is the right way. The hint names the number near by.
func (w *working) mended(jumped problem.Expression, op problem.Op, over, near, exact int) {
	w.nearSlip(NotMended, jumped, near, exact)
	w.nearSlip(MendedWrong, then(jumped, op.Inverse(), over), near, exact)
	w.hint("hint", inPlaceOf(near, exact)...)
}

// friendlyBoth: 47 + 38 = 50 + 40 - 5 = 90 - 5 = 85.
func (w *working) friendlyBoth(a, b int) {
	nearA, nearB := nextTen(a), nextTen(b)
	overA, overB := nearA-a, nearB-b
	over, landing := overA+overB, nearA+nearB
	w.step("both", made(nearA, nearB), number("A", a), number("NearA", nearA),
		number("B", b), number("NearB", nearB), number("Landing", landing))
	w.step("over", made(overA, overB), number("OverA", overA), number("OverB", overB), number("Over", over))
	w.step("back-both", left(landing, over), number("Over", over), number("Landing", landing), number("Answer", landing-over))
	jumped := problem.Sum(nearA, nearB)
	w.mended(jumped, problem.Minus, over, nearA, a)
	w.nearSlip(NotMended, then(jumped, problem.Minus, overA), nearB, b)
	w.nearSlip(NotMended, then(jumped, problem.Minus, overB), nearA, a)
	w.hint("hint-both", number("A", a), number("NearA", nearA), number("B", b), number("NearB", nearB))
	w.chain(then(jumped, problem.Minus, over), problem.Difference(landing, over))
	w.walk(a, a+nearB, landing, landing-over)
}
