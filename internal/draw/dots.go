package draw

import "homebuild/internal/picture"

func dots(p picture.Dots) figure {
	top := 4 + above(p.Whole)
	below := top + p.Height()
	return figure{height: below + 42, paint: func(b *brush) {
		groups := p.Groups(top)
		b.whole(picture.Span{X: picture.Margin, W: picture.Inner}, 4, p.Whole)
		for _, g := range groups {
			b.group(g, p.Radius())
		}
		switch {
		case p.Taken:
			b.legend(below+22, takenLabels(p))
		case p.Single():
			b.legend(below+22, openLabels(p))
		default:
			for _, g := range groups {
				if g.Written() {
					b.amount(g.Box.X+g.Box.W/2, below+22, g.Amount)
				}
			}
		}
	}}
}

// group draws a part's dots, or the box where they belong.
func (b *brush) group(g picture.Group, r int) {
	if g.State == picture.Asked || g.State == picture.Empty {
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
