package draw

import "homebuild/internal/picture"

// rowHeight is the room for a row of dots.
const rowHeight = 34

// rowLabel is the middle of a row's number, before its dots.
const rowLabel = 30

func rows(p picture.Rows) figure {
	name := 4
	if len(p.Names) == 2 {
		name = nameHeight
	}
	first := name + rowHeight/2
	second := first + rowHeight + name
	return figure{sort: "rows", height: second + rowHeight/2 + 4, paint: func(b *brush) {
		_, _, extra := p.Spans()
		b.names(p.Comparison, first-rowHeight/2-8, second-rowHeight/2-8)
		if p.Bigger.Drawn() || p.Difference.Written() {
			b.Group("longer", func() {
				b.longerRow(p, first)
				b.amount(rowLabel, first, p.Bigger)
			})
		}
		if p.Smaller.Drawn() {
			b.Group("shorter", func() {
				b.shorterRow(p, second)
				b.amount(rowLabel, second, p.Smaller)
			})
		}
		if !p.Double && p.Difference.N > 0 && p.Difference.State >= picture.Known {
			b.Group("difference", func() {
				b.amount(min(extra.Middle(), picture.Width-picture.Margin-18), second, p.Difference)
			})
		}
	}}
}

// longerRow shows the dots that have a partner below, and the extra ones.
func (b *brush) longerRow(p picture.Rows, y int) {
	longer, shorter, extra := p.Spans()
	fill, _, extraFill := p.Fills()
	r := p.Radius()
	if !p.Difference.Written() {
		if p.Bigger.Written() {
			b.circles(p.Row(longer, y), r, partClass[fill])
		}
		return
	}
	class := partClass[fill]
	if !p.Bigger.Written() {
		class = "unknown"
	}
	over := p.Row(extra, y)
	b.circles(p.Row(shorter, y), r, class)
	b.circles(over, r, partClass[extraFill])
	if p.Double {
		b.circles(over, r, "ring")
	}
}

func (b *brush) shorterRow(p picture.Rows, y int) {
	_, shorter, _ := p.Spans()
	_, fill, _ := p.Fills()
	class := partClass[fill]
	if !p.Smaller.Written() {
		class = "unknown"
	}
	if p.Smaller.Drawn() {
		b.circles(p.Row(shorter, y), p.Radius(), class)
	}
}
