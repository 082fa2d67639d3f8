package recheck

import (
	"cmp"
	"maps"
	"slices"
	"strings"
)

// leastHop is the narrowest stretch of a number line: the numbers under its
// ends do not touch. Many stretches are narrower, and then all the same.
const leastHop = 46

// hop is a jump along a number line.
type hop struct {
	from, to int // places of the sheet
	text     string
	size     amount // less than 0 for a jump back
}

// line is a number line: its hops, every place that something stands at or a
// hop lands at, in order, and the numbers of those where it is written or can
// be hopped to.
func (f *figure) line() (hops []hop, places []int, at map[int]int) {
	at = map[int]int{}
	seen := map[int]bool{}
	for _, l := range f.labels {
		seen[l.x] = true
		if a := l.amount(); a.known {
			at[l.x] = a.n
		}
	}
	for _, x := range f.stops() {
		seen[x] = true
	}
	for _, g := range f.all("hop") {
		arch, l := append(g.those("q"), mark{})[0], append(g.labels, label{})[0]
		h := hop{arch.x, arch.x + arch.w, l.text, l.amount()}
		if strings.HasPrefix(h.text, string(minus)) {
			h.size.n = -h.size.n
		}
		seen[h.from], seen[h.to] = true, true
		hops = append(hops, h)
	}
	for range hops { // as often as there are hops, each can reach one place more
		for _, h := range hops {
			from, isFrom := at[h.from]
			to, isTo := at[h.to]
			switch {
			case h.size.known && isFrom && !isTo:
				at[h.to] = from + h.size.n
			case h.size.known && isTo && !isFrom:
				at[h.from] = to - h.size.n
			}
		}
	}
	return hops, slices.Sorted(maps.Keys(seen)), at
}

// stops are the places of the marks on the line.
func (f *figure) stops() []int {
	var out []int
	for _, m := range f.those("dot", "solid") {
		out = append(out, m.x+m.w/2)
	}
	return out
}

// lineFaults hops along a number line again. Its numbers stand in order, each
// under a mark.
func (f *figure) lineFaults() {
	hops, places, at := f.line()
	for i, h := range hops {
		if i > 0 && h.from != hops[i-1].to {
			f.fault("line: a hop does not start where the one before ended")
		}
		f.hop(h, at)
	}
	before, stops := -1, f.stops()
	for _, l := range slices.SortedFunc(slices.Values(f.labels), func(a, b label) int { return cmp.Compare(a.x, b.x) }) {
		if a := l.amount(); a.known {
			if a.n <= before {
				f.fault("line: %d stands before %d", before, a.n)
			}
			before = a.n
		}
		if len(stops) > 0 && !slices.Contains(stops, l.x) {
			f.fault("line: %q stands under no mark", l.text)
		}
	}
	f.scale(places, at)
}

// hop wants a hop to go the way that its sign says, and as far as it says.
func (f *figure) hop(h hop, at map[int]int) {
	from, isFrom := at[h.from]
	to, isTo := at[h.to]
	switch {
	case h.text == "" || h.from == h.to:
		f.fault("line: a hop has no arch or no number")
	case h.size.known && !strings.ContainsAny(h.text, "+"+string(minus)):
		f.fault("line: %q has no sign", h.text)
	case h.size.n*(h.to-h.from) < 0:
		f.fault("line: the hop %q goes the wrong way", h.text)
	case h.size.known && isFrom && isTo && from+h.size.n != to:
		f.fault("line: a hop ends at %d, and %d is written there", from+h.size.n, to)
	}
}

// scale wants the numbers of a line to stand where they belong: on their own
// tick where it has ticks, else as far apart as they are.
func (f *figure) scale(places []int, at map[int]int) {
	if ticks := f.those("v", "tick"); len(ticks) > 0 {
		f.ticks(ticks, places, at)
		return
	}
	if len(places) < 2 || len(at) < len(places) { // a number in the middle is not known
		return
	}
	var wide, apart []int
	for i := range places[1:] {
		wide = append(wide, places[i+1]-places[i])
		apart = append(apart, at[places[i+1]]-at[places[i]])
	}
	f.fair(min(leastHop, (places[len(places)-1]-places[0])/len(wide)), wide, apart)
}

// ticks wants ticks to be equally far apart, one for each whole number.
func (f *figure) ticks(ticks []mark, places []int, at map[int]int) {
	slices.SortFunc(ticks, func(a, b mark) int { return cmp.Compare(a.x, b.x) })
	for i := range ticks[min(2, len(ticks)):] {
		if ticks[i+2].x-ticks[i+1].x != ticks[1].x-ticks[0].x {
			f.fault("line: its ticks are not equally far apart")
			return
		}
	}
	first := -1
	for _, x := range places {
		i := slices.IndexFunc(ticks, func(m mark) bool { return m.x == x })
		n, known := at[x]
		switch {
		case i < 0:
			f.fault("line: a number or a hop is beside the ticks")
			return
		case known && first >= 0 && n-i != first:
			f.fault("line: %d does not stand on its own tick", n)
		case known:
			first = n - i
		}
	}
}

// lineShows is where the walk along a line ends or starts, and how far it goes.
func (f *figure) lineShows() (s shown) {
	hops, _, at := f.line()
	if len(hops) == 0 {
		return s
	}
	start, isStart := at[hops[0].from]
	end, isEnd := at[hops[len(hops)-1].to]
	if low, high := min(start, end), max(start, end); isStart && isEnd {
		s = shown{wholes: []int{high}, parts: [][]int{{low, high - low}}}
	}
	return s
}
