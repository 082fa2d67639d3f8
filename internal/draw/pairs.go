package draw

import "homebuild/internal/picture"

func pairs(p picture.Pairs) figure {
	pitch := max(p.Pitch(), 24)
	return figure{sort: "splits", height: 8 + pitch*len(p.List), paint: func(b *brush) {
		for i, pair := range p.List {
			y := 4 + pitch*i + pitch/2
			first, second := p.Row(pair, y)
			b.Group("split", func() {
				b.circles(first, p.Radius(), partClass[1])
				b.circles(second, p.Radius(), partClass[2])
				b.Text(picture.Margin+p.Total*p.Pitch()+48, y+6, b.number(pair.First)+" + "+b.number(pair.Second), "small")
			})
		}
	}}
}
