package picture

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// dots is a simple drawing: the dots of each part, or all in one heap, in
// which what is taken away is crossed out.
type dots struct {
	amounts
	taken bool // the first part is crossed out of the whole
}

func fitsDots(p problem.Problem) bool { return !isChain(p) && largest(p) <= Most }

// dotsOf shows a problem in dots; what is compared, as two rows.
func dotsOf(p problem.Problem, stage Stage) Picture {
	if isCompare(p) {
		return rows{comparison: comparisonOf(grown(p, stage))}
	}
	return dots{grown(p, stage), isTaken(p)}
}

// heap reports whether the dots lie in one heap: something is crossed out, or
// only the whole can be seen.
func (p dots) heap() bool {
	return p.taken || !slices.ContainsFunc(p.parts, amount.written)
}

// dotSize is the room for a dot, and the columns of a group, when there are
// one, two or three groups beside each other.
var dotSize = [...]struct{ pitch, columns, gap int }{1: {30, 10, 0}, 2: {28, 5, 24}, 3: {18, 5, 17}}

// dotGroup is the dots of one part, or of the whole.
type dotGroup struct {
	amount
	dots    []point // middles
	crossed int     // how many dots at the end are crossed out
	box     box     // the place of the group, dots or not
	span    span    // how far its dots reach, or its box where there are none
}

// groups lays the dots out from y downwards. All groups are as tall as the
// tallest.
func (p dots) groups(y int) (groups []dotGroup, radius int) {
	amounts, crossed := p.parts, 0
	if p.heap() {
		amounts = []amount{p.whole}
		if p.taken && p.parts[0].drawn() {
			crossed = p.parts[0].n
		}
	}
	size := dotSize[len(amounts)]
	radius = size.pitch * 2 / 5
	height := 36
	for _, a := range amounts {
		height = max(height, (a.n+size.columns-1)/size.columns*size.pitch)
	}
	for i, a := range amounts {
		at := box{margin + i*(size.columns*size.pitch+size.gap), y, size.columns * size.pitch, height}
		g := dotGroup{amount: a, crossed: crossed, box: at, span: span{at.x, at.w}}
		if a.written() && a.n > 0 {
			g.dots = grid(at.x, y, a.n, size.columns, size.pitch)
			g.span = span{g.dots[0].x - radius, (min(a.n, size.columns)-1)*size.pitch + 2*radius}
		}
		groups = append(groups, g)
	}
	return groups, radius
}

// Figure draws the groups under the whole, and their numbers below.
func (p dots) Figure() Figure {
	top := below(p.whole)
	groups, r := p.groups(top)
	bottom := top + groups[0].box.h + 22
	return Figure{"dots", bottom + 20, func(d *Pen) {
		first, last := groups[0].span, groups[len(groups)-1].span
		d.whole(span{first.x, last.end() - first.x}, p.whole)
		if p.heap() {
			d.group("heap", func() { groups[0].paint(d, 1, r) })
			d.legend(bottom, p.labels())
			return
		}
		for i, g := range groups {
			if !g.written() {
				d.segment("part", g.box, i+1, g.amount)
				continue
			}
			d.group("part", func() {
				g.paint(d, i+1, r)
				d.number(g.span.middle(), bottom, g.amount)
			})
		}
	}}
}

// paint draws the dots of a group.
func (g dotGroup) paint(d *Pen, fill, r int) {
	d.dots(g.dots, r, fills[fill])
	d.cross(g.dots[len(g.dots)-g.crossed:], r)
}

// labels count the dots that are crossed out and those that are left; or they
// ask for the parts of dots that are not sorted yet.
func (p dots) labels() []label {
	cells := [...]cell{{mark: dashed}, {mark: dashed}, {mark: dashed}}
	if p.taken {
		cells = [...]cell{{fill: 1, mark: crossed}, {fill: 1}, {}}
	}
	var labels []label
	for i, a := range p.parts {
		if a.drawn() {
			labels = append(labels, label{a, cells[i]})
		}
	}
	return labels
}

// Describe says the groups.
func (p dots) Describe() phrase.Line {
	if p.taken {
		return p.describeTaken("picture.drawing")
	}
	return p.describe("picture.drawing")
}
