package page

import (
	"github.com/a-h/templ"

	"homebuild/internal/picture"
	"homebuild/internal/picture/svg"
	"homebuild/internal/qrcode"
)

// picture draws a picture where it stands.
func (s *state) picture(p picture.Picture) templ.Component {
	s.pictures++
	o := svg.Options{ID: id("picture-", s.pictures), Say: s.plain, Number: s.notation.Number}
	return drawn(func() (string, error) { return svg.Draw(p, o), nil })
}

// code draws the QR code of an address. One longer than a code can hold has none, and
// the page goes without.
func (s *state) code(address string) templ.Component {
	return raw(func(m *markup) {
		if code, err := qrcode.Of(address); err == nil {
			m.write(code.SVG(s.word("print.code")))
		}
	})
}

// codes draws the same code wherever it stands on a page: the first time it is drawn,
// and then shown again, since a sheet of slips has more than a hundred.
func (s *state) codes(address string) templ.Component {
	code, err := qrcode.Of(address)
	show := code.Named
	return raw(func(m *markup) {
		if err == nil {
			m.write(show(s.word("print.code"), "code"))
			show = code.Again
		}
	})
}

// drawn is a component made of a ready drawing.
func drawn(draw func() (string, error)) templ.Component {
	return raw(func(m *markup) {
		svg, err := draw()
		if err != nil {
			m.err = err
			return
		}
		m.write(svg)
	})
}
