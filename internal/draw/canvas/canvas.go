// Package canvas writes one SVG element to stand inside an HTML page. It owns
// the <svg> element itself, its name and description for people who listen,
// and the escaping; the shapes are written by svgo. Coordinates are whole
// units of the viewBox, colours are classes for a theme's CSS.
//
// The first thing that goes wrong, a failed write or an id that cannot be
// used, is kept and returned by End; what comes after it is dropped.
package canvas

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"strconv"
	"strings"

	svg "github.com/ajstarks/svgo"
)

// ErrID says that a text cannot be used as an id in a page.
var ErrID = errors.New("an id is a letter, then up to 63 letters, digits or hyphens")

// Frame is the <svg> element around a drawing.
type Frame struct {
	ID            string // unique in the page; may be empty for a decoration
	Class         string
	Width, Height int // of the viewBox, which starts at 0, 0; without a width the element takes no room
	// Title and Desc name and describe the drawing for a person who listens.
	// A drawing without a title is a decoration: it is hidden from them.
	Title, Desc string
}

// Canvas is an open <svg> element.
type Canvas struct {
	to  *keeper
	svg *svg.SVG
}

// keeper passes bytes on until the first error, and keeps that one.
type keeper struct {
	w   io.Writer
	err error
}

// Write passes p on. It reports success always: svgo would not listen, so the
// error waits in k for End.
func (k *keeper) Write(p []byte) (int, error) {
	if k.err == nil {
		_, k.err = k.w.Write(p)
	}
	return len(p), nil
}

// New opens the <svg> element. End must close it.
func New(w io.Writer, f Frame) *Canvas {
	k := &keeper{w: w}
	c := &Canvas{to: k, svg: svg.New(k)}
	c.print("<svg")
	if f.ID != "" {
		c.id(f.ID)
		c.attr("id", f.ID)
	}
	c.attr("class", f.Class)
	if f.Width > 0 {
		c.attr("viewBox", fmt.Sprintf("0 0 %d %d", f.Width, f.Height))
	} else { // holds definitions only
		c.print(` width="0" height="0"`)
	}
	// Pictures of numbers run from left to right in every language.
	c.attr("direction", "ltr")
	c.name(f)
	return c
}

// name ends the opening tag and says what the drawing is.
func (c *Canvas) name(f Frame) {
	if f.Title == "" {
		c.attr("aria-hidden", "true")
		c.print(">\n")
		return
	}
	c.id(f.ID)
	labels := f.ID + "-t"
	if f.Desc != "" {
		labels += " " + f.ID + "-d"
	}
	c.attr("role", "img")
	c.attr("aria-labelledby", labels)
	c.print(">\n")
	c.element("title", f.ID+"-t", f.Title)
	if f.Desc != "" {
		c.element("desc", f.ID+"-d", f.Desc)
	}
}

// End closes the element and returns the first error of the whole drawing.
func (c *Canvas) End() error {
	c.svg.End()
	return c.to.err
}

// CheckID reports, wrapping ErrID, whether id can be used in a page and in the
// ids and url(#…) references made from it.
func CheckID(id string) error {
	if id == "" || len(id) > 64 {
		return fmt.Errorf("id %q: %w", id, ErrID)
	}
	for i, r := range id {
		letter := 'a' <= r && r <= 'z' || 'A' <= r && r <= 'Z'
		later := i > 0 && ('0' <= r && r <= '9' || r == '-')
		if !letter && !later {
			return fmt.Errorf("id %q: %w", id, ErrID)
		}
	}
	return nil
}

func (c *Canvas) id(id string) {
	if err := CheckID(id); err != nil && c.to.err == nil {
		c.to.err = err
	}
}

func (c *Canvas) print(s string) { io.WriteString(c.to, s) }

func (c *Canvas) attr(name, value string) {
	if value != "" {
		c.print(" " + attribute(name, value))
	}
}

func (c *Canvas) element(tag, id, text string) {
	c.print("<" + tag + ` id="` + id + `">` + escape(text) + "</" + tag + ">\n")
}

// attribute is name="value" with the value escaped.
func attribute(name, value string) string { return name + `="` + escape(value) + `"` }

// class is the attribute list that svgo wants: it does not escape, we do.
func class(names string) []string {
	if strings.TrimSpace(names) == "" {
		return nil
	}
	return []string{attribute("class", names)}
}

func escape(s string) string {
	if plain(s) {
		return s
	}
	var b bytes.Buffer
	xml.EscapeText(&b, []byte(s)) // a Buffer never fails
	return b.String()
}

// plain reports whether a text has nothing to escape, as nearly all have.
func plain(s string) bool {
	for i := range len(s) {
		if c := s[i]; c < ' ' || c > '~' || c == '&' || c == '<' || c == '>' || c == '"' || c == '\'' {
			return false
		}
	}
	return true
}

func (c *Canvas) printInt(name string, n int) { c.print(" " + name + `="` + strconv.Itoa(n) + `"`) }
