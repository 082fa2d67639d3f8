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

// Code is the code of an address, ready to be drawn.
type Code struct {
	side int    // in modules, with the empty border
	dark string // a path around each run of dark modules
}

// Of makes the code of an address. An address longer than a code can hold is an error.
func Of(address string) (Code, error) {
	c, err := qr.Encode(address, qr.M)
	if err != nil {
		return Code{}, fmt.Errorf("code of %q: %w", address, err)
	}
	var dark strings.Builder
	for y := range c.Size {
		for x := 0; x < c.Size; x++ {
			run := 0
			for x+run < c.Size && c.Black(x+run, y) {
				run++
			}
			if run > 0 {
				fmt.Fprintf(&dark, "M%d %dh%dv1h-%dz", x+quiet, y+quiet, run, run)
				x += run
			}
		}
	}
	return Code{c.Size + 2*quiet, dark.String()}, nil
}

// SVG draws the code; label is its text alternative.
func (c Code) SVG(label string) string { return c.svg(label, c.paths()) }

// Named draws the code for a page that shows it [Code.Again], under an id of that page.
func (c Code) Named(label, id string) string {
	return c.svg(label, `<g id="`+id+`">`+c.paths()+"</g>")
}

// Again shows the code that the page has under an id once more.
func (c Code) Again(label, id string) string {
	return c.svg(label, `<use href="#`+id+`"/>`)
}

func (c Code) paths() string {
	return fmt.Sprintf(`<path fill="#fff" d="M0 0h%dv%dH0z"/><path fill="#000" d="%s"/>`, c.side, c.side, c.dark)
}

func (c Code) svg(label, inside string) string {
	return fmt.Sprintf(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %d %d" role="img" aria-label="%s" shape-rendering="crispEdges">%s</svg>`,
		c.side, c.side, html.EscapeString(label), inside)
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
