package draw

import (
	"homebuild/internal/draw/canvas"
	"homebuild/internal/picture"
)

func frames(p picture.Frames) figure {
	corner := p.Corner(0)
	top := 4 + above(p.Whole) - corner.Y
	bottom := corner.Y + 2*p.Size()
	height := top + bottom + 6
	if len(p.Labels) > 0 {
		height += 38
	}
	return figure{sort: "frames", height: height, paint: func(b *brush) {
		end := p.Corner(p.Count()-1).X + 5*p.Size()
		b.whole(picture.Span{X: corner.X, W: end - corner.X}, 4, p.Whole)
		b.Shift(0, top, func() {
			b.frames(p)
			b.legend(bottom+24, p.Labels)
		})
	}}
}

// frames draws the empty frames and then what lies in them.
func (b *brush) frames(p picture.Frames) {
	for i := range p.Count() {
		b.frame(p.Corner(i), p.Size())
	}
	b.cells(p)
}

// frame draws an empty ten frame: two rows of five.
func (b *brush) frame(at picture.Point, size int) {
	b.Rect(at.X, at.Y, 5*size, 2*size, "grid")
	var p canvas.Path
	p.Move(at.X, at.Y+size).By(5*size, 0)
	for i := 1; i < 5; i++ {
		p.Move(at.X+i*size, at.Y).By(0, 2*size)
	}
	b.Path(&p, "thin")
}

// cells draws the dots of one look together.
func (b *brush) cells(p picture.Frames) {
	r := p.Size() * 2 / 5
	look := make([][]picture.Point, 4)
	var dashed, ringed, crossed []picture.Point
	for i, cell := range p.Cells {
		at := p.Middle(i)
		switch cell.Mark {
		case picture.Dashed:
			dashed = append(dashed, at)
			continue
		case picture.Ringed:
			ringed = append(ringed, at)
		case picture.Crossed:
			crossed = append(crossed, at)
		}
		look[cell.Fill] = append(look[cell.Fill], at)
	}
	for fill := 1; fill <= 3; fill++ {
		b.circles(look[fill], r, partClass[fill])
	}
	b.circles(dashed, r, "unknown")
	b.circles(ringed, r, "ring")
	b.crosses(crossed, r)
}
