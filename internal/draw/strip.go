package draw

import (
	"errors"
	"fmt"

	"homebuild/internal/draw/canvas"
	"homebuild/internal/picture"
)

// ErrRange says that a number strip cannot run from and to these numbers.
var ErrRange = errors.New("a number strip runs upwards within 0 and 100")

const stripCell = 34 // the height of a place on the strip

// Strip draws a strip of numbers to point at or to hop along with a finger,
// ten in a row so that they can be read on a phone: 11 stands below 1, and 0
// before it.
func Strip(from, to int, o Options) (string, error) {
	if from < 0 || to < from || to > 100 {
		return "", fmt.Errorf("%w: %d to %d", ErrRange, from, to)
	}
	return strip(from, to).svg(frameFor(picture.StripLine(from, to), o), o)
}

func strip(from, to int) figure {
	first := row(from)
	columns := 10
	if from == 0 {
		columns = 11
	}
	wide := picture.Inner / columns
	left := (picture.Width - columns*wide) / 2
	corner := func(n int) picture.Point {
		column := columns - 10 + (n+9)%10
		if n == 0 {
			column = 0
		}
		return picture.Point{X: left + column*wide, Y: 4 + (row(n)-first)*(stripCell+4)}
	}
	return figure{height: 4 + (row(to)-first+1)*(stripCell+4), paint: func(b *brush) {
		var cells canvas.Path
		for n := from; n <= to; n++ {
			at := corner(n)
			cells.Box(at.X, at.Y, wide, stripCell)
		}
		b.Path(&cells, "grid")
		for n := from; n <= to; n++ {
			at := corner(n)
			b.Text(at.X+wide/2, at.Y+stripCell/2+6, b.number(n), "small")
		}
	}}
}

// row is the row of a number: 1 to 10 stand together, with 0 before them.
func row(n int) int { return max(n-1, 0) / 10 }
