package draw

import "homebuild/internal/picture"

func pairs(p picture.Pairs) figure {
	pitch := max(p.Pitch(), 24)
	return figure{height: 8 + pitch*len(p.List), paint: func(b *brush) {
		var a, c []picture.Point
		for i, pair := range p.List {
			y := 4 + pitch*i + pitch/2
			first, second := p.Row(pair, y)
			a, c = append(a, first...), append(c, second...)
			b.Text(picture.Margin+p.Total*p.Pitch()+48, y+6, b.number(pair.First)+" + "+b.number(pair.Second), "small")
		}
		b.circles(a, p.Radius(), partClass[1])
		b.circles(c, p.Radius(), partClass[2])
	}}
}
