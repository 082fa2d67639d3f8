package recheck

import (
	"cmp"
	"fmt"
	"slices"
)

// isLine reports whether the picture is a number line: an arrow at both ends of
// it, hops or marks.
func (f *figure) isLine() bool {
	return len(f.hops) > 0 || len(f.rects) == 0 && len(f.dots) == 0 && len(f.blocks) == 0 && len(f.circles) == 0
}

// lineFaults hops along a number line again: each hop ends as far on as it says.
func (f *figure) lineFaults() []string {
	var out []string
	at := map[int]amount{}
	var stops []label
	for _, l := range f.labels {
		if l.class == "small" {
			continue
		}
		at[l.x] = l.amount()
		if at[l.x].known {
			stops = append(stops, l)
		}
	}
	slices.SortFunc(stops, func(a, b label) int { return cmp.Compare(a.x, b.x) })
	for i := range stops[min(1, len(stops)):] {
		if a, b := stops[i].amount().n, stops[i+1].amount().n; a >= b {
			out = append(out, fmt.Sprintf("line: %d stands before %d", a, b))
		}
	}
	here := amount{}
	for i, h := range f.hops {
		if i == 0 {
			here = at[h.from]
		} else if h.from != f.hops[i-1].to {
			out = append(out, "line: a hop does not start where the one before ended")
		}
		size, fault := f.hopSize(h)
		out = append(out, fault...)
		end, isEnd := at[h.to]
		if here.known && size.known {
			here.n += size.n
		} else {
			here = amount{}
		}
		switch {
		case !isEnd || !end.known:
		case here.known && here.n != end.n:
			out = append(out, fmt.Sprintf("line: a hop ends at %d, and %d is written there", here.n, end.n))
		default:
			here = end
		}
	}
	return append(out, f.scaleFaults()...)
}

// hopSize reads what is written on a hop, with its sign, and compares the sign
// with the way it goes.
func (f *figure) hopSize(h hop) (amount, []string) {
	for _, l := range f.labels {
		if l.class != "small" || max(l.x-(h.from+h.to)/2, (h.from+h.to)/2-l.x) > 1 {
			continue
		}
		a := l.amount()
		runes := []rune(clean(l.text))
		switch {
		case !a.known:
			return a, nil
		case runes[0] == minus:
			a.n = -a.n
		case runes[0] != '+':
			return a, []string{fmt.Sprintf("line: %q has no sign", l.text)}
		}
		if a.n*(h.to-h.from) < 0 {
			return a, []string{fmt.Sprintf("line: the hop %q goes the wrong way", l.text)}
		}
		return a, nil
	}
	return amount{}, []string{"line: a hop has no number"}
}
