package strategy

import "homebuild/internal/problem"

// jumpOnLine keeps one number whole and jumps the hundreds, the tens and the
// ones of the other; ones that pass a ten stop there:
// 45 + 39 = 45 + 30 + 5 + 4. It wants a number with tens to jump by; a
// difference of three numbers is always worked along the line.
var jumpOnLine = method{
	id: "jump-on-line",
	fits: func(c problem.Calculation) bool {
		switch {
		case isSum(c):
			_, small, _ := bySize(c)
			return small >= 10
		case isDifference(c):
			return c.Numbers[1] >= 10
		}
		return c.Op == problem.Minus && c.Value() < c.Numbers[0]
	},
	work: func(c problem.Calculation, w *working) {
		at, rest := c.Numbers[0], c.Numbers[1:]
		if c.Op == problem.Plus {
			big, small, _ := bySize(c)
			at, rest = big, []int{small}
		}
		t := track{w: w, op: c.Op, stops: []int{at}}
		for _, n := range rest {
			t.jumpAll(problem.PlacesOf(n))
		}
		t.finish()
	},
}

// track is a walk along the number line.
type track struct {
	w     *working
	op    problem.Op
	stops []int
	jumps []int
}

func (t *track) at() int { return t.stops[len(t.stops)-1] }

func (t *track) jumpAll(p problem.Places) {
	t.jump("hundreds", p[problem.HundredsPlace])
	t.jump("tens", p[problem.TensPlace])
	room := ones(t.at())
	if t.op == problem.Plus && room > 0 {
		room = 10 - room
	}
	if room > 0 && p[problem.OnesPlace] > room {
		t.jump("to-ten", room)
		t.jump("rest", p[problem.OnesPlace]-room)
		return
	}
	t.jump("ones", p[problem.OnesPlace])
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
	t.w.walk(t.stops...)
}
