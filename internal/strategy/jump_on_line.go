package strategy

import (
	"slices"

	"homebuild/internal/problem"
)

// jumpOnLine keeps one number whole and jumps the hundreds, the tens and the
// ones of the other; ones that pass a ten stop there:
// 45 + 39 = 45 + 30 + 5 + 4. It wants a number with tens to jump by; a
// difference of three numbers is always worked along the line.
var jumpOnLine = method{
	id:    "jump-on-line",
	grade: 1,
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
			if round(c.Numbers[1]) && c.Numbers[1] == big { // one jump, in the order of the story
				at, rest = small, []int{big}
			}
		}
		t := track{w: w, op: c.Op, stops: []int{at}}
		for _, n := range rest {
			t.jumpAll(n)
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

// jumpAll jumps the places of n.
func (t *track) jumpAll(n int) {
	p := problem.PlacesOf(n)
	t.jump("hundreds", p[problem.HundredsPlace])
	t.jump("tens", p[problem.TensPlace])
	room := ones(t.at())
	if t.op == problem.Plus {
		room = nextTen(t.at()) - t.at()
	}
	if room > 0 && p[problem.OnesPlace] > room {
		t.jump("to-ten", room)
		t.wholeOnes(p[problem.OnesPlace], room)
		t.jump("rest", p[problem.OnesPlace]-room)
	} else {
		t.jump("ones", p[problem.OnesPlace])
	}
}

// wholeOnes is the slip of jumping all the ones from the ten that a part of them
// led to.
func (t *track) wholeOnes(all, used int) {
	e := then(problem.Number(t.at()), t.op, all)
	t.w.slip(WholeUsed, e, number("Used", used), number("B", all), number("Ten", t.at()))
}

// jumpsForgotten are the slips of leaving out a jump, or all that come after one;
// and of making the last one the wrong way.
func (t *track) jumpsForgotten() {
	walk, last := problem.Number(t.stops[0]), len(t.jumps)-1
	for i, by := range t.jumps[:last] {
		t.w.slipTo(JumpLost, t.stops[i+1])
		t.w.slipTo(JumpLost, then(problem.Number(t.at()), t.op.Inverse(), by).Value())
		walk = then(walk, t.op, by)
	}
	if last > 0 {
		t.w.slip(TurnedAround, then(walk, t.op.Inverse(), t.jumps[last]))
	}
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
	id := "hint-only"
	if len(t.jumps) > 1 {
		id = "hint-first"
	}
	if t.op == problem.Minus {
		id += "-back"
	}
	t.w.hint(id, number("Start", t.stops[0]), number("Jump", t.jumps[0]))
	t.jumpsForgotten()
	if slices.ContainsFunc(t.jumps, func(by int) bool { return by >= 10 }) {
		t.w.tenAway()
	}
	t.w.chain(sides...)
	t.w.walk(t.stops...)
}
