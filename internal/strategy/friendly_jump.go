package strategy

import "homebuild/internal/problem"

// friendlyJump jumps by a friendly number near by, and mends what that was too
// much: 45 + 39 = 45 + 40 - 1.
var friendlyJump = method{
	id: "friendly-jump",
	fits: func(c problem.Calculation) bool {
		switch {
		case isDifference(c):
			a, b := c.Numbers[0], c.Numbers[1]
			return a > 10 && near(b) && nextTen(b) < a
		case !isSum(c):
			return false
		case bothNear(c):
			return nextTen(c.Numbers[0])+nextTen(c.Numbers[1]) <= limit(c)
		}
		stay, jump, ok := oneNear(c)
		return ok && stay > 10 && stay+nextTen(jump) <= limit(c)
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
// 50 + 40 - 5.
func bothNear(c problem.Calculation) bool {
	a, b := c.Numbers[0], c.Numbers[1]
	if a < 17 || b < 17 {
		return false
	}
	twoDigits := a < 100 && b < 100 && ones(a) >= 7 && ones(b) >= 7
	return (near(a) && near(b)) || (twoDigits && (near(a) || near(b)))
}

// friendlyOn: 45 + 39 = 45 + 40 - 1 = 85 - 1 = 84.
func (w *working) friendlyOn(c problem.Calculation) {
	a, b, _ := oneNear(c)
	friend := nextTen(b)
	over, landing := friend-b, a+friend
	w.step("jump", made(a, friend),
		number("A", a), number("B", b), number("Near", friend), number("Landing", landing))
	w.step("back", left(landing, over),
		number("B", b), number("Near", friend), number("Over", over), number("Landing", landing), number("Answer", landing-over))
	sum := problem.Sum(a, friend)
	if c.Numbers[0] == b {
		sum = problem.Sum(friend, a)
	}
	w.chain(append(sum, problem.Term{Op: problem.Minus, Value: over}), problem.Difference(landing, over))
	w.walk(a, landing, landing-over)
}

// friendlyBack: 65 - 49 = 65 - 50 + 1 = 15 + 1 = 16.
func (w *working) friendlyBack(a, b int) {
	friend := nextTen(b)
	over, landing := friend-b, a-friend
	w.step("jump-back", left(a, friend),
		number("A", a), number("B", b), number("Near", friend), number("Landing", landing))
	w.step("put-back", made(landing, over),
		number("B", b), number("Near", friend), number("Over", over), number("Landing", landing), number("Answer", landing+over))
	w.chain(append(problem.Difference(a, friend), problem.Term{Op: problem.Plus, Value: over}), problem.Sum(landing, over))
	w.walk(a, landing, landing+over)
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
	w.chain(append(problem.Sum(nearA, nearB), problem.Term{Op: problem.Minus, Value: over}), problem.Difference(landing, over))
	w.walk(a, a+nearB, landing, landing-over)
}
