package draw

import (
	"homebuild/internal/draw/canvas"
	"homebuild/internal/picture"
)

// axis is how far below the top a number line lies.
const axis = 78

// turn is how far below the line a hop that turns round starts: the numbers
// stand between.
const turn = 42

func line(p picture.Line) figure {
	height, unused := axis+turn, axis-24
	for i, hop := range p.Hops {
		if p.Below(i) {
			height = axis + turn + 52
		}
		if hop.Written() || hop.State == picture.Asked {
			unused = 0
		}
	}
	if unused == 0 {
		return figure{sort: "line", height: height, paint: func(b *brush) { b.line(p) }}
	}
	return figure{sort: "line", height: height - unused, paint: func(b *brush) {
		b.Shift(0, -unused, func() { b.line(p) })
	}}
}

// line draws the axis, the hops and where they land.
func (b *brush) line(p picture.Line) {
	b.axis(p)
	x := p.X()
	for i, hop := range p.Hops {
		if hop.State != picture.Hidden && hop.State != picture.Empty {
			b.Group("hop", func() { b.hop(p, i, x[i], x[i+1], hop) })
		}
	}
	var stops []picture.Point
	for i, a := range p.Stops {
		if a.Drawn() {
			stops = append(stops, picture.Point{X: x[i], Y: axis})
			b.amount(x[i], axis+24, a)
		}
	}
	b.circles(stops, 4, "solid")
}

// axis draws the line itself, which runs on at both ends.
func (b *brush) axis(p picture.Line) {
	var path canvas.Path
	path.Move(picture.Margin, axis).By(picture.Inner, 0)
	arrowHead(&path, picture.Margin, axis, -1, 0)
	arrowHead(&path, picture.Width-picture.Margin, axis, 1, 0)
	b.Path(&path, "axis")
	var ticks canvas.Path
	for _, x := range p.Ticks() {
		ticks.Move(x, axis-6).By(0, 12)
	}
	b.Path(&ticks, "tick")
}

// hop draws a hop as an arch with its size on top.
func (b *brush) hop(p picture.Line, i, from, to int, size picture.Amount) {
	wide := max(to-from, from-to)
	rise := min(max(wide/3, 18), 40)
	y, label := axis-6, axis-rise-20
	if p.Below(i) {
		rise = -18
		y, label = axis+turn, axis+turn+34
	}
	arch := new(canvas.Path).Move(from, y).Bend((to-from)/2, -2*rise, to-from, 0)
	if size.State == picture.Asked { // dashes would spoil the arrow's head
		b.Path(arch, "arch guide")
		arch = new(canvas.Path)
	}
	arrowHead(arch, to, y, (to-from)/2, 2*rise)
	b.Path(arch, "arch")
	b.Text((from+to)/2, label+6, b.signed(p.Back(i), size), "small")
}

// signed writes the size of a hop: +4, −4, or ?.
func (b *brush) signed(back bool, a picture.Amount) string {
	if !a.Written() {
		return "?"
	}
	if back {
		return "−" + b.number(a.N)
	}
	return "+" + b.number(a.N)
}
