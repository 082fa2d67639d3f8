// Package qrcode draws the code that a phone's camera reads: error level M, a
// quiet zone of four modules, black on white in every theme (ISO/IEC 18004).
package qrcode

import (
	"fmt"
	"html"
	"strings"

	"rsc.io/qr"
)

// quiet is the empty border in modules (ISO/IEC 18004).
const quiet = 4

// dots is the side of a module in a PNG, large enough to print.
const dots = 12

// SVG draws the code of an address, a run of dark modules at a time; label is
// its text alternative. An address longer than a code can hold is an error.
func SVG(address, label string) (string, error) {
	c, err := qr.Encode(address, qr.M)
	if err != nil {
		return "", fmt.Errorf("code of %q: %w", address, err)
	}
	var b strings.Builder
	side := c.Size + 2*quiet
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %d %d" role="img" aria-label="%s" shape-rendering="crispEdges"><path fill="#fff" d="M0 0h%dv%dH0z"/><path fill="#000" d="`,
		side, side, html.EscapeString(label), side, side)
	for y := range c.Size {
		for x := 0; x < c.Size; x++ {
			run := 0
			for x+run < c.Size && c.Black(x+run, y) {
				run++
			}
			if run > 0 {
				fmt.Fprintf(&b, "M%d %dh%dv1h-%dz", x+quiet, y+quiet, run, run)
				x += run
			}
		}
	}
	b.WriteString(`"/></svg>`)
	return b.String(), nil
}

// PNG is the same picture as a file to put into a letter or a slide.
func PNG(address string) ([]byte, error) {
	c, err := qr.Encode(address, qr.M)
	if err != nil {
		return nil, fmt.Errorf("code of %q: %w", address, err)
	}
	c.Scale = dots
	return c.PNG(), nil // with a quiet zone of four modules
}
