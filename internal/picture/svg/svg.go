// Package svg draws pictures as SVG elements to stand in a page. It chooses no
// colours: every shape has a class, and Style and a theme's custom properties
// colour the classes in light, dark and print. The parts of a story differ in
// their fill pattern too, so that they can be told apart without colours.
//
// svgo writes the shapes. The element around them is ours, since svgo would
// begin a file of its own.
package svg

import (
	_ "embed"
	"encoding/xml"
	"fmt"
	"strings"

	svgo "github.com/ajstarks/svgo"

	"homebuild/internal/phrase"
	"homebuild/internal/picture"
)

// Options say how a picture speaks.
type Options struct {
	ID     string                   // unique in the page
	Say    func(phrase.Line) string // says a line in the page's language
	Number func(int) string         // writes a number in the page's digits
}

// Draw draws a picture as an <svg> element that is named by its description.
// Pictures run from left to right in every language.
func Draw(p picture.Picture, o Options) string {
	var out strings.Builder
	out.Grow(2 << 10) // what most pictures come to
	f := p.Figure()
	id := escape(o.ID)
	fmt.Fprintf(&out, `<svg id="%s" class="picture %s" viewBox="0 0 %d %d" direction="ltr" role="img" aria-labelledby="%[1]s-t">`+"\n",
		id, f.Class, picture.Width, f.Height)
	fmt.Fprintf(&out, `<title id="%s-t">%s</title>`+"\n", id, escape(o.Say(p.Describe())))
	on := svgo.New(&out)
	f.Paint(&picture.Pen{Canvas: canvas{on}, Number: o.Number, Say: o.Say})
	on.End()
	return out.String()
}

//go:embed picture.css
var style string

// Style is the CSS that every picture needs whatever the theme: anchors,
// sizes, fills. Its colours are custom properties, which a theme sets:
// --paper, --ink, and for each part a tint to fill and a mark to draw the
// pattern: --tint-a, --mark-a, --tint-b, --mark-b, --tint-c, --mark-c.
func Style() string { return style }

//go:embed defs.svg
var defs string

// Defs is the hidden <svg> with the fill patterns. A page that has pictures
// needs it once, before the first of them.
func Defs() string { return defs }

// canvas is svgo behind the names of picture.Canvas.
type canvas struct{ svg *svgo.SVG }

func (c canvas) Rect(x, y, w, h int, class string) { c.svg.Rect(x, y, w, h, attributes(class)...) }

func (c canvas) RoundRect(x, y, w, h, r int, class string) {
	c.svg.Roundrect(x, y, w, h, r, r, attributes(class)...)
}

func (c canvas) Circle(x, y, r int, class string) { c.svg.Circle(x, y, r, attributes(class)...) }

func (c canvas) Line(x1, y1, x2, y2 int, class string) {
	c.svg.Line(x1, y1, x2, y2, attributes(class)...)
}

func (c canvas) Path(data, class string) {
	if data != "" {
		c.svg.Path(data, attributes(class)...)
	}
}

func (c canvas) Text(x, y int, text, class string) { c.svg.Text(x, y, text, attributes(class)...) }

// Group leaves a group out that has no class and does not move.
func (c canvas) Group(class string, x, y int, inside func()) {
	list := attributes(class)
	if x != 0 || y != 0 {
		list = append(list, fmt.Sprintf(`transform="translate(%d,%d)"`, x, y))
	}
	if len(list) == 0 {
		inside()
		return
	}
	c.svg.Group(list...)
	inside()
	c.svg.Gend()
}

// attributes is the list that svgo wants for a class.
func attributes(class string) []string {
	if class == "" {
		return nil
	}
	return []string{`class="` + class + `"`}
}

func escape(s string) string {
	var b strings.Builder
	xml.EscapeText(&b, []byte(s)) // a Builder never fails
	return b.String()
}
