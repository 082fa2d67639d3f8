package recheck

import (
	"cmp"
	"fmt"
	"slices"
)

// band is a row of a drawing, with its number at the left.
type band struct {
	label   label
	amount  amount
	value   int // dots as ones, sticks as tens, squares as hundreds
	crossed int // of these, struck out
	below   bool
}

// bands counts what stands beside each number at the left.
func (f *figure) bands() []band {
	var out []band
	for _, l := range f.labels {
		if l.x < column {
			below := slices.ContainsFunc(f.rules, func(y int) bool { return y < l.y })
			out = append(out, band{label: l, amount: l.amount(), below: below})
		}
	}
	for _, d := range f.dots { // a row that is not known yet may have no number
		if d.class == "unknown" && !slices.ContainsFunc(out, func(b band) bool { return b.off(d.y) <= d.r }) {
			out = append(out, band{label: label{x: d.x, y: d.y + 8}})
		}
	}
	add := func(y, value int, gone bool) {
		i := nearest(out, y)
		out[i].value += value
		if gone {
			out[i].crossed += value
		}
	}
	for _, d := range f.dots {
		if d.class != "ring" {
			add(d.y, 1, false)
		}
	}
	for _, b := range f.blocks {
		add(b.y+b.h/2, worth(b), b.class == "gone")
	}
	return out
}

func nearest(all []band, y int) int {
	best := slices.MinFunc(all, func(a, b band) int { return cmp.Compare(a.off(y), b.off(y)) })
	return slices.Index(all, best)
}

// off is how far a row is from a height: its number's baseline is 8 lower.
func (b band) off(y int) int { return max(b.label.y-8-y, y-b.label.y+8) }

// worth is what a block stands for: a dot that is struck out, a stick, a square.
func worth(b rect) int {
	switch {
	case b.h > 2*b.w:
		return 10
	case b.class == "gone" && b.x >= 215: // the ones stand at the right
		return 1
	}
	return 100
}

// bandFaults rechecks rows of dots to compare, and tens and ones. A number
// below a line is that of all above it.
func (f *figure) bandFaults() []string {
	var out []string
	above := f.unlabelled()
	open := len(above) > 0
	for _, b := range f.bands() {
		if b.amount.known && b.value != b.amount.n {
			out = append(out, fmt.Sprintf("drawing: %d is drawn as %d", b.amount.n, b.value))
		}
		switch {
		case b.below:
			out = append(out, makes("drawing", b.amount, above...)...)
		case b.amount.known:
			above = append(above, b.amount)
		default:
			above, open = append(above, b.amount), true
		}
	}
	return append(out, f.totalFaults(above, open)...)
}

// unlabelled are the places without a number or a "?".
func (f *figure) unlabelled() []amount {
	var out []amount
	for _, r := range f.rects {
		if r.class == "unknown" && !slices.ContainsFunc(f.labels, func(l label) bool { return r.y < l.y && l.y < r.y+r.h }) {
			out = append(out, amount{})
		}
	}
	return out
}

// column is the room at the left where numbers stand beside their dots.
const column = 40

// isBands reports whether numbers stand at the left beside what they count:
// nothing else is drawn above or below them there.
func (f *figure) isBands() bool {
	return slices.ContainsFunc(f.labels, func(l label) bool { return l.x < column }) &&
		!slices.ContainsFunc(f.dots, func(d dot) bool { return d.x-d.r < column }) &&
		!slices.ContainsFunc(f.blocks, func(b rect) bool { return b.x < column })
}

// isRows reports whether the picture is rows of dots with numbers at the left.
func (f *figure) isRows() bool {
	return len(f.rects) == 0 && len(f.circles) == 0 && len(f.dots) > 0 && f.isBands()
}

// totalFaults rechecks numbers that stand apart: what the places come to below
// a line, or how many more there are in a row.
func (f *figure) totalFaults(rows []amount, open bool) []string {
	sum, free := 0, 0
	for _, l := range f.labels {
		if a := l.amount(); l.x >= column && l.class != "name" && a.known {
			sum += a.n
			free++
		}
	}
	if free == 0 || open || len(rows) == 0 {
		return nil
	}
	want := 0
	for _, a := range rows {
		want += a.n
	}
	if len(f.rules) == 0 && len(rows) == 2 { // the difference of two rows
		want = max(rows[0].n-rows[1].n, rows[1].n-rows[0].n)
	}
	if sum != want {
		return []string{fmt.Sprintf("drawing: %d stands where %d belongs", sum, want)}
	}
	return nil
}

// takesAway reports whether the picture strikes blocks out.
func (f *figure) takesAway() bool {
	return slices.ContainsFunc(f.blocks, func(b rect) bool { return b.class == "gone" })
}

// columnFaults rechecks numbers split into columns: each row is the sum of its
// places, and so is what stands below the line.
func (f *figure) columnFaults() []string {
	var out []string
	rows := map[int][]label{}
	var heights []int
	for _, l := range f.labels {
		if len(numbers(l.text)) != 1 {
			continue
		}
		if len(rows[l.y]) == 0 {
			heights = append(heights, l.y)
		}
		rows[l.y] = append(rows[l.y], l)
	}
	slices.Sort(heights)
	for _, y := range heights {
		r := rows[y]
		slices.SortFunc(r, func(a, b label) int { return cmp.Compare(a.x, b.x) })
		sum := 0
		for _, l := range r[1:] {
			sum += l.amount().n
		}
		if len(r) > 1 && sum != r[0].amount().n {
			out = append(out, fmt.Sprintf("columns: %d is split into %d", r[0].amount().n, sum))
		}
	}
	return append(out, f.columnSums(rows, heights)...)
}

// columnSums rechecks what stands below the line, column by column.
func (f *figure) columnSums(rows map[int][]label, heights []int) []string {
	if len(f.rules) != 1 {
		return []string{"columns: there is no line under the numbers"}
	}
	sign := 1
	if slices.ContainsFunc(f.labels, func(l label) bool { return l.text == string(minus) }) {
		sign = -1
	}
	sums := map[int]int{}
	for i, y := range heights {
		for _, l := range rows[y] {
			switch {
			case y < f.rules[0] && i == 0:
				sums[l.x] += l.amount().n
			case y < f.rules[0]:
				sums[l.x] += sign * l.amount().n
			case sums[l.x] != l.amount().n:
				return []string{fmt.Sprintf("columns: %d stands below a column of %d", l.amount().n, sums[l.x])}
			}
		}
	}
	return nil
}
