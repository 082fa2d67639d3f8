package recheck

import (
	"fmt"
	"maps"
	"slices"
)

// leastHop is the narrowest stretch of a number line: the numbers under its
// ends do not touch. Many stretches are narrower, and then all the same.
const leastHop = 46

// fair wants lengths that lie side by side to be in proportion to their
// numbers, as exactly as whole units allow: each is less than one unit from its
// share of the room, since a share of 86.9 is drawn as 86 or 87. A length that
// would be under least is drawn as least, so that its number can be read; the
// others share what that leaves.
func fair(what string, least int, wide, numbers []int) []string {
	room, sum, widened := 0, 0, 0
	for i, w := range wide {
		if w > least {
			room, sum = room+w, sum+numbers[i]
		} else {
			widened++
		}
	}
	var out []string
	for i, w := range wide {
		slack := sum
		if widened > 0 { // one of these may be as wide as that by its own right, and rounded
			slack += numbers[i]
		}
		off := w*sum - numbers[i]*room
		switch {
		case w < least:
			out = append(out, fmt.Sprintf("%s: %d is only %d wide", what, numbers[i], w))
		case w == least && -off > 2*sum || w > least && sum > 0 && max(off, -off) >= slack:
			out = append(out, fmt.Sprintf("%s: %v are %v wide, not in proportion", what, numbers, wide))
			return out
		}
	}
	return out
}

// scaleFaults wants the numbers of a line to stand where they belong: on their
// own tick where it has ticks, else as far apart as they are, each under a mark.
func (f *figure) scaleFaults() []string {
	var out []string
	at, places := f.lineNumbers()
	for _, l := range f.labels {
		if l.class != "small" && len(f.stops) > 0 && !f.marked(l.x) {
			out = append(out, fmt.Sprintf("line: %q stands under no mark", l.text))
		}
	}
	if len(f.ticks) > 0 {
		return append(out, f.tickFaults(at, places)...)
	}
	if len(places) < 2 || len(at) < len(places) { // a number in the middle is not known
		return out
	}
	var wide, apart []int
	for i := range places[1:] {
		wide = append(wide, places[i+1]-places[i])
		apart = append(apart, at[places[i+1]]-at[places[i]])
	}
	least := min(leastHop, (places[len(places)-1]-places[0])/len(wide))
	return append(out, fair("line", least, wide, apart)...)
}

// tickFaults wants ticks to be equally far apart, one for each whole number.
func (f *figure) tickFaults(at map[int]int, places []int) []string {
	ticks := unique(f.ticks)
	if len(ticks) < 2 {
		return nil
	}
	pitch := ticks[1] - ticks[0]
	for i := range ticks[1:] {
		if ticks[i+1]-ticks[i] != pitch {
			return []string{"line: its ticks are not equally far apart"}
		}
	}
	first := -1
	for _, x := range places {
		i := slices.Index(ticks, x)
		n, known := at[x]
		switch {
		case i < 0:
			return []string{"line: a number or a hop is beside the ticks"}
		case known && first >= 0 && n-i != first:
			return []string{fmt.Sprintf("line: %d does not stand on its own tick", n)}
		case known:
			first = n - i
		}
	}
	return nil
}

// marked reports whether a mark lies on the line at x.
func (f *figure) marked(x int) bool {
	return slices.ContainsFunc(f.stops, func(d dot) bool { return d.x == x })
}

// lineNumbers gives every place on the line that something stands or a hop
// lands at, in order, and the numbers of those where it is written or can be
// hopped to.
func (f *figure) lineNumbers() (at map[int]int, places []int) {
	at = map[int]int{}
	seen := map[int]bool{}
	for _, l := range f.labels {
		if l.class == "small" {
			continue
		}
		seen[l.x] = true
		if a := l.amount(); a.known {
			at[l.x] = a.n
		}
	}
	for _, d := range f.stops {
		seen[d.x] = true
	}
	for range f.hops { // as often as there are hops, each can reach one place more
		for _, h := range f.hops {
			seen[h.from], seen[h.to] = true, true
			size, _ := f.hopSize(h)
			from, isFrom := at[h.from]
			to, isTo := at[h.to]
			switch {
			case size.known && isFrom && !isTo:
				at[h.to] = from + size.n
			case size.known && isTo && !isFrom:
				at[h.from] = to - size.n
			}
		}
	}
	return at, slices.Sorted(maps.Keys(seen))
}
