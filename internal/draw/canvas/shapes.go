package canvas

import "fmt"

// Rect draws a rectangle from its top left corner.
func (c *Canvas) Rect(x, y, w, h int, names string) { c.svg.Rect(x, y, w, h, class(names)...) }

// RoundRect draws a rectangle with corners of radius r.
func (c *Canvas) RoundRect(x, y, w, h, r int, names string) {
	c.svg.Roundrect(x, y, w, h, r, r, class(names)...)
}

// Circle draws a circle around x, y.
func (c *Canvas) Circle(x, y, r int, names string) { c.svg.Circle(x, y, r, class(names)...) }

// Ellipse draws an ellipse around x, y.
func (c *Canvas) Ellipse(x, y, rx, ry int, names string) {
	c.svg.Ellipse(x, y, rx, ry, class(names)...)
}

// Line draws a straight line.
func (c *Canvas) Line(x1, y1, x2, y2 int, names string) { c.svg.Line(x1, y1, x2, y2, class(names)...) }

// Point is a place on the canvas.
type Point struct{ X, Y int }

// Polyline draws an open line through the points; none draws nothing.
func (c *Canvas) Polyline(names string, points ...Point) {
	if x, y := split(points); len(x) > 0 {
		c.svg.Polyline(x, y, class(names)...)
	}
}

// Polygon draws a closed shape through the points; none draws nothing.
func (c *Canvas) Polygon(names string, points ...Point) {
	if x, y := split(points); len(x) > 0 {
		c.svg.Polygon(x, y, class(names)...)
	}
}

func split(points []Point) (x, y []int) {
	for _, p := range points {
		x, y = append(x, p.X), append(y, p.Y)
	}
	return x, y
}

// Path draws a path; an empty one draws nothing.
func (c *Canvas) Path(p *Path, names string) {
	if d := p.String(); d != "" {
		c.svg.Path(d, class(names)...)
	}
}

// Text writes text with its baseline at y. Where it is anchored is the class's
// business.
func (c *Canvas) Text(x, y int, text, names string) { c.svg.Text(x, y, text, class(names)...) }

// Group draws what inside draws, as one group with a class.
func (c *Canvas) Group(names string, inside func()) {
	if list := class(names); list != nil {
		c.svg.Group(list...)
	} else {
		c.print("<g>\n")
	}
	inside()
	c.svg.Gend()
}

// Shift draws what inside draws, moved by x and y.
func (c *Canvas) Shift(x, y int, inside func()) {
	c.svg.Translate(x, y)
	inside()
	c.svg.Gend()
}

// ShiftGroup is Shift with a class.
func (c *Canvas) ShiftGroup(x, y int, names string, inside func()) {
	c.svg.Group(append(class(names), fmt.Sprintf(`transform="translate(%d,%d)"`, x, y))...)
	inside()
	c.svg.Gend()
}

// Defs holds patterns and symbols that are not drawn where they stand.
func (c *Canvas) Defs(inside func()) {
	c.svg.Def()
	inside()
	c.svg.DefEnd()
}

// Pattern defines a tile of w by h units; CSS uses it as fill: url(#id).
func (c *Canvas) Pattern(id string, w, h int, names string, inside func()) {
	c.id(id)
	c.svg.Pattern(id, 0, 0, w, h, "user", class(names)...)
	inside()
	c.svg.PatternEnd()
}

// Symbol defines a shape to be drawn by Use.
func (c *Canvas) Symbol(id string, inside func()) {
	c.id(id)
	c.svg.Gid(id)
	inside()
	c.svg.Gend()
}

// Use draws a symbol of the page at x, y. svgo writes the older xlink:href,
// which needs a namespace that a page does not declare, so this one is ours.
func (c *Canvas) Use(x, y int, id, names string) {
	c.id(id)
	c.print("<use")
	c.attr("href", "#"+id)
	c.printInt("x", x)
	c.printInt("y", y)
	c.attr("class", names)
	c.print("/>\n")
}
