package strategy

import "homebuild/internal/problem"

// Counting by ones is for 1, 2 or 3; from 4 on it is slow and slips. Zero is
// here too: nothing is counted.
const mostCounted = 3

func countOnFits(c problem.Calculation) bool {
	if !isSum(c) {
		return false
	}
	_, small, _ := bySize(c)
	return small <= mostCounted
}

func countOn(c problem.Calculation, w *working) {
	start, times, _ := bySize(c)
	w.count(start, times, problem.Plus)
}

func countBackFits(c problem.Calculation) bool {
	return c.Op == problem.Minus && c.Numbers[0]-c.Value() <= mostCounted
}

func countBack(c problem.Calculation, w *working) {
	w.count(c.Numbers[0], c.Numbers[0]-c.Value(), problem.Minus)
}

// count steps from start one by one: 9 + 2 = 9 + 1 + 1 = 10 + 1 = 11.
func (w *working) count(start, times int, op problem.Op) {
	if times == 0 {
		zero := problem.Expression{{Op: problem.Plus, Value: start}, {Op: op, Value: 0}}
		w.step("nothing", evaluated(zero), number("Start", start))
		w.chain()
		return
	}
	var sides []problem.Expression
	stops := []int{start}
	at, id := start, "first"
	for left := times; left > 0; left-- {
		sides = append(sides, onesFrom(at, left, op))
		q := evaluated(onesFrom(at, 1, op))
		next := q.Sides()[1].Value()
		w.step(id, q, number("Start", at), number("Next", next))
		stops = append(stops, next)
		at, id = next, "next"
	}
	w.chain(sides...)
	w.hops(stops...)
}

func onesFrom(start, times int, op problem.Op) problem.Expression {
	e := problem.Number(start)
	for range times {
		e = append(e, problem.Term{Op: op, Value: 1})
	}
	return e
}
