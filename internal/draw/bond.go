package draw

import "homebuild/internal/picture"

func bond(p picture.Bond) figure {
	whole, parts := p.Circles()
	const r = picture.BondRadius
	return figure{sort: "bond", height: parts[0].Y + r + picture.Margin, paint: func(b *brush) {
		for _, at := range parts {
			b.Line(whole.X, whole.Y, at.X, at.Y, "stem")
		}
		b.Group("whole", func() { b.circle(whole, 0, p.Whole) })
		for i, at := range parts {
			b.Group("part", func() { b.circle(at, i+1, p.Parts[i]) })
		}
	}}
}

// circle draws a circle of a bond, filled as its part is.
func (b *brush) circle(at picture.Point, fill int, a picture.Amount) {
	class := partClass[fill]
	if !a.Written() {
		class = "unknown"
	}
	b.Circle(at.X, at.Y, picture.BondRadius, class)
	b.amount(at.X, at.Y, a)
}
