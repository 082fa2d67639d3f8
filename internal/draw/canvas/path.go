package canvas

import (
	"strconv"
	"strings"
)

// Path builds the data of a <path> from whole numbers, with relative steps,
// which keep a page light. The zero Path is empty. Its methods return it, so
// that they chain: new(Path).Move(0, 0).By(10, 0).Close().
type Path struct{ b strings.Builder }

// Move starts a new line at a place of the canvas.
func (p *Path) Move(x, y int) *Path { return p.step('M', x, y) }

// Jump starts a new line at a step from here.
func (p *Path) Jump(dx, dy int) *Path { return p.step('m', dx, dy) }

// By draws a straight line to a step from here.
func (p *Path) By(dx, dy int) *Path {
	switch {
	case dy == 0:
		return p.step('h', dx)
	case dx == 0:
		return p.step('v', dy)
	}
	return p.step('l', dx, dy)
}

// Curve draws a curve with two control points, all as steps from here.
func (p *Path) Curve(dx1, dy1, dx2, dy2, dx, dy int) *Path {
	return p.step('c', dx1, dy1, dx2, dy2, dx, dy)
}

// Bend draws a curve with one control point, as steps from here.
func (p *Path) Bend(dx1, dy1, dx, dy int) *Path { return p.step('q', dx1, dy1, dx, dy) }

// Arc draws the shorter part of an ellipse to a step from here, clockwise or
// not.
func (p *Path) Arc(rx, ry int, clockwise bool, dx, dy int) *Path {
	sweep := 0
	if clockwise {
		sweep = 1
	}
	return p.step('a', rx, ry, 0, 0, sweep, dx, dy)
}

// Close draws back to where the line started.
func (p *Path) Close() *Path { return p.step('z') }

// Dot adds a circle around a place of the canvas.
func (p *Path) Dot(x, y, r int) *Path {
	return p.Move(x-r, y).step('a', r, r, 0, 1, 0, 2*r, 0).step('a', r, r, 0, 1, 0, -2*r, 0).Close()
}

// Box adds a rectangle.
func (p *Path) Box(x, y, w, h int) *Path { return p.Move(x, y).By(w, 0).By(0, h).By(-w, 0).Close() }

// String is the path data.
func (p *Path) String() string { return p.b.String() }

// step writes a command; a minus sign is separator enough.
func (p *Path) step(command byte, numbers ...int) *Path {
	p.b.WriteByte(command)
	for i, n := range numbers {
		if i > 0 && n >= 0 {
			p.b.WriteByte(' ')
		}
		p.b.WriteString(strconv.Itoa(n))
	}
	return p
}
