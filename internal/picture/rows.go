package picture

import "homebuild/internal/phrase"

// rows is two rows of dots, one above the other, each dot of the shorter row
// under a dot of the longer one.
type rows struct {
	comparison
	// double marks the rows as the two parts of a double or a near double;
	// turned says that the longer row is the second part.
	double, turned bool
}

// Double shows a double, or a near double with what is over. Numbers that are
// too large for dots are shown as a bar.
func Double(first, second int) Picture {
	big, small := max(first, second), min(first, second)
	if big > Most {
		return Bar(first, second)
	}
	c := comparison{bigger: given(big), smaller: given(small), difference: given(big - small)}
	return rows{comparison: c, double: true, turned: second > first}
}

func (r rows) named(names []phrase.Value) Picture {
	r.names = names
	return r
}

// fills are the parts' fills of the longer row, the shorter row, and the
// extra dots of the longer row.
func (r rows) fills() (longer, shorter, extra string) {
	a, b := fills[1], fills[2]
	switch {
	case r.turned:
		return b, a, b
	case r.double:
		return a, b, a
	}
	return a, a, b
}

const (
	rowHeight = 34
	rowLabel  = 30 // the middle of a row's number
	rowStart  = 56 // where its dots begin
)

// pitch is the room for a dot: the longer row fits the width.
func (r rows) pitch() int { return min(28, (Width-margin-rowStart)/max(r.bigger.n, 1)) }

// radius is the radius of every dot.
func (r rows) radius() int { return r.pitch() * 2 / 5 }

// dots places the dots of a row from the first to before the last, their
// middles at y.
func (r rows) dots(first, last, y int) []point {
	return grid(rowStart+first*r.pitch(), y-r.pitch()/2, last-first, Most, r.pitch())
}

// Figure draws the rows under their names.
func (r rows) Figure() Figure {
	first := r.nameHeight() + rowHeight/2
	second := first + rowHeight + r.nameHeight()
	return Figure{"rows", second + rowHeight/2 + 4, func(d *Pen) {
		r.writeNames(d, first-rowHeight/2-8, second-rowHeight/2-8)
		if r.bigger.drawn() || r.difference.written() {
			d.group("longer", func() {
				r.paintLonger(d, first)
				d.number(rowLabel, first, r.bigger)
			})
		}
		if r.smaller.drawn() {
			d.group("shorter", func() {
				_, fill, _ := r.fills()
				d.dots(r.dots(0, r.smaller.n, second), r.radius(), look(r.smaller, fill))
				d.number(rowLabel, second, r.smaller)
			})
		}
		if !r.double && r.difference.n > 0 && r.difference.state >= asked {
			extra := rowStart + (r.smaller.n+r.bigger.n)*r.pitch()/2
			d.group("difference", func() { d.number(extra, second, r.difference) })
		}
	}}
}

// paintLonger shows the dots that have a partner below, and the extra ones.
func (r rows) paintLonger(d *Pen, y int) {
	fill, _, extraFill := r.fills()
	if !r.difference.written() {
		if r.bigger.written() {
			d.dots(r.dots(0, r.bigger.n, y), r.radius(), fill)
		}
		return
	}
	extra := r.dots(r.smaller.n, r.bigger.n, y)
	d.dots(r.dots(0, r.smaller.n, y), r.radius(), look(r.bigger, fill))
	d.dots(extra, r.radius(), extraFill)
	if r.double {
		d.dots(extra, r.radius(), "ring")
	}
}

// Describe says both rows.
func (r rows) Describe() phrase.Line {
	if r.double && r.difference.n == 0 {
		return phrase.Say("picture.drawing.same", r.bigger.value("Each"))
	}
	return r.describe("picture.drawing.")
}
