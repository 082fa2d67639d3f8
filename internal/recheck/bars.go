package recheck

import "slices"

// readable is the narrowest part of a bar: three digits fit in it. Smaller
// parts are drawn so wide all the same.
const readable = 48

// bars are the bars of a picture: it may be two, one below the other.
func (f *figure) bars() []group {
	if f.name == "stacked" {
		return f.groups
	}
	return []group{f.group}
}

// barFaults rechecks bars of parts, and bars to compare.
func (f *figure) barFaults() {
	for _, g := range f.bars() {
		f.adds(g)
		f.lengths(g)
	}
}

func (f *figure) barShows() (s shown) {
	if both := f.all("both"); len(both) > 0 { // the two bars are parts of it
		if a := both[0].amount(); a.known {
			s.wholes = []int{a.n}
		}
		return s
	}
	for _, g := range f.bars() {
		if whole, _ := g.split(); whole.amount().known {
			s.wholes = append(s.wholes, whole.amount().n)
		}
	}
	return s
}

// lengths wants parts to lie side by side along their whole, in proportion to
// their numbers, as far as these are known or follow from the whole.
func (f *figure) lengths(g group) {
	whole, parts := g.split()
	if len(parts) == 0 { // in one piece, or the second bar is still to come
		parts = []group{{marks: slices.Concat(g.marks, whole.marks), labels: whole.labels}}
	}
	along, first, left := whole.stretch(), parts[0].stretch(), whole.amount()
	if a := parts[0].amount(); along.w == first.w && (a == left || !a.known || !left.known) {
		parts = parts[:1] // nothing is left over for an empty gap, which is drawn beside
	}
	var wide, numbers, open []int
	for i, at := range f.sideBySide(g.name, along, parts) {
		if a := parts[i].amount(); a.known {
			wide, numbers, left.n = append(wide, at), append(numbers, a.n), left.n-a.n
		} else {
			open = append(open, at)
		}
	}
	if left.known && len(open) == 1 {
		wide, numbers = append(wide, open[0]), append(numbers, left.n)
	}
	f.fair(readable, wide, numbers)
}

// sideBySide wants parts to lie without a gap, and to be as long as the whole
// where that is drawn. It gives their lengths.
func (f *figure) sideBySide(sort string, along mark, parts []group) []int {
	first := parts[0].stretch()
	if first.w == 0 {
		f.fault("%s: there is no bar", sort)
	}
	var wide []int
	end := first.x
	for _, part := range parts {
		at := part.stretch()
		if at.w == 0 { // what the longer bar has more
			at = mark{x: end, w: along.x + along.w - end}
		}
		if at.x != end {
			f.fault("%s: there is a gap between its parts", sort)
		}
		wide, end = append(wide, at.w), at.x+at.w
	}
	if along.w > 0 && (along.x != first.x || along.x+along.w != end) {
		f.fault("%s: its parts are not as long as the whole", sort)
	}
	return wide
}

// stretch is where a bar lies, or what its brace spans.
func (g group) stretch() mark {
	for _, m := range g.marks {
		if m.class == "brace" || m.form == "box" && g.name != "whole" && g.name != "under" && m.class != "plate" && m.class != "plate found" {
			return m
		}
	}
	return mark{}
}

// fair wants lengths that lie side by side to be in proportion to their
// numbers, as exactly as whole units allow: each is less than one unit from its
// share of the room, since a share of 86.9 is drawn as 86 or 87. A length that
// would be under least is drawn as least, so that its number can be read; the
// others share what that leaves.
func (f *figure) fair(least int, wide, numbers []int) {
	room, sum, widened := 0, 0, false
	for i, w := range wide {
		if w > least {
			room, sum = room+w, sum+numbers[i]
		} else {
			widened = true
		}
	}
	for i, w := range wide {
		slack := sum
		if widened { // one of these may be as wide as that by its own right, and rounded
			slack += numbers[i]
		}
		off := w*sum - numbers[i]*room
		if w < least || w == least && -off > 2*sum || w > least && sum > 0 && max(off, -off) >= slack {
			f.fault("%s: %v are %v wide, not in proportion", f.name, numbers, wide)
			return
		}
	}
}

// bondFaults rechecks a number bond: each number stands in a circle.
func (f *figure) bondFaults() {
	f.adds(f.group)
	whole, parts := f.split()
	for _, g := range append(parts, whole) {
		if len(parts) < 2 || len(pick(g.those("circle"), func(m mark) bool { return m.class != "gap" })) != 1 {
			f.fault("bond: there are not circles for a whole and its parts")
		}
	}
}

func (f *figure) bondShows() (s shown) {
	whole, parts := f.split()
	if whole.amount().known {
		s.wholes = []int{whole.amount().n}
	}
	for _, part := range parts {
		if a := part.amount(); a.known {
			s.parts = append(s.parts, []int{a.n})
		}
	}
	return s
}
