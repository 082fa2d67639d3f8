package draw

import (
	"fmt"

	"homebuild/internal/picture"
)

// Blank draws an empty picture of a kind to fill in by hand on paper: empty
// frames, an uncut bar, empty circles, a bare line, or a box to draw in.
func Blank(kind picture.Kind, o Options) (string, error) {
	f, err := blank(kind)
	if err != nil {
		return "", err
	}
	return f.svg(frameFor(picture.BlankLine(kind), o), o)
}

func blank(kind picture.Kind) (figure, error) {
	none := picture.Amount{State: picture.Empty}
	switch kind {
	case picture.BarModel:
		return bar(picture.Bar{Parts: make([]picture.Amount, 2), Whole: none}), nil
	case picture.TenFrame:
		return frames(picture.Frames{Cells: make([]picture.Cell, 20)}), nil
	case picture.NumberBond:
		return bond(picture.Bond{Parts: []picture.Amount{none, none}, Whole: none}), nil
	case picture.NumberLine:
		return figure{height: axis + turn, paint: func(b *brush) { b.axis(picture.Line{Stops: []picture.Amount{{N: 0}, {N: 1000}}}) }}, nil
	case picture.Drawing, picture.BaseTen, picture.Columns:
		return figure{height: 196, paint: func(b *brush) {
			b.RoundRect(picture.Margin, 4, picture.Inner, 188, 8, "unknown")
		}}, nil
	}
	return figure{}, fmt.Errorf("%w: %v", ErrPicture, kind)
}
