package strategy

import (
	"slices"

	"homebuild/internal/problem"
)

// jumpUp finds the difference between two numbers on the line:
// 65 - 49 = 1 + 10 + 5. It wants two jumps or more: a single one would say the
// answer before it is found. From a one-digit number to a far one there are too
// many.
var jumpUp = method{
	id:    "jump-up",
	grade: 1,
	fits: forDifference(func(high, low int) bool {
		switch {
		case low == 0 || high == low:
			return false
		case low < 10:
			return high <= 20 && len(rises(low, high)) > 1
		}
		return len(rises(low, high)) > 1
	}),
	work: func(c problem.Calculation, w *working) {
		at := c.Numbers[1]
		stops := []int{at}
		var jumps []int
		for _, r := range rises(at, c.Numbers[0]) {
			w.step(r.id, made(at, r.by), number("From", at), number("Jump", r.by), number("Landing", at+r.by))
			at += r.by
			stops, jumps = append(stops, at), append(jumps, r.by)
		}
		w.step("together", made(jumps...), number("Answer", c.Value()))
		w.hint("hint", number("From", stops[0]), number("To", at))
		w.forgotten(JumpLost, jumps)
		if slices.ContainsFunc(jumps, func(by int) bool { return by >= 10 }) {
			w.tenAway()
		}
		w.chain(problem.Sum(jumps...))
		w.walk(stops...)
	},
}

// forgotten are the slips of adding up the parts of a way: one of them left out, or
// only one of them taken.
func (w *working) forgotten(name SlipName, parts []int) {
	all := problem.Sum(parts...).Value()
	for _, by := range parts {
		w.slipTo(name, all-by)
		w.slipTo(name, by)
	}
}

// tenAway is a jump of tens that landed in the wrong place.
func (w *working) tenAway() {
	w.slipTo(Landing, w.way.Calculation.Value()-10)
	w.slipTo(Landing, w.way.Calculation.Value()+10)
}

// rise is one jump up, with the id of its sentence.
type rise struct {
	id string
	by int
}

// rises lists the jumps from low up to high: to the next ten, to the next
// hundred, then hundreds, tens and ones. 49 to 65 is 1, 10, 5.
func rises(low, high int) []rise {
	var all []rise
	up := func(id string, to int) {
		if to > low && to <= high {
			all = append(all, rise{id, to - low})
			low = to
		}
	}
	up("to-ten", nextTen(low))
	if low%10 != 0 {
		up("ones", high)
		return all
	}
	up("to-hundred", (low+99)/100*100)
	up("hundreds", low+(high-low)/100*100)
	up("tens", high/10*10)
	up("ones", high)
	return all
}
