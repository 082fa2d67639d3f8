package recheck

import (
	"slices"
	"strings"
)

// blockFaults rechecks hundreds, tens and ones: what is drawn, what is struck
// out, and what each place comes to.
func (f *figure) blockFaults() {
	f.counted()
	sums := map[string]int{}
	for _, g := range f.all("whole", "part") {
		strikes := len(g.those("l", "strike"))
		for _, m := range g.marks {
			place, fill, _ := strings.Cut(m.class, " ")
			if g.name == "part" {
				sums[place] += m.worth()
			}
			if fill == "gone" && slices.Contains(g.marks, mark{"strike", "l", m.x - 1, m.y + m.h, m.w + 2, -m.h}) {
				strikes--
			}
			// A hundred is a square, a ten a stick, a one a dot or its outline.
			isDot := place == "one" && fill != "gone"
			if m.worth() > 0 && ((m.form == "dot") != isDot || (m.h > 2*m.w) != (place == "ten")) {
				f.fault("blocks: a %s is drawn as something else", place)
			}
		}
		_, gone := g.count()
		if n := len(pick(g.marks, func(m mark) bool { return strings.HasSuffix(m.class, " gone") })); strikes != 0 || n != len(g.those("l", "strike")) {
			f.fault("blocks: what is struck out is not the %d that are taken away", gone)
		}
	}
	f.blockTrades()
	f.struck()
	for _, l := range f.one("total").labels {
		if a := l.amount(); a.n != sums[l.class] {
			f.fault("blocks: %d stands where %d belongs", a.n, sums[l.class])
		}
	}
}

// blockTrades wants an arrow from each block that became ten smaller ones, and
// such a block wherever there are more than nine of a place.
func (f *figure) blockTrades() {
	for _, g := range f.all("whole", "part") {
		many := 0
		for _, place := range []string{"one", "ten"} {
			like := func(m mark) bool { class, _, _ := strings.Cut(m.class, " "); return class == place }
			if len(pick(g.marks, like)) > 9 {
				many++
			}
		}
		opened := len(pick(g.marks, func(m mark) bool { return strings.HasPrefix(m.class, "opened ") }))
		if arrows := len(g.those("ll", "move")); arrows != opened || opened < many {
			f.fault("blocks: %d places have ten more, %d blocks were opened with %d arrows", many, opened, arrows)
		}
	}
}

// struck wants the legend to count the blocks that are struck out, and those
// that are left.
func (f *figure) struck() {
	n, gone := f.one("whole").count()
	for _, entry := range f.all("legend") {
		want := n - gone
		if len(entry.crossed()) > 0 {
			want = gone
		}
		if a := entry.amount(); a.known && a.n != want {
			f.fault("blocks: the legend says %d, and %d are drawn", a.n, want)
		}
	}
}
