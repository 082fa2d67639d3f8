package picture

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

const (
	// LeastHop is the narrowest hop on a line of far numbers: its label fits,
	// and so do the numbers under its ends.
	LeastHop = 46
	// near is how many steps a line may span to show every whole number.
	near = 10
	// lineEnd is kept free at both ends, where the line runs on.
	lineEnd = 26
)

// Line is a number line with hops: hop i goes from stop i to stop i+1. Near
// numbers get a tick for every whole number between them; far ones stand on
// an empty line.
type Line struct {
	Stops []Amount
	Hops  []Amount // how far each hop goes
}

// lineOf shows a story as a walk along the line.
func lineOf(p problem.Problem, stage Stage) Line {
	q := p.Quantities()
	told := firstTold(p)
	at := func(i int) Amount { return Amount{q[i].Value, stateAt(q[i], told, stage)} }
	switch {
	case p.Kind().Situation() == problem.Compare: // from the smaller up to the bigger
		return Line{Stops: []Amount{at(1), at(0)}, Hops: []Amount{at(2)}}
	case len(q) == 3: // start, change, result
		return Line{Stops: []Amount{at(0), at(2)}, Hops: []Amount{at(1)}}
	}
	terms := p.Equation().Sides()[0]
	between := Amount{N: terms[:2].Value(), State: Hidden}
	if stage == Solved {
		between.State = Found
	} else if stage == Open {
		between.State = Empty
	}
	return Line{Stops: []Amount{at(0), between, at(3)}, Hops: []Amount{at(1), at(2)}}
}

// Back reports whether hop i goes to a smaller number.
func (l Line) Back(i int) bool { return l.Stops[i+1].N < l.Stops[i].N }

// Below reports whether hop i turns round and so is drawn below the line.
func (l Line) Below(i int) bool { return l.Back(i) != l.Back(0) }

// ends are the smallest and the largest stop.
func (l Line) ends() (least, most int) {
	all := numbers(l.Stops)
	return slices.Min(all), slices.Max(all)
}

// Near reports whether every whole number between the stops has its tick.
func (l Line) Near() bool {
	least, most := l.ends()
	return most-least <= near && most < 100
}

// X is the place of each stop.
func (l Line) X() []int {
	at := l.far()
	if l.Near() {
		at = l.tick
	}
	out := make([]int, len(l.Stops))
	for i, a := range l.Stops {
		out[i] = at(a.N)
	}
	return out
}

// Ticks are the places of all whole numbers of a near line.
func (l Line) Ticks() []int {
	if !l.Near() {
		return nil
	}
	least, most := l.ends()
	var out []int
	for n := least; n <= most; n++ {
		out = append(out, l.tick(n))
	}
	return out
}

func (l Line) tick(n int) int {
	least, most := l.ends()
	pitch := (Inner - 2*lineEnd) / max(most-least, 1)
	pitch = min(pitch, 2*LeastHop)
	return (Width-pitch*(most-least))/2 + (n-least)*pitch
}

// far shares the line out between the stops, in proportion.
func (l Line) far() func(int) int {
	stops := numbers(l.Stops)
	slices.Sort(stops)
	stops = slices.Compact(stops)
	var gaps []int
	for i := range len(stops) - 1 {
		gaps = append(gaps, stops[i+1]-stops[i])
	}
	room := Inner - 2*lineEnd
	spans := Share(Margin+lineEnd, room, min(LeastHop, room/max(len(gaps), 1)), gaps...)
	return func(n int) int {
		i := slices.Index(stops, n)
		if i == len(spans) {
			return Margin + lineEnd + room
		}
		return spans[i].X
	}
}

// Describe writes the walk as an equation.
func (l Line) Describe() phrase.Line {
	if mark, ok := l.onlyMark(); ok {
		return phrase.Say("picture.number-line.first", mark.value("Start"))
	}
	start := l.Stops[0]
	term := func(op problem.Op, a Amount) problem.Term {
		return problem.Term{Op: op, Value: a.N, Unknown: !a.Written()}
	}
	walk := problem.Expression{term(problem.Plus, start)}
	for i, hop := range l.Hops {
		op := problem.Plus
		if l.Back(i) {
			op = problem.Minus
		}
		walk = append(walk, term(op, hop))
	}
	end := problem.Expression{term(problem.Plus, l.Stops[len(l.Stops)-1])}
	return phrase.Say("picture.number-line.hops", phrase.Equation("Hops", problem.Equal(walk, end)))
}

// onlyMark gives the stop of a line on which nothing else is drawn yet.
func (l Line) onlyMark() (Amount, bool) {
	var mark Amount
	count := 0
	for _, a := range slices.Concat(l.Stops, l.Hops) {
		if a.Drawn() {
			mark = a
			count++
		}
	}
	return mark, count == 1 && mark.Written() && !l.Hops[0].Drawn()
}
