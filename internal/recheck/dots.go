package recheck

import (
	"maps"
	"slices"
	"strings"
)

// pick lists the marks that are so.
func pick(marks []mark, is func(mark) bool) []mark {
	return slices.DeleteFunc(slices.Clone(marks), func(m mark) bool { return !is(m) })
}

// isDot reports whether m is a dot to count. A second ring round one is none.
func (m mark) isDot() bool { return m.form == "dot" && m.class != "ring" && m.class != "solid" }

// dots lists the dots of a group.
func (g group) dots() []mark {
	return pick(g.marks, mark.isDot)
}

// everyDot lists the dots of a group and of those in it.
func (g group) everyDot() []mark {
	out := g.dots()
	for _, x := range g.groups {
		out = append(out, x.everyDot()...)
	}
	return out
}

// crossed lists the dots that are crossed out.
func (g group) crossed() []mark {
	return pick(g.dots(), func(m mark) bool { return slices.Contains(g.marks, mark{"cross", "l", m.x, m.y, m.w, m.h}) })
}

// in reports whether m lies within another mark.
func (m mark) in(around mark) bool {
	return around.x <= m.x && m.x+m.w <= around.x+around.w && around.y <= m.y && m.y+m.h <= around.y+around.h
}

// worth is what a block or a dot counts, by the first of its classes.
func (m mark) worth() int {
	switch place, _, _ := strings.Cut(m.class, " "); {
	case place == "hundred":
		return 100
	case place == "ten":
		return 10
	case place == "one", m.isDot():
		return 1
	}
	return 0
}

// count adds up what stands in a group, and what of it is taken away.
func (g group) count() (n, gone int) {
	for _, m := range g.marks {
		n += m.worth()
		if strings.HasSuffix(m.class, " gone") {
			gone += m.worth()
		}
	}
	return n, gone + len(g.crossed())
}

// byPlace adds up each place of the blocks in a group.
func (g group) byPlace() []int {
	sums := map[int]int{}
	for _, m := range g.marks {
		sums[m.worth()] += m.worth()
	}
	return slices.Collect(maps.Values(sums))
}

// counted wants the whole and each part to have as many dots as its number
// says, and the parts to make the whole. A number above a brace, and a
// difference, have their dots elsewhere.
func (f *figure) counted() {
	f.adds(f.group)
	whole, parts := f.split()
	for _, x := range append(parts, whole) {
		n, _ := x.count()
		elsewhere := x.name == "difference" || slices.ContainsFunc(x.marks, func(m mark) bool { return m.class == "brace" })
		if a := x.amount(); a.known && n != a.n && !elsewhere {
			f.fault("%s: %d is drawn as %d", f.name, a.n, n)
		}
	}
}

// countShows counts each row of dots or of blocks.
func (f *figure) countShows() (s shown) {
	whole, parts := f.split()
	for _, g := range append(parts, whole) {
		n, gone := g.count()
		if n > 0 {
			s.either = append(s.either, n)
		}
		if gone > 0 {
			s.parts = append(s.parts, []int{gone})
		}
	}
	return s
}

// pool is all the dots: those in frames or in a heap, and those of the parts.
func (f *figure) pool() group {
	g := group{marks: slices.Clone(f.marks)}
	for _, x := range f.all("heap", "part") {
		g.marks = append(g.marks, x.marks...)
	}
	return g
}

// whole reports whether every dot is drawn: none of the parts is an empty place.
func (g group) whole() bool { return len(g.those("box", "unknown")) == 0 }

// dotFaults counts a drawing of dots, the parts apart or all in a heap.
func (f *figure) dotFaults() {
	f.counted()
	f.legends()
}

// legends wants all dots to be the whole, and each entry of the legend to count
// those that look like its sample.
func (f *figure) legends() {
	pool, whole := f.pool(), f.one("whole").amount()
	dots, crossed := pool.dots(), pool.crossed()
	if whole.known && pool.whole() && len(dots) != whole.n {
		f.fault("%s: there are %d dots in all, not %d", f.name, len(dots), whole.n)
	}
	if n := len(pool.those("l", "cross")); n != 2*len(crossed) {
		f.fault("%s: a cross lies beside the dots", f.name)
	}
	entries := f.all("legend")
	for _, entry := range entries {
		for _, sample := range entry.dots() {
			like := func(m mark) bool { return m.class == sample.class }
			got := len(pick(dots, like))
			if len(entry.crossed()) > 0 {
				got = len(pick(crossed, like))
			} else if slices.ContainsFunc(entries, func(g group) bool { return len(g.crossed()) > 0 }) {
				got -= len(pick(crossed, like))
			}
			if a := entry.amount(); a.known && got != a.n {
				f.fault("%s: %d dots stand for %d", f.name, got, a.n)
			}
		}
	}
}

// frameFaults counts the dots in ten frames; each has a place of its own.
func (f *figure) frameFaults() {
	f.legends()
	seen := map[mark]bool{}
	for _, m := range f.dots() {
		m.class = ""
		if seen[m] {
			f.fault("frames: two dots lie in one place")
		}
		seen[m] = true
		if !slices.ContainsFunc(f.those("box", "grid"), m.in) {
			f.fault("frames: a dot lies beside the frames")
		}
	}
}

// dotShows counts all dots: those that are taken away and those that are not
// known yet are drawn, too.
func (f *figure) dotShows() (s shown) {
	pool := f.pool()
	if pool.whole() {
		s.wholes = []int{len(pool.dots())}
	}
	if n := len(pool.crossed()); n > 0 {
		s.parts = [][]int{{n}}
	}
	return s
}

// sumFaults rechecks dots that stand with a sum: each of its numbers is that of
// a pile of dots, and all sums come to the same.
func (f *figure) sumFaults() {
	for _, g := range f.groups {
		if n := g.sum().numbers(); !slices.Equal(n, g.piles()) {
			f.fault("%s: %v dots stand for %v", f.name, g.piles(), n)
		}
		v, _ := g.sum().value()
		if want, _ := f.groups[0].sum().value(); v != want {
			f.fault("%s: one sum is %d, another %d", f.name, want, v)
		}
	}
}

// sum is what is written below or beside dots.
func (g group) sum() side {
	q, err := read(append(g.labels, label{})[0].text)
	if err != nil || len(q) != 1 {
		return nil
	}
	return q[0]
}

// piles counts dots by the ten frame that they lie in, or else by their fill.
func (g group) piles() []int {
	var out []int
	for _, grid := range g.those("box", "grid") {
		out = append(out, len(pick(g.dots(), func(m mark) bool { return m.in(grid) && m.class != "unknown" })))
	}
	if len(out) == 0 {
		out = []int{len(g.those("dot", "part-a")), len(g.those("dot", "part-b"))}
	}
	return out
}

// makingTenFaults rechecks frames before and after dots move: as many arrows
// are drawn as dots leave their place and have a ring in another.
func (f *figure) makingTenFaults() {
	f.sumFaults()
	was, now := f.one("was"), f.one("now")
	moved := len(was.those("dot", "unknown"))
	if f.moves() != moved || len(was.those("dot", "ring")) != moved || len(now.those("dot", "ring")) != moved {
		f.fault("make-ten: %d places are filled by %d arrows", moved, f.moves())
	}
}

// moves counts the arrows; each has one head.
func (f *figure) moves() int { return len(f.those("ll", "move")) }

func (f *figure) makingTenShows() (s shown) {
	for _, n := range f.one("was").sum().numbers() {
		s.parts = append(s.parts, []int{n})
	}
	return s
}
