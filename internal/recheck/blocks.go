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
	for _, l := range f.one("total").labels {
		if a := l.amount(); a.n != sums[l.class] {
			f.fault("blocks: %d stands where %d belongs", a.n, sums[l.class])
		}
	}
}

// columnFaults rechecks numbers set out in columns: each is the sum of its
// places, and below the line stands what each column comes to.
func (f *figure) columnFaults() {
	columns := map[int]int{} // what each comes to, by its middle
	for _, g := range f.all("number", "total") {
		sign := 1
		if l := g.labels; len(l) > 0 && l[0].class == "sign" {
			if g.labels = l[1:]; l[0].text == string(minus) {
				sign = -1
			}
		}
		split := 0
		for i, l := range g.labels {
			a := l.amount()
			if i > 0 {
				split += a.n
			}
			if g.name == "number" {
				columns[l.x] += sign * a.n
			} else if a.known && a.n != columns[l.x] {
				f.fault("columns: %d stands below a column of %d", a.n, columns[l.x])
			}
		}
		if a := g.amount(); a.known && split != a.n {
			f.fault("columns: %d is split into %d", a.n, split)
		}
	}
}
