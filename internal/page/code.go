package page

import (
	"strings"

	"github.com/a-h/templ"

	"homebuild/internal/qrcode"
)

// code draws the QR code of an address.
func (s *sheet) code(address string) templ.Component {
	return raw(func(b *strings.Builder) {
		svg, err := qrcode.SVG(address, s.word("print.code"))
		if err != nil {
			return // longer than a code can hold: the sheet goes without one
		}
		b.WriteString(svg)
	})
}
