package recheck

import (
	"cmp"
	"slices"
)

// readable is the narrowest part of a bar: three digits fit in it. Smaller
// parts are drawn so wide all the same.
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
	return append(out, w.shares()...)
}

// shares wants the parts to be in proportion, as far as their numbers are known.
func (w row) shares() []string {
	values := w.solved()
	var wide, numbers []int
	for i, a := range values {
		if a.known {
			wide, numbers = append(wide, w.parts[i].w), append(numbers, a.n)
		}
	}
	return fair("bar", readable, wide, numbers)
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

// compareFaults rechecks a longer bar above a shorter one and its gap. Bars of
// the same length leave room for an empty gap behind both.
func compareFaults(longer, shorter row) []string {
	bigger, smaller := longer.values[0], shorter.values[0]
	long, short := longer.parts[0].w, shorter.parts[0].w
	switch {
	case len(shorter.parts) > 1:
		out := makes("bars", bigger, shorter.values...)
		end := shorter.parts[len(shorter.parts)-1]
		nothing := long == short && (!bigger.known || !smaller.known || bigger == smaller)
		if !nothing && longer.parts[0].x+long != end.x+end.w {
			out = append(out, "bars: the gap does not end where the longer bar ends")
		}
		filled := row{parts: shorter.parts, values: shorter.values, whole: bigger}
		if nothing {
			filled.parts, filled.values = filled.parts[:1], filled.values[:1]
		}
		return append(out, filled.faults()...)
	case long < short || bigger.known && smaller.known && bigger.n < smaller.n:
		return []string{"the longer bar stands for less"}
	case !bigger.known || !smaller.known || long == short && bigger.n == smaller.n:
		return nil
	}
	return fair("bars", readable, []int{short, long - short}, []int{smaller.n, bigger.n - smaller.n})
}

// bond reads a number bond: the topmost circle is the whole.
func (f *figure) bond() (whole amount, parts []amount) {
	circles := slices.Clone(f.circles)
	slices.SortFunc(circles, func(a, b dot) int { return cmp.Or(cmp.Compare(a.y, b.y), cmp.Compare(a.x, b.x)) })
	for i, o := range circles {
		a := f.amountIn(box{o.x - o.r, o.y - o.r, 2 * o.r, 2 * o.r})
		if i == 0 {
			whole = a
		} else {
			parts = append(parts, a)
		}
	}
	return whole, parts
}

// bondFaults rechecks a number bond.
func (f *figure) bondFaults() []string {
	whole, parts := f.bond()
	if len(parts) < 2 {
		return []string{"bond: it has no two parts"}
	}
	return makes("bond", whole, parts...)
}
