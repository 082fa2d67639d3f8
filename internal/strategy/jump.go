package strategy

import "homebuild/internal/problem"

// jumpOnLineFits wants a number with tens to jump by; a difference of three
// numbers is always worked along the line.
func jumpOnLineFits(c problem.Calculation) bool {
	switch {
	case isSum(c):
		_, small, _ := bySize(c)
		return small >= 10
	case isDifference(c):
		return c.Numbers[1] >= 10
	}
	return c.Op == problem.Minus && c.Value() < c.Numbers[0]
}

// jumpOnLine keeps one number whole and jumps the hundreds, the tens and the
// ones of the other; ones that pass a ten stop there:
// 45 + 39 = 45 + 30 + 5 + 4.
func jumpOnLine(c problem.Calculation, w *working) {
	at, rest := c.Numbers[0], c.Numbers[1:]
	if c.Op == problem.Plus {
		big, small, _ := bySize(c)
		at, rest = big, []int{small}
	}
	t := track{w: w, op: c.Op, stops: []int{at}}
	for _, n := range rest {
		t.jumpAll(placesOf(n))
	}
	t.finish()
}

// track is a walk along the number line.
type track struct {
	w     *working
	op    problem.Op
	stops []int
	jumps []int
}

func (t *track) at() int { return t.stops[len(t.stops)-1] }

func (t *track) jumpAll(p places) {
	t.jump("hundreds", p[hundredsPlace])
	t.jump("tens", p[tensPlace])
	room := ones(t.at())
	if t.op == problem.Plus && room > 0 {
		room = 10 - room
	}
	if room > 0 && p[onesPlace] > room {
		t.jump("to-ten", room)
		t.jump("rest", p[onesPlace]-room)
		return
	}
	t.jump("ones", p[onesPlace])
}

func (t *track) jump(id string, by int) {
	if by == 0 {
		return
	}
	e := problem.Expression{{Op: problem.Plus, Value: t.at()}, {Op: t.op, Value: by}}
	if t.op == problem.Minus {
		id = "back-" + id
	}
	t.w.step(id, evaluated(e), number("From", t.at()), number("Jump", by), number("Landing", e.Value()))
	t.stops, t.jumps = append(t.stops, e.Value()), append(t.jumps, by)
}

// finish writes the chain: from every stop, the jumps still to come.
func (t *track) finish() {
	var sides []problem.Expression
	for i := range t.jumps {
		e := problem.Number(t.stops[i])
		for _, by := range t.jumps[i:] {
			e = append(e, problem.Term{Op: t.op, Value: by})
		}
		sides = append(sides, e)
	}
	t.w.chain(sides...)
	t.w.hops(t.stops...)
}

// jumpToTenFits wants ones that reach or pass the next ten: 58 + 26, 47 + 5.
// With hundreds the part that is left would be too large for one more jump.
func jumpToTenFits(c problem.Calculation) bool {
	if !isSum(c) {
		return false
	}
	big, small, _ := bySize(c)
	return big > 10 && ones(big)+ones(small) >= 10 && (big < 100 || small < 10)
}

// jumpToTen: 58 + 26 = 58 + 2 + 24 = 60 + 24 = 84.
func jumpToTen(c problem.Calculation, w *working) {
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
		w.hops(big, ten)
		return
	}
	w.step("rest", made(ten, rest), number("Ten", ten), number("Rest", rest), number("Sum", ten+rest))
	w.chain(problem.Sum(big, need, rest), problem.Sum(ten, rest))
	w.hops(big, ten, ten+rest)
}
