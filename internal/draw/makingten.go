package draw

import (
	"homebuild/internal/draw/canvas"
	"homebuild/internal/picture"
)

// makingTen draws the frames before, an arrow, and the frames after, each with
// its sum below.
func makingTen(p picture.MakingTen) figure {
	size := p.Before.Size()
	bottom := p.Before.Corner(1).Y + 2*size
	return figure{sort: "make-ten", height: bottom + 40, paint: func(b *brush) {
		for i, f := range []picture.Frames{p.Before, p.After} {
			b.Group([]string{"was", "now"}[i], func() {
				b.frames(f)
				sum := p.Sums[i]
				b.text(f.Left+5*size/2, bottom+22, b.number(sum[0].Value)+" + "+b.number(sum[1].Value))
			})
		}
		b.moves(p)
	}}
}

// moves draws an arrow for each dot that moves up into the first frame.
func (b *brush) moves(p picture.MakingTen) {
	var path canvas.Path
	half := p.Before.Size() / 2
	for _, m := range p.Moves {
		from, to := p.Before.Middle(m.From), p.Before.Middle(m.To)
		from.Y, to.Y = from.Y-half, to.Y+half-4
		path.Move(from.X, from.Y).By(to.X-from.X, to.Y-from.Y)
		arrowHead(&path, to.X, to.Y, to.X-from.X, to.Y-from.Y)
	}
	b.Path(&path, "move")
}
