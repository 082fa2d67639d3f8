package page

import (
	"fmt"
	"strings"

	"github.com/a-h/templ"
	"rsc.io/qr"
)

// quiet is the empty border of a QR code in modules (ISO/IEC 18004).
const quiet = 4

// code draws the QR code of an address: level M, a run of dark modules at a
// time, with the quiet zone around it. It is black on white in every theme,
// because cameras expect that.
func (s *sheet) code(address string) templ.Component {
	return raw(func(b *strings.Builder) {
		c, err := qr.Encode(address, qr.M)
		if err != nil {
			return // longer than a code can hold: the sheet goes without one
		}
		side := c.Size + 2*quiet
		fmt.Fprintf(b, `<svg viewBox="0 0 %d %d" role="img" aria-label="%s" shape-rendering="crispEdges"><path fill="#fff" d="M0 0h%dv%dH0z"/><path fill="#000" d="`,
			side, side, templ.EscapeString(s.word("print.code")), side, side)
		for y := range c.Size {
			for x := 0; x < c.Size; x++ {
				run := 0
				for x+run < c.Size && c.Black(x+run, y) {
					run++
				}
				if run > 0 {
					fmt.Fprintf(b, "M%d %dh%dv1h-%dz", x+quiet, y+quiet, run, run)
					x += run
				}
			}
		}
		b.WriteString(`"/></svg>`)
	})
}
