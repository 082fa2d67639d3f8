package draw

import (
	"unicode/utf8"

	"homebuild/internal/draw/canvas"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
)

// brush is a canvas with the ways of drawing that several pictures share.
type brush struct {
	*canvas.Canvas
	number func(int) string
	say    func(phrase.Line) string
}

const (
	digit       = 13 // the room for a digit of a big numeral
	plateHeight = 28
	baseline    = 8 // from the middle of a big numeral down to its baseline
)

var partClass = [...]string{0: "part-0", 1: "part-a", 2: "part-b", 3: "part-c"}

// text writes a big numeral, or another short text, around a middle.
func (b *brush) text(x, y int, s string) { b.Text(x, y+baseline, s, "") }

// amount writes a number around a middle, on a plate of plain paper: over a
// fill pattern it could not be read. What is found stands out, what is asked
// is a "?", and what is not there yet leaves nothing.
func (b *brush) amount(x, y int, a picture.Amount) {
	switch {
	case a.State == picture.Asked:
		b.text(x, y, "?")
	case a.Written():
		s := b.number(a.N)
		class := "plate"
		if a.State == picture.Found {
			class = "plate found"
		}
		w := digit*utf8.RuneCountInString(s) + 5
		b.RoundRect(x-w/2, y-plateHeight/2, w, plateHeight, 5, class)
		b.text(x, y, s)
	}
}

// part fills a box for an amount, the number in its middle.
func (b *brush) part(box picture.Box, fill int, a picture.Amount) {
	if !a.Drawn() {
		return
	}
	class := partClass[fill]
	switch {
	case !a.Written():
		class = "unknown"
	case a.N == 0:
		class = "nothing"
	}
	b.Rect(box.X, box.Y, box.W, box.H, class)
	b.amount(box.X+box.W/2, box.Y+box.H/2, a)
}

// brace draws a brace over a stretch, its tip pointing up to the whole.
func (b *brush) brace(s picture.Span, y int) {
	half := s.W / 2
	b.Path(new(canvas.Path).Move(s.X, y+brace).
		Bend(0, -6, 6, -6).By(half-12, 0).Bend(6, 0, 6, -6).
		Bend(0, 6, 6, 6).By(s.W-half-12, 0).Bend(6, 0, 6, 6), "brace")
}

// brace is the height of a brace.
const brace = 12

// whole writes a number with a brace below it. It takes wholeHeight units.
func (b *brush) whole(s picture.Span, y int, a picture.Amount) {
	if !a.Drawn() {
		return
	}
	b.Group("whole", func() {
		if a.State == picture.Empty {
			b.RoundRect(s.Middle()-20, y, 40, plateHeight, 5, "unknown")
		}
		b.amount(s.Middle(), y+plateHeight/2, a)
		b.brace(s, y+plateHeight+2)
	})
}

const wholeHeight = plateHeight + 2 + brace + 4

// above is the height that a whole takes above its parts: none before the story
// has come to it.
func above(whole picture.Amount) int {
	if !whole.Drawn() {
		return 0
	}
	return wholeHeight
}

// circles draws dots of one class as a single path.
func (b *brush) circles(dots []picture.Point, r int, class string) {
	var p canvas.Path
	for _, d := range dots {
		p.Dot(d.X, d.Y, r)
	}
	b.Path(&p, class)
}

// crosses crosses dots out.
func (b *brush) crosses(dots []picture.Point, r int) {
	var p canvas.Path
	for _, d := range dots {
		p.Move(d.X-r, d.Y-r).By(2*r, 2*r).Jump(0, -2*r).By(-2*r, 2*r)
	}
	b.Path(&p, "cross")
}

// legend writes numbers in a row, each beside the dot it counts.
func (b *brush) legend(y int, labels []picture.Label) {
	const step, r = 84, 10
	x := (picture.Width - step*len(labels)) / 2
	for _, l := range labels {
		at := []picture.Point{{X: x + 20, Y: y}}
		class := partClass[l.Cell.Fill]
		if l.Cell.Mark == picture.Dashed {
			class = "unknown"
		}
		b.Group("legend", func() {
			b.circles(at, r, class)
			if l.Cell.Mark == picture.Crossed {
				b.crosses(at, r)
			}
			b.amount(x+54, y, l.Amount)
		})
		x += step
	}
}

// arrowHead draws the head of an arrow that arrives at a place from the
// direction dx, dy.
func arrowHead(p *canvas.Path, x, y, dx, dy int) {
	ax, ay := max(dx, -dx), max(dy, -dy)
	length := max(max(ax, ay)+min(ax, ay)*3/8, 1) // near enough to the true length
	ux, uy := 9*dx/length, 9*dy/length
	p.Move(x-ux-uy*2/3, y-uy+ux*2/3).By(ux+uy*2/3, uy-ux*2/3).By(-ux+uy*2/3, -uy-ux*2/3)
}
