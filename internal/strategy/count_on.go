package strategy

import "homebuild/internal/problem"

// mostCounted: counting by ones is for 1, 2 or 3; from 4 on it is slow and
// slips. Zero is here too: nothing is counted.
const mostCounted = 3

// countOn starts at the bigger number: 9 + 2 = 9 + 1 + 1 = 10 + 1 = 11.
var countOn = method{
	id:   "count-on", // from kindergarten on
	fits: forSum(func(_, small int) bool { return small <= mostCounted }),
	work: func(c problem.Calculation, w *working) {
		start, times, _ := bySize(c)
		w.count(start, times, problem.Plus)
		w.countingSlips(problem.Plus)
	},
}

// countingSlips are one too few counts and one too many. Sources: Fuson (1988) and
// Steffe et al. (1983) on counting on, from memory.
func (w *working) countingSlips(op problem.Op) {
	one := 1
	if op == problem.Minus {
		one = -1
	}
	w.slipTo(CountedStart, w.way.Calculation.Value()-one)
	w.slipTo(OneTooFar, w.way.Calculation.Value()+one)
}

// count steps from start one by one.
func (w *working) count(start, times int, op problem.Op) {
	if times == 1 {
		w.hint("hint-one", number("Start", start))
	} else {
		w.hint("hint", number("Start", start), number("Times", times))
	}
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
	w.walk(stops...)
}

func onesFrom(start, times int, op problem.Op) problem.Expression {
	e := problem.Number(start)
	for range times {
		e = append(e, problem.Term{Op: op, Value: 1})
	}
	return e
}
