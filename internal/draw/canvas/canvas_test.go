package canvas

import (
	"encoding/xml"
	"errors"
	"io"
	"strings"
	"testing"
)

// drawAll uses every shape once.
func drawAll(c *Canvas) {
	c.Defs(func() {
		c.Pattern("dots", 8, 8, "fill", func() { c.Circle(4, 4, 2, "ink") })
		c.Symbol("leaf", func() { c.Ellipse(0, 0, 4, 2, "") })
	})
	c.Rect(1, 2, 3, 4, "part-a")
	c.RoundRect(1, 2, 3, 4, 1, "")
	c.Line(0, 0, 5, 5, "ink")
	c.Polyline("ink", Point{1, 2}, Point{3, 4})
	c.Polygon("ink", Point{1, 2}, Point{3, 4}, Point{5, 6})
	c.Path(new(Path).Dot(5, 5, 2), "ink")
	c.Group("row", func() { c.Text(3, 4, `8 < "9" & 'x'`, `a" onload="x`) })
	c.Group("", func() { c.Use(-1, 2, "leaf", "x") })
	c.Shift(3, -4, func() { c.Circle(0, 0, 1, "") })
}

func TestWellFormed(t *testing.T) {
	var b strings.Builder
	c := New(&b, Frame{ID: "p1", Class: "picture", Width: 320, Height: 90, Title: "A <bar>", Desc: `Two "parts" & a whole`})
	drawAll(c)
	if err := c.End(); err != nil {
		t.Fatal(err)
	}
	// Standard: XML 1.0; an HTML parser reads well-formed SVG the same way.
	d := xml.NewDecoder(strings.NewReader(b.String()))
	for {
		token, err := d.Token()
		if err == io.EOF {
			break
		}
		if err != nil {
			t.Fatalf("%v in\n%s", err, b.String())
		}
		if e, ok := token.(xml.StartElement); ok {
			for _, a := range e.Attr {
				if strings.HasPrefix(a.Name.Local, "on") {
					t.Errorf("<%s> got the attribute %s from a class", e.Name.Local, a.Name.Local)
				}
			}
		}
		switch token.(type) {
		case xml.ProcInst, xml.Comment, xml.Directive:
			t.Errorf("want elements only, got %#v", token)
		}
	}
}

func TestName(t *testing.T) {
	for _, tt := range []struct {
		why   string
		frame Frame
		want  string
	}{
		{"a picture has a name and a description", Frame{ID: "p1", Class: "picture", Width: 320, Height: 90, Title: "A bar", Desc: "8 & 6"},
			`<svg id="p1" class="picture" viewBox="0 0 320 90" direction="ltr" role="img" aria-labelledby="p1-t p1-d">` +
				"\n<title id=\"p1-t\">A bar</title>\n<desc id=\"p1-d\">8 &amp; 6</desc>\n</svg>\n"},
		{"a name alone", Frame{ID: "p1", Width: 1, Height: 2, Title: "A bar"},
			`<svg id="p1" viewBox="0 0 1 2" direction="ltr" role="img" aria-labelledby="p1-t">` +
				"\n<title id=\"p1-t\">A bar</title>\n</svg>\n"},
		{"a decoration is hidden", Frame{Width: 1, Height: 2},
			`<svg viewBox="0 0 1 2" direction="ltr" aria-hidden="true">` + "\n</svg>\n"},
	} {
		var b strings.Builder
		if err := New(&b, tt.frame).End(); err != nil {
			t.Errorf("%s: %v", tt.why, err)
		}
		if b.String() != tt.want {
			t.Errorf("%s:\nwant %s\ngot  %s", tt.why, tt.want, b.String())
		}
	}
}

func TestID(t *testing.T) {
	for id, good := range map[string]bool{
		"a": true, "story-3-bar": true, "P1": true, strings.Repeat("a", 64): true,
		"": false, "3a": false, "-a": false, "a b": false, `a"b`: false, "é": false, "a.b": false,
		strings.Repeat("a", 65): false,
	} {
		if got := CheckID(id); (got == nil) != good || (got != nil && !errors.Is(got, ErrID)) {
			t.Errorf("CheckID(%q) = %v, want good %v", id, got, good)
		}
	}
	for why, f := range map[string]Frame{
		"a name needs an id": {Title: "A bar"},
		"a wrong id":         {ID: "a b"},
	} {
		if err := New(io.Discard, f).End(); !errors.Is(err, ErrID) {
			t.Errorf("%s: want ErrID, got %v", why, err)
		}
	}
}

// full is a disk that takes some bytes and then no more.
type full struct{ room, calls int }

var errFull = errors.New("full")

func (f *full) Write(p []byte) (int, error) {
	f.calls++
	if f.room -= len(p); f.room < 0 {
		return 0, errFull
	}
	return len(p), nil
}

func TestFirstErrorIsKept(t *testing.T) {
	f := &full{room: 100}
	c := New(f, Frame{ID: "p", Width: 1, Height: 1, Title: "t"})
	drawAll(c)
	after := f.calls
	drawAll(c)
	if err := c.End(); !errors.Is(err, errFull) {
		t.Errorf("want %v, got %v", errFull, err)
	}
	if f.calls != after {
		t.Errorf("wrote %d times more after the first error", f.calls-after)
	}
}

func TestPath(t *testing.T) {
	for want, p := range map[string]*Path{
		"":                                  new(Path),
		"M1 2h3v-4l-5 6z":                   new(Path).Move(1, 2).By(3, 0).By(0, -4).By(-5, 6).Close(),
		"M1-2q1 2 3-4m1 1":                  new(Path).Move(1, -2).Bend(1, 2, 3, -4).Jump(1, 1),
		"M3 5a2 2 0 1 0 4 0a2 2 0 1 0-4 0z": new(Path).Dot(5, 5, 2),
		"M1 2h3v4h-3z":                      new(Path).Box(1, 2, 3, 4),
		"M0 0a5 6 0 0 1 7 0":                new(Path).Move(0, 0).Arc(5, 6, true, 7, 0),
	} {
		if got := p.String(); got != want {
			t.Errorf("want %q, got %q", want, got)
		}
	}
}

func TestNothingToDraw(t *testing.T) {
	var b strings.Builder
	c := New(&b, Frame{Width: 1, Height: 1})
	before := b.Len()
	c.Polyline("ink")
	c.Polygon("ink")
	c.Path(new(Path), "ink")
	if b.Len() != before {
		t.Errorf("empty shapes wrote %q", b.String()[before:])
	}
}
