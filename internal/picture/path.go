package picture

import (
	"strconv"
	"strings"
)

// path builds path data (SVG 1.1, 8.3) from whole numbers, with relative
// steps, which keep a page light. The zero path is empty. Its methods return
// it, so that they chain: new(path).move(0, 0).by(10, 0).
type path struct{ b strings.Builder }

// move starts a new line at a place.
func (p *path) move(x, y int) *path { return p.step('M', x, y) }

// jump starts a new line at a step from here.
func (p *path) jump(dx, dy int) *path { return p.step('m', dx, dy) }

// by draws a straight line to a step from here.
func (p *path) by(dx, dy int) *path {
	switch {
	case dy == 0:
		return p.step('h', dx)
	case dx == 0:
		return p.step('v', dy)
	}
	return p.step('l', dx, dy)
}

// bend draws a curve with one control point, as steps from here.
func (p *path) bend(dx1, dy1, dx, dy int) *path { return p.step('q', dx1, dy1, dx, dy) }

// dot adds a circle around a place.
func (p *path) dot(x, y, r int) *path {
	return p.move(x-r, y).step('a', r, r, 0, 1, 0, 2*r, 0).step('a', r, r, 0, 1, 0, -2*r, 0).step('z')
}

// box adds a rectangle.
func (p *path) box(x, y, w, h int) *path {
	return p.move(x, y).by(w, 0).by(0, h).by(-w, 0).step('z')
}

// head adds the head of an arrow that arrives at a place from the direction
// dx, dy.
func (p *path) head(x, y, dx, dy int) *path {
	ax, ay := max(dx, -dx), max(dy, -dy)
	length := max(max(ax, ay)+min(ax, ay)*3/8, 1) // near enough to the true length
	ux, uy := 9*dx/length, 9*dy/length
	return p.move(x-ux-uy*2/3, y-uy+ux*2/3).by(ux+uy*2/3, uy-ux*2/3).by(-ux+uy*2/3, -uy-ux*2/3)
}

// String is the path data.
func (p *path) String() string { return p.b.String() }

// step writes a command; a minus sign is separator enough.
func (p *path) step(command byte, numbers ...int) *path {
	p.b.WriteByte(command)
	for i, n := range numbers {
		if i > 0 && n >= 0 {
			p.b.WriteByte(' ')
		}
		p.b.WriteString(strconv.Itoa(n))
	}
	return p
}
