package draw

import "homebuild/internal/picture"

func rows(p picture.Rows) figure {
	name := 0
	if len(p.Names) == 2 {
		name = nameHeight
	}
	// A row is its name, its number and its dots.
	first := name + plateHeight + 22
	second := first + 22 + name + 22
	return figure{height: second + 22 + plateHeight + 6, paint: func(b *brush) {
		b.names(p.Comparison, name-6, second-26)
		b.longerRow(p, first)
		b.shorterRow(p, second)
		longer, shorter, extra := p.Spans()
		b.rowAmount(longer.Middle(), first-34, p.Bigger)
		b.rowAmount(max(shorter.Middle(), 26), second+34, p.Smaller)
		if p.Difference.N > 0 && p.Difference.State >= picture.Known {
			b.rowAmount(extra.Middle(), second, p.Difference)
		}
	}}
}

func (b *brush) rowAmount(x, y int, a picture.Amount) { b.amount(x, y, a) }

// longerRow shows the dots that have a partner below, and the extra ones.
func (b *brush) longerRow(p picture.Rows, y int) {
	longer, shorter, extra := p.Spans()
	r := p.Radius()
	switch {
	case p.Difference.Written():
		class := partClass[1]
		if !p.Bigger.Written() {
			class = "unknown"
		}
		b.circles(p.Row(shorter, y), r, class)
		b.circles(p.Row(extra, y), r, partClass[2])
	case p.Bigger.Written():
		b.circles(p.Row(longer, y), r, partClass[1])
	}
}

func (b *brush) shorterRow(p picture.Rows, y int) {
	_, shorter, _ := p.Spans()
	switch {
	case p.Smaller.Written():
		b.circles(p.Row(shorter, y), p.Radius(), partClass[1])
	case p.Smaller.Drawn():
		b.circles(p.Row(shorter, y), p.Radius(), "unknown")
	}
}
