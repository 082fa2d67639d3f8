package recheck

import (
	"cmp"
	"fmt"
	"slices"
)

// readable is the narrowest part of a bar: three digits fit in it. Narrower
// parts are drawn so wide all the same, and are left out of the proportions.
const readable = 48

// row is a bar: its parts from left to right, and its whole above a brace.
type row struct {
	parts  []rect
	brace  *box
	whole  amount
	values []amount
}

// rows finds the bars, top down.
func (f *figure) rows() []row {
	byHeight := map[int][]rect{}
	var heights []int
	for _, r := range f.rects {
		if len(byHeight[r.y]) == 0 {
			heights = append(heights, r.y)
		}
		byHeight[r.y] = append(byHeight[r.y], r)
	}
	slices.Sort(heights)
	var out []row
	for _, y := range heights {
		w := row{parts: byHeight[y]}
		slices.SortFunc(w.parts, func(a, b rect) int { return cmp.Compare(a.x, b.x) })
		for i, b := range f.braces {
			if b.y < y && y-b.y < 12 {
				w.brace = &f.braces[i]
				w.whole = f.amountIn(box{b.x, b.y - 40, b.w, 32})
			}
		}
		for _, part := range w.parts {
			w.values = append(w.values, f.amountIn(part.box))
		}
		out = append(out, w)
	}
	return out
}

// amountIn reads the number in a place; names are no numbers.
func (f *figure) amountIn(b box) amount {
	for _, l := range f.labels {
		if l.class == "" && b.holds(l.x, l.y-8) {
			return l.amount()
		}
	}
	return amount{}
}

// barFaults rechecks bars of parts, and bars to compare.
func (f *figure) barFaults() []string {
	var out []string
	rows := f.rows()
	if len(rows) == 0 {
		return []string{"nothing in it can be read"}
	}
	for i := 0; i < len(rows); i++ {
		w := rows[i]
		if w.brace == nil && len(w.parts) == 1 && i+1 < len(rows) && rows[i+1].brace == nil {
			out = append(out, compareFaults(w, rows[i+1])...)
			i++
			continue
		}
		out = append(out, w.faults()...)
	}
	return out
}

func (w row) faults() []string {
	var out []string
	if len(w.parts) > 1 || w.values[0].known {
		out = makes("bar", w.whole, w.values...)
	}
	end := w.parts[0].x
	for _, part := range w.parts {
		if part.x != end {
			out = append(out, "bar: there is a gap between its parts")
		}
		end = part.x + part.w
	}
	if w.brace != nil && (w.brace.x != w.parts[0].x || w.brace.x+w.brace.w != end) {
		out = append(out, "bar: the brace does not span its parts")
	}
	values := w.solved()
	for i, a := range w.parts {
		for j, b := range w.parts[:i] {
			out = append(out, proportion(a.w, b.w, values[i], values[j])...)
		}
	}
	return out
}

// solved are the values with a single open one filled in from the whole.
func (w row) solved() []amount {
	out := slices.Clone(w.values)
	left, open := w.whole.n, -1
	for i, a := range out {
		switch {
		case a.known:
			left -= a.n
		case open >= 0:
			return out
		default:
			open = i
		}
	}
	if open >= 0 && w.whole.known {
		out[open] = amount{left, true}
	}
	return out
}

// proportion wants two lengths to be as their numbers are.
func proportion(wide, other int, a, b amount) []string {
	if !a.known || !b.known {
		return nil
	}
	off := wide*b.n - other*a.n
	if wide > readable && other > readable && max(off, -off) > a.n+b.n ||
		(wide-other)*(a.n-b.n) < 0 && max(wide-other, other-wide) > 1 {
		return []string{fmt.Sprintf("bar: %d and %d are %d and %d wide", a.n, b.n, wide, other)}
	}
	return nil
}

// compareFaults rechecks a longer bar above a shorter one and its gap.
func compareFaults(longer, shorter row) []string {
	bigger, smaller := longer.values[0], shorter.values[0]
	if len(shorter.parts) == 1 {
		if longer.parts[0].w < shorter.parts[0].w || bigger.known && smaller.known && bigger.n < smaller.n {
			return []string{"the longer bar stands for less"}
		}
		return proportion(longer.parts[0].w, shorter.parts[0].w, bigger, smaller)
	}
	out := makes("bars", bigger, shorter.values...)
	if end := shorter.parts[1]; longer.parts[0].x+longer.parts[0].w != end.x+end.w {
		out = append(out, "bars: the gap does not end where the longer bar ends")
	}
	filled := row{parts: shorter.parts, values: shorter.values, whole: bigger}
	return append(out, filled.faults()...)
}

// bondFaults rechecks a number bond: the topmost circle is the whole.
func (f *figure) bondFaults() []string {
	circles := slices.Clone(f.circles)
	slices.SortFunc(circles, func(a, b dot) int { return cmp.Or(cmp.Compare(a.y, b.y), cmp.Compare(a.x, b.x)) })
	if len(circles) < 3 {
		return []string{"bond: it has no two parts"}
	}
	var values []amount
	for _, o := range circles {
		values = append(values, f.amountIn(box{o.x - o.r, o.y - o.r, 2 * o.r, 2 * o.r}))
	}
	return makes("bond", values[0], values[1:]...)
}
