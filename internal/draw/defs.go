package draw

import (
	_ "embed"
	"strings"

	"homebuild/internal/draw/canvas"
)

// Defs is the hidden <svg> with the fill patterns. A page that has pictures
// needs it once, before the first of them.
func Defs() (string, error) {
	var out strings.Builder
	c := canvas.New(&out, canvas.Frame{Class: "defs"})
	c.Defs(func() {
		c.Pattern("fill-a", 8, 8, "", func() {
			c.Rect(0, 0, 8, 8, "tint-a")
			c.Path(new(canvas.Path).Dot(2, 2, 1).Dot(6, 6, 1), "mark-a")
		})
		c.Pattern("fill-b", 8, 8, "", func() {
			c.Rect(0, 0, 8, 8, "tint-b")
			c.Path(new(canvas.Path).Move(-2, 2).By(4, -4).Move(0, 8).By(8, -8).Move(6, 10).By(4, -4), "mark-b")
		})
		c.Pattern("fill-c", 8, 8, "", func() {
			c.Rect(0, 0, 8, 8, "tint-c")
			c.Path(new(canvas.Path).Move(0, 4).By(8, 0).Move(4, 0).By(0, 8), "mark-c")
		})
	})
	err := c.End()
	return out.String(), err
}

//go:embed picture.css
var style string

// Style is the CSS that every picture needs whatever the theme: anchors,
// sizes, fills. Its colours are custom properties, which a theme sets:
// --paper, --ink, and for each part a tint to fill and a mark to draw the
// pattern: --tint-a, --mark-a, --tint-b, --mark-b, --tint-c, --mark-c.
func Style() string { return style }
