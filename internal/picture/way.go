package picture

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// OfWay shows a strategy at work; there is always a picture. They stand beside
// the last steps, the last one beside the last step, and so are in that order:
// dots that make ten come before the walk, dots that are crossed out for good
// after it.
func OfWay(w strategy.Way) []Picture {
	var out []Picture
	if p, ok := special(w); ok {
		out = append(out, p)
	}
	if len(w.Hops) > 0 {
		out = append(out, walked(w))
	}
	if w.Name == strategy.BridgeBack {
		slices.Reverse(out)
	}
	if len(out) == 0 {
		out = append(out, plainBond(w.Calculation))
	}
	return out
}

// special is the picture that belongs to one strategy; the ways along a number
// line have none but the line.
func special(w strategy.Way) (Picture, bool) {
	n := w.Calculation.Numbers
	switch w.Name {
	case strategy.Doubles, strategy.NearDoubles:
		return twoRows(w.Calculation)
	case strategy.MakeTen:
		return makingTen(n[0], n[1]), true
	case strategy.TenAndMore, strategy.BridgeBack:
		return fewDots(w.Calculation)
	case strategy.FriendlyPair, strategy.TwoParts:
		return joinedFirst(w)
	case strategy.GiveAndTake:
		return moved(w)
	case strategy.SplitTens:
		return placeByPlace(w.Calculation)
	case strategy.Expanded:
		return columned(w.Calculation), true
	}
	return nil, false
}

// walked draws a way's hops.
func walked(w strategy.Way) Line {
	l := Line{Stops: []Amount{Given(w.Hops[0].From)}}
	for _, h := range w.Hops {
		l.Stops = append(l.Stops, Given(h.To))
		l.Hops = append(l.Hops, Given(max(h.To-h.From, h.From-h.To)))
	}
	return l
}

// twoRows shows a double, or a near double with what is over.
func twoRows(c problem.Calculation) (Picture, bool) {
	if c.Op != problem.Plus || len(c.Numbers) != 2 {
		return nil, false
	}
	big, small := max(c.Numbers[0], c.Numbers[1]), min(c.Numbers[0], c.Numbers[1])
	if big > Most {
		return Bar{Parts: []Amount{Given(c.Numbers[0]), Given(c.Numbers[1])}, Whole: Given(big + small)}, true
	}
	return Rows{
		Comparison: Comparison{Bigger: Given(big), Smaller: Given(small), Difference: Given(big - small)},
		Double:     true,
		Turned:     c.Numbers[1] > c.Numbers[0],
	}, true
}

// fewDots shows a sum or difference within 20 on ten frames, where the ten can
// be seen; a bigger one in tens and ones.
func fewDots(c problem.Calculation) (Picture, bool) {
	if c.Largest() > Most || len(c.Numbers) != 2 {
		return placeByPlace(c)
	}
	x, y := c.Numbers[0], c.Numbers[1]
	kind := problem.TakeFromResult
	if c.Op == problem.Plus {
		kind = problem.TogetherTotal
		x, y = max(x, y), min(x, y) // the ten is in the bigger one
	}
	p, err := problem.New(kind, x, y)
	if err != nil {
		return nil, false
	}
	return framesOf(p, Solved), true
}

// joinedFirst shows a sum of three with two of them joined: on ten frames
// where the two make ten, else as two bars.
func joinedFirst(w strategy.Way) (Picture, bool) {
	if len(w.Steps) == 0 {
		return nil, false
	}
	a, b, ok := two(w.Steps[0], "A", "B")
	if !ok || len(w.Calculation.Numbers) != 3 {
		return nil, false
	}
	pair, whole := a+b, w.Calculation.Value()
	rest := whole - pair
	if pair == 10 && whole <= Most {
		p, err := problem.New(problem.TogetherThree, a, b, rest)
		return framesOf(p, Solved), err == nil
	}
	return Steps{
		First:  Bar{Parts: []Amount{Given(a), Given(b)}, Whole: Given(pair)},
		Second: Bar{Parts: []Amount{Given(pair), Given(rest)}, Whole: Given(whole)},
	}, true
}

// moved shows two bars of the same length, before and after something moved
// from one part to the other.
func moved(w strategy.Way) (Picture, bool) {
	if len(w.Steps) == 0 {
		return nil, false
	}
	n := w.Calculation.Numbers
	move, taker, ok := two(w.Steps[0], "Move", "Taker")
	if !ok || len(n) != 2 {
		return nil, false
	}
	a, b := n[0]+move, n[1]-move
	if n[0] != taker {
		a, b = n[0]-move, n[1]+move
	}
	bar := func(a, b int) Bar {
		return Bar{Parts: []Amount{Given(a), Given(b)}, Whole: Given(a + b)}
	}
	return Steps{First: bar(n[0], n[1]), Second: bar(a, b)}, true
}

// placeByPlace shows tens with tens and ones with ones.
func placeByPlace(c problem.Calculation) (Picture, bool) {
	if c.Op == problem.Plus {
		return splitSum(c.Numbers), true
	}
	if len(c.Numbers) != 2 {
		return nil, false
	}
	return splitDifference(c.Numbers[0], c.Numbers[1])
}

// plainBond shows any calculation as a whole and its parts.
func plainBond(c problem.Calculation) Bond {
	n, whole := c.Numbers, c.Value()
	if c.Op == problem.Minus {
		whole = n[0]
		n = append(append([]int(nil), n[1:]...), c.Value())
	}
	b := Bond{Whole: Given(whole)}
	for _, part := range n {
		b.Parts = append(b.Parts, Given(part))
	}
	return b
}

// two reads two numbers of a step by their places.
func two(s strategy.Step, first, second string) (a, b int, ok bool) {
	a, okA := number(s.Values, first)
	b, okB := number(s.Values, second)
	return a, b, okA && okB
}

func number(values []phrase.Value, name string) (int, bool) {
	for _, v := range values {
		if v.Name == name {
			return v.N, true
		}
	}
	return 0, false
}
