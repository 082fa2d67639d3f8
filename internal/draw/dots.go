package draw

import "homebuild/internal/picture"

func dots(p picture.Dots) figure {
	top := 4 + above(p.Whole)
	below := top + p.Height()
	return figure{sort: "dots", height: below + 42, paint: func(b *brush) {
		groups := p.Groups(top)
		b.whole(reach(groups, p.Radius()), 4, p.Whole)
		for _, g := range groups {
			if !g.Drawn() {
				continue
			}
			class := "part"
			if p.Single() {
				class = "heap"
			}
			b.Group(class, func() {
				b.group(g, p.Radius())
				if !p.Single() && g.Written() {
					b.amount(groupSpan(g, p.Radius()).Middle(), below+22, g.Amount)
				}
			})
		}
		switch {
		case p.Taken:
			b.legend(below+22, takenLabels(p))
		case p.Single():
			b.legend(below+22, openLabels(p))
		}
	}}
}

// reach is the stretch from the first group to the last.
func reach(groups []picture.Group, r int) picture.Span {
	first, last := groupSpan(groups[0], r), groupSpan(groups[len(groups)-1], r)
	return picture.Span{X: first.X, W: last.End() - first.X}
}

// groupSpan is the stretch that a group's dots cover, or its box where there
// are none.
func groupSpan(g picture.Group, r int) picture.Span {
	if boxed(g) || len(g.Dots) == 0 {
		return picture.Span{X: g.Box.X, W: g.Box.W}
	}
	from, to := g.Dots[0].X, g.Dots[0].X
	for _, d := range g.Dots {
		from, to = min(from, d.X), max(to, d.X)
	}
	return picture.Span{X: from - r, W: to - from + 2*r}
}

// boxed reports whether a group is a box to fill, not dots.
func boxed(g picture.Group) bool { return g.State == picture.Asked || g.State == picture.Empty }

// group draws a part's dots, or the box where they belong.
func (b *brush) group(g picture.Group, r int) {
	if boxed(g) {
		b.part(g.Box, g.Fill, g.Amount)
		return
	}
	b.circles(g.Dots, r, partClass[g.Fill])
	b.crosses(g.Dots[len(g.Dots)-g.Crossed:], r)
}

// takenLabels counts the dots that are left and those that are crossed out.
func takenLabels(p picture.Dots) []picture.Label {
	var labels []picture.Label
	for i, mark := range []picture.Mark{picture.Crossed, picture.Plain} {
		if p.Parts[i].Drawn() {
			labels = append(labels, picture.Label{Amount: p.Parts[i], Cell: picture.Cell{Fill: 1, Mark: mark}})
		}
	}
	return labels
}

// openLabels asks for the parts of dots that are not sorted yet.
func openLabels(p picture.Dots) []picture.Label {
	var labels []picture.Label
	for _, a := range p.Parts {
		if a.Drawn() {
			labels = append(labels, picture.Label{Amount: a, Cell: picture.Cell{Mark: picture.Dashed}})
		}
	}
	return labels
}
