package recheck

import (
	"strings"
	"testing"

	"golang.org/x/net/html"
)

// Shapes are told apart by their outlines (SVG 1.1, 8.3 "Path data"), groups by
// their classes; a group without one only moves what is in it.
func TestFigure(t *testing.T) {
	const svg = `<svg class="picture bar"><title>A bar: 7 + 4 = 11</title>
		<g transform="translate(0,42)"><path d="M11 22a11 11 0 1 0 22 0a11 11 0 1 0-22 0zM40 22a11 11 0 1 0 22 0a11 11 0 1 0-22 0z" class="part-a"/></g>
		<path d="M72 8h9v44h-9z" class="ten part-a"/>
		<g class="hop"><path d="M34 72q94-80 189 0M214 71l9 1l-3-9" class="arch"/><text x="120" y="24" class="small">+٤</text></g>
		<path d="M8 46q0-6 6-6h140q6 0 6-6q0 6 6 6h140q6 0 6 6" class="brace"/>
		<path d="M40 11l22 22m0-22l-22 22" class="cross"/>
		<text class="name">Lina 7</text>
		<rect x="145" y="4" width="31" height="28" class="plate found"/><text x="160" y="26">11</text></svg>`
	doc, err := html.Parse(strings.NewReader(svg))
	if err != nil {
		t.Fatal(err)
	}
	f := figureOf(find(doc, ".picture"))
	if f.name != "bar" || f.title != "A bar: 7 + 4 = 11" {
		t.Errorf("want a bar with its description, got %q, %q", f.name, f.title)
	}
	for _, want := range []mark{
		{"part-a", "dot", 40, 11, 22, 22}, {"ten part-a", "box", 72, 8, 9, 44}, {"brace", "qhqqhq", 8, 46, 304, 0},
		{"cross", "l", 40, 11, 22, 22}, {"plate found", "box", 145, 4, 31, 28},
	} {
		if got := f.those(want.form, want.class); len(got) == 0 || got[len(got)-1] != want && got[0] != want {
			t.Errorf("want %v, got %v", want, got)
		}
	}
	if n := len(f.dots()); n != 2 || len(f.crossed()) != 1 {
		t.Errorf("want 2 dots and 1 of them crossed out, got %d and %d", n, len(f.crossed()))
	}
	hop := f.one("hop")
	if arch := hop.those("q", "arch"); len(arch) != 1 || arch[0].x != 34 || arch[0].w != 189 || len(hop.those("ll", "arch")) != 1 || hop.amount() != (amount{4, true}) {
		t.Errorf("want a hop of 4 from 34 over 189 with an arrow's head, got %v", hop)
	}
	if len(f.labels) != 1 || f.labels[0] != (label{160, "", "11", true}) {
		t.Errorf("want 11 as the answer and no name, got %v", f.labels)
	}
}

// A folder that somebody spoiled is told of, and never stops the reading.
func TestStrangePaths(t *testing.T) {
	for _, d := range []string{"", "z", "M", "M1", "h", "l1 2", "M1 2l", "Q", "M0 0a1", "M0 0h99999999999999999999", "aa", "m", "M1 2C3"} {
		strokes(d, "part-a")
	}
}
