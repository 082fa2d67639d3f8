package picture

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// line is a number line with hops: hop i goes from stop i to stop i+1. Near
// numbers get a tick for every whole number between them; far ones stand on
// an empty line.
type line struct {
	stops []amount
	hops  []amount // how far each hop goes
}

// Walk hops along the line from stop to stop.
func Walk(stops ...int) Picture {
	l := line{stops: givens(stops...)}
	for i := 1; i < len(stops); i++ {
		l.hops = append(l.hops, given(max(stops[i]-stops[i-1], stops[i-1]-stops[i])))
	}
	return l
}

// IsLine reports whether a picture is a number line.
func IsLine(p Picture) bool {
	_, ok := p.(line)
	return ok
}

// fitsLine wants one walk, of which every hop moves and no two end at one place.
func fitsLine(p problem.Problem) bool {
	if isBoth(p) || p.Kind() == problem.BiggerThenTogether {
		return false
	}
	walk := walkOf(p, Solved)
	stops := slices.Sorted(slices.Values(numbers(walk.stops)))
	return !slices.Contains(numbers(walk.hops), 0) && len(slices.Compact(stops)) == len(walk.stops)
}

func lineOf(p problem.Problem, stage Stage) Picture { return walkOf(p, stage) }

// walkOf shows a story as a walk along the line.
func walkOf(p problem.Problem, stage Stage) line {
	q := p.Quantities()
	told := firstTold(p)
	at := func(i int) amount { return amount{n: q[i].Value, state: stateAt(q[i], told, stage)} }
	switch {
	case isCompare(p): // from the smaller up to the bigger
		return line{stops: []amount{at(1), at(0)}, hops: []amount{at(2)}}
	case len(q) == 3: // start, change, result
		return line{stops: []amount{at(0), at(2)}, hops: []amount{at(1)}}
	}
	terms := p.Equation().Sides()[0]
	states := map[Stage]state{Open: empty, Solved: found}
	between := amount{n: terms[:2].Value(), state: states[stage]}
	return line{stops: []amount{at(0), between, at(3)}, hops: []amount{at(1), at(2)}}
}

// back reports whether hop i goes to a smaller number.
func (l line) back(i int) bool { return l.stops[i+1].n < l.stops[i].n }

// turned reports whether hop i turns round and so is drawn below the line.
func (l line) turned(i int) bool { return l.back(i) != l.back(0) }

const (
	// leastHop is the narrowest hop on a line of far numbers: its label fits,
	// and so do the numbers under its ends.
	leastHop = 46
	// near is how many steps a line may span to show every whole number.
	near = 10
	// lineEnd is kept free at both ends, where the line runs on.
	lineEnd = 26

	axis = 78 // how far below the top the line lies
	// turn is how far below the line a hop that turns round starts: the
	// numbers stand between.
	turn = 42
)

// scale gives the place of each stop, and of each whole number where they are
// near.
func (l line) scale() (stops, ticks []int) {
	at := numbers(l.stops)
	sorted := slices.Compact(slices.Sorted(slices.Values(at)))
	least, most := sorted[0], sorted[len(sorted)-1]
	place := func(n int) int { return far(sorted, n) }
	if most-least <= near && most < 100 {
		pitch := min((inner-2*lineEnd)/max(most-least, 1), 2*leastHop)
		place = func(n int) int { return (Width-pitch*(most-least))/2 + (n-least)*pitch }
		for n := least; n <= most; n++ {
			ticks = append(ticks, place(n))
		}
	}
	for _, n := range at {
		stops = append(stops, place(n))
	}
	return stops, ticks
}

// far is the place of n where the line is shared out between the stops, in
// proportion.
func far(stops []int, n int) int {
	const start, room = margin + lineEnd, inner - 2*lineEnd
	var gaps []int
	for i := range len(stops) - 1 {
		gaps = append(gaps, stops[i+1]-stops[i])
	}
	i := slices.Index(stops, n)
	if i == len(gaps) {
		return start + room
	}
	return share(start, room, min(leastHop, room/len(gaps)), gaps...)[i].x
}

// Figure draws the line, the hops and where they land.
func (l line) Figure() Figure {
	height, unused := axis+turn, axis-24
	for i, hop := range l.hops {
		if l.turned(i) {
			height = axis + turn + 52
		}
		if hop.state >= asked {
			unused = 0
		}
	}
	return Figure{"line", height - unused, func(d *Pen) {
		d.Group("", 0, -unused, func() { l.paint(d) })
	}}
}

func (l line) paint(d *Pen) {
	stops, ticks := l.scale()
	const right = Width - margin
	d.path("axis", new(path).move(margin, axis).by(inner, 0).head(margin, axis, -1, 0).head(right, axis, 1, 0))
	var marks path
	for _, x := range ticks {
		marks.move(x, axis-6).by(0, 12)
	}
	d.path("tick", &marks)
	for i, hop := range l.hops {
		if hop.state >= asked {
			d.group("hop", func() { l.paintHop(d, i, stops[i], stops[i+1]) })
		}
	}
	var dots []point
	for i, a := range l.stops {
		if a.drawn() {
			dots = append(dots, point{stops[i], axis})
			d.number(stops[i], axis+24, a)
		}
	}
	d.dots(dots, 4, "solid")
}

// paintHop draws a hop as an arch with its size on top.
func (l line) paintHop(d *Pen, i, from, to int) {
	rise := min(max(max(to-from, from-to)/3, 18), 40)
	y, label := axis-6, axis-rise-20
	if l.turned(i) {
		rise = -18
		y, label = axis+turn, axis+turn+34
	}
	arch := new(path).move(from, y).bend((to-from)/2, -2*rise, to-from, 0)
	size := "?"
	switch hop := l.hops[i]; {
	case hop.state == asked: // dashes would spoil the arrow's head
		d.path("arch guide", arch)
		arch = new(path)
	case l.back(i):
		size = "−" + d.Number(hop.n)
	default:
		size = "+" + d.Number(hop.n)
	}
	d.path("arch", arch.head(to, y, (to-from)/2, 2*rise))
	d.Text((from+to)/2, label+6, size, "small")
}

// Describe writes the walk as an equation.
func (l line) Describe() phrase.Line {
	if mark, ok := l.onlyMark(); ok {
		return phrase.Say("picture.number-line.first", mark.value("Start"))
	}
	term := func(op problem.Op, a amount) problem.Term {
		return problem.Term{Op: op, Value: a.n, Unknown: !a.written()}
	}
	walk := problem.Expression{term(problem.Plus, l.stops[0])}
	for i, hop := range l.hops {
		op := problem.Plus
		if l.back(i) {
			op = problem.Minus
		}
		walk = append(walk, term(op, hop))
	}
	end := problem.Expression{term(problem.Plus, l.stops[len(l.stops)-1])}
	return phrase.Say("picture.number-line.hops", phrase.Equation("Hops", problem.Equal(walk, end)))
}

// onlyMark gives the stop of a line on which nothing else is drawn yet.
func (l line) onlyMark() (mark amount, ok bool) {
	count := 0
	for _, a := range slices.Concat(l.stops, l.hops) {
		if a.drawn() {
			mark = a
			count++
		}
	}
	return mark, count == 1 && mark.written() && !l.hops[0].drawn()
}
