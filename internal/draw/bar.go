package draw

import "homebuild/internal/picture"

// barHeight is the height of a bar of parts.
const barHeight = 46

func bar(p picture.Bar) figure {
	top := 4 + above(p.Whole)
	return figure{sort: "bar", height: top + barHeight + 6, paint: func(b *brush) {
		all := picture.Span{X: picture.Margin, W: picture.Inner}
		b.whole(all, 4, p.Whole)
		if p.Undivided() {
			b.Rect(all.X, top, all.W, barHeight, partClass[0])
			return
		}
		for i, s := range p.Segments() {
			b.bar("part", picture.Box{X: s.X, Y: top, W: s.W, H: barHeight}, i+1, p.Parts[i])
		}
	}}
}

// steps draws two pictures one below the other.
func steps(p picture.Steps) (figure, error) {
	first, err := figureOf(p.First)
	if err != nil {
		return figure{}, err
	}
	second := bar(p.Second)
	gap := 14
	return figure{sort: "stacked", height: first.height + gap + second.height, paint: func(b *brush) {
		b.Group(first.sort, func() { first.paint(b) })
		b.ShiftGroup(0, first.height+gap, second.sort, func() { second.paint(b) })
	}}, nil
}
