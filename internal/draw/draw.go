// Package draw turns pictures into SVG to stand inside a page. It chooses no
// colours: every shape has a class, and Style and a theme's custom properties
// colour the classes in light, dark and print. The parts of a story differ in
// their fill pattern too, so that they can be told apart without colours.
//
// Every picture is 320 units wide, as wide as the narrowest screen, and no
// text in it is smaller than 16 units. Pictures run from left to right in
// every language.
package draw

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"homebuild/internal/draw/canvas"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
)

// ErrPicture says that a picture is of a sort that this package cannot draw.
var ErrPicture = errors.New("no drawing for this picture")

// Options say what a picture is called and how it speaks.
type Options struct {
	ID string // unique in the page; see canvas.CheckID
	// Title is the short name of the picture for people who listen. Without
	// it the description is the name.
	Title string
	// Say writes a line in the page's language: descriptions, and the names
	// beside bars. Only a hidden picture without names can do without it.
	Say func(phrase.Line) string
	// Number writes a number in the page's digits; European digits if nil.
	Number func(int) string
	// Hidden pictures are decoration: what they show is said in the text
	// beside them.
	Hidden bool
}

// Draw draws a picture as an <svg> element. The error wraps ErrPicture or
// canvas.ErrID.
func Draw(p picture.Picture, o Options) (string, error) {
	f, err := figureOf(p)
	if err != nil {
		return "", err
	}
	frame := frameFor(p.Describe(), o)
	frame.Class += " " + f.sort
	return f.svg(frame, o)
}

// frameFor names a drawing by its description.
func frameFor(line phrase.Line, o Options) canvas.Frame {
	frame := canvas.Frame{ID: o.ID, Class: "picture"}
	if o.Hidden {
		return frame
	}
	frame.Title, frame.Desc = o.Title, o.Say(line)
	if frame.Title == "" {
		frame.Title, frame.Desc = frame.Desc, ""
	}
	return frame
}

// figure is a drawing of known height.
type figure struct {
	sort   string // its class
	height int
	paint  func(*brush)
}

// svg paints f as a whole element.
func (f figure) svg(frame canvas.Frame, o Options) (string, error) {
	var out strings.Builder
	out.Grow(2 << 10) // what most pictures come to
	frame.Width, frame.Height = picture.Width, f.height
	c := canvas.New(&out, frame)
	b := &brush{Canvas: c, number: o.Number, say: o.Say}
	if b.number == nil {
		b.number = strconv.Itoa
	}
	f.paint(b)
	if err := c.End(); err != nil {
		return "", fmt.Errorf("picture %q: %w", o.ID, err)
	}
	return out.String(), nil
}

// figureOf finds the drawing of a picture.
func figureOf(p picture.Picture) (figure, error) {
	switch p := p.(type) {
	case picture.Bar:
		return bar(p), nil
	case picture.Comparison:
		return comparison(p), nil
	case picture.Steps:
		return steps(p)
	case picture.Dots:
		return dots(p), nil
	case picture.Rows:
		return rows(p), nil
	case picture.Pairs:
		return pairs(p), nil
	case picture.Frames:
		return frames(p), nil
	case picture.MakingTen:
		return makingTen(p), nil
	case picture.Bond:
		return bond(p), nil
	case picture.Line:
		return line(p), nil
	case picture.Blocks:
		return blocks(p), nil
	case picture.Columned:
		return columns(p), nil
	}
	return figure{}, fmt.Errorf("%w: %T", ErrPicture, p)
}
