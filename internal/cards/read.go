package cards

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"regexp"
	"slices"
	"strings"

	"homebuild/internal/pattern"
)

// largest is how many bytes the shapes of a drawing may take in a page: 24 of
// them and a page's words fit into 14,000 bytes compressed.
const largest = 4000

// palette lets a drawing that is opened by itself have the colors of the
// pages. It stays in the file.
const palette = `@import "../../../../themes/base/cards.css";`

// attributes lists what each shape may have, besides id, class and transform.
var attributes = map[string][]string{
	"path":    {"d"},
	"rect":    {"x", "y", "width", "height", "rx", "ry"},
	"circle":  {"cx", "cy", "r"},
	"ellipse": {"cx", "cy", "rx", "ry"},
	"g":       nil,
}

// values says how the attributes that are no numbers are written. None of them
// can name anything outside of the file.
var values = map[string]func() *regexp.Regexp{
	"id":        pattern.Of(`^[A-Za-z][A-Za-z0-9_-]*$`),
	"class":     pattern.Of(`^k-[a-z0-9]+( k-[a-z0-9]+)*$`),
	"d":         pattern.Of(`^[MmLlHhVvQqTtCcSsAaZz0-9,.\s-]+$`),
	"transform": pattern.Of(`^((matrix|translate|scale|rotate)\([0-9,. -]+\) ?)+$`),
}

// nib is the slanted pen that all lines are drawn with: x in the file is x + y on
// the page. A program for drawing reads it with each line; for a page the style of
// the pens says it once (themes/base/cards.css).
const nib = "matrix(1 0 -1 1 0 0)"

// pens are the classes of lines.
var pens = []string{"k-ink", "k-far", "k-bold"}

// pen is the class of the line that a shape has, or none.
func pen(e xml.StartElement) string {
	for _, class := range strings.Fields(attribute(e, "class")) {
		if slices.Contains(pens, class) {
			return class
		}
	}
	return ""
}

var number = pattern.Of(`^-?[0-9]+(\.[0-9]+)?$`)

// reader turns a file into the shapes that a page needs.
type reader struct {
	file  *xml.Decoder
	out   bytes.Buffer
	named map[string]string // the shapes of each id so far, for <use>
}

// readFile reads and checks a drawing whose viewBox must be view.
func readFile(art fs.FS, name, view string) (string, error) {
	text, err := fs.ReadFile(art, name)
	if err != nil {
		return "", fmt.Errorf("cards: %w", err)
	}
	r := &reader{file: xml.NewDecoder(bytes.NewReader(text)), named: map[string]string{}}
	if err := r.read(view); err != nil {
		line, _ := r.file.InputPos()
		return "", fmt.Errorf("%s:%d: %w", name, line, err)
	}
	return r.out.String(), nil
}

// read reads one <svg> and nothing after it.
func (r *reader) read(view string) error {
	root, err := r.next()
	if err != nil {
		return err
	}
	if root.Name.Local != "svg" || root.Name.Space != "http://www.w3.org/2000/svg" {
		return fmt.Errorf(`<%s>: want <svg xmlns="http://www.w3.org/2000/svg">`, root.Name.Local)
	}
	if got := attribute(root, "viewBox"); got != view {
		return fmt.Errorf("viewBox=%q: want %q, as all drawings of this folder have", got, view)
	}
	if err := r.children(); err != nil {
		return err
	}
	if _, err := r.next(); err != io.EOF {
		return errors.New("want nothing after </svg>")
	}
	return nil
}

// next is the next start of an element, or io.EOF at the end of the one that
// is open. Comments are for people; text has no place.
func (r *reader) next() (e xml.StartElement, err error) {
	for {
		token, err := r.file.Token()
		if err != nil {
			return e, err
		}
		switch t := token.(type) {
		case xml.StartElement:
			return t, nil
		case xml.EndElement:
			return e, io.EOF
		case xml.CharData:
			if text := bytes.TrimSpace(t); len(text) > 0 {
				return e, fmt.Errorf("%q: a drawing has no text", text)
			}
		case xml.Directive:
			return e, fmt.Errorf("<!%s>: leave it out", t)
		}
	}
}

// children reads what stands in the open element.
func (r *reader) children() error {
	for {
		e, err := r.next()
		if err == io.EOF {
			return nil
		}
		if err == nil {
			err = r.element(e)
		}
		if err == nil && r.out.Len() > largest {
			err = fmt.Errorf("more than %d bytes: draw it with fewer points", largest)
		}
		if err != nil {
			return err
		}
	}
}

// empty wants nothing in the open element.
func (r *reader) empty() error {
	e, err := r.next()
	if err == io.EOF {
		return nil
	}
	if err == nil {
		err = fmt.Errorf("<%s>: want it outside of the shape", e.Name.Local)
	}
	return err
}

func (r *reader) element(e xml.StartElement) error {
	start := r.out.Len()
	var err error
	switch e.Name.Local {
	case "style":
		err = r.style(e)
	case "defs": // which some programs write, empty
		err = r.empty()
	case "use":
		err = r.repeat(e)
	case "g":
		err = r.group(e, r.children)
	default:
		if err = r.tag(e, "/>"); err == nil {
			err = r.empty()
		}
	}
	if id := attribute(e, "id"); id != "" {
		r.named[id] = string(r.out.Bytes()[start:])
	}
	return err
}

// style passes over the one line of style that a file may have.
func (r *reader) style(e xml.StartElement) error {
	var text string
	if err := r.file.DecodeElement(&text, &e); err != nil {
		return err
	}
	if strings.TrimSpace(text) != palette {
		return fmt.Errorf("<style>: want %s and nothing else; colors are classes", palette)
	}
	return nil
}

// group writes a group around what inside writes. One without a class or a
// transform is a help in the file only.
func (r *reader) group(e xml.StartElement, inside func() error) error {
	start := r.out.Len()
	if err := r.tag(e, ">"); err != nil {
		return err
	}
	plain := r.out.Len() == start+len("<g>")
	if plain {
		r.out.Truncate(start)
	}
	if err := inside(); err != nil {
		return err
	}
	if !plain {
		r.out.WriteString("</g>")
	}
	return nil
}

// repeat writes a shape once more, moved or mirrored, so that a page needs no
// ids inside of a drawing.
func (r *reader) repeat(e xml.StartElement) error {
	href := attribute(e, "href")
	shape, ok := r.named[strings.TrimPrefix(href, "#")]
	if !ok {
		return fmt.Errorf("<use href=%q>: want the id of a shape above it", href)
	}
	g := xml.StartElement{Name: xml.Name{Local: "g"}}
	for _, a := range e.Attr {
		if a.Name.Local != "href" {
			g.Attr = append(g.Attr, a)
		}
	}
	return r.group(g, func() error {
		r.out.WriteString(shape)
		return r.empty()
	})
}

// tag writes the start of an element without its id and without the pen of a line,
// which only the file needs.
func (r *reader) tag(e xml.StartElement, end string) error {
	name := e.Name.Local
	allowed, ok := attributes[name]
	if !ok {
		return fmt.Errorf("<%s>: want a path, rect, circle, ellipse, g or use", name)
	}
	r.out.WriteString("<" + name)
	for _, a := range e.Attr {
		key := a.Name.Local
		form, ok := values[key]
		if !ok {
			form = number
		}
		switch {
		case a.Name.Space != "" || !slices.Contains(allowed, key) && key != "id" && key != "class" && key != "transform":
			return fmt.Errorf("<%s %s=%q>: leave it out; colors and lines are classes", name, key, a.Value)
		case !form().MatchString(a.Value):
			return fmt.Errorf("<%s %s=%q>: want a value like %s", name, key, a.Value, form())
		case key == "transform" && a.Value == nib && pen(e) != "":
		case key != "id":
			fmt.Fprintf(&r.out, ` %s="%s"`, key, strings.Join(strings.Fields(a.Value), " "))
		}
	}
	r.out.WriteString(end)
	return nil
}

func attribute(e xml.StartElement, name string) string {
	for _, a := range e.Attr {
		if a.Name.Local == name {
			return a.Value
		}
	}
	return ""
}
