package recheck

import (
	"strings"
	"testing"

	"golang.org/x/net/html"
)

// Shapes are told apart by their outlines alone (SVG 1.1, 8.3 "Path data").
func TestShapes(t *testing.T) {
	const svg = `<svg class="picture"><title>A bar: 7 + 4 = 11</title>
		<g transform="translate(0,42)"><path d="M11 22a11 11 0 1 0 22 0a11 11 0 1 0-22 0zM40 22a11 11 0 1 0 22 0a11 11 0 1 0-22 0z" class="part-a"/></g>
		<path d="M72 8h9v44h-9z" class="part-a"/>
		<path d="M34 72q94-80 189 0M214 71l9 1l-3-9" class="arch"/>
		<path d="M8 46q0-6 6-6h140q6 0 6-6q0 6 6 6h140q6 0 6 6" class="brace"/>
		<path d="M161 53l24 24m0-24l-24 24" class="cross"/>
		<rect x="145" y="4" width="31" height="28" class="plate found"/><text x="160" y="26">11</text></svg>`
	doc, err := html.Parse(strings.NewReader(svg))
	if err != nil {
		t.Fatal(err)
	}
	f := figureOf(find(doc, class("picture")))
	if len(f.dots) != 2 || f.dots[1] != (dot{51, 64, 11, "part-a"}) {
		t.Errorf("dots: want the second at 51, 64, got %v", f.dots)
	}
	if len(f.blocks) != 1 || f.blocks[0].box != (box{72, 8, 9, 44}) {
		t.Errorf("blocks: want one of 9 by 44, got %v", f.blocks)
	}
	if len(f.hops) != 1 || f.hops[0] != (hop{34, 223}) || f.arrows != 1 {
		t.Errorf("hops: want one from 34 to 223 with an arrow, got %v and %d", f.hops, f.arrows)
	}
	if len(f.braces) != 1 || f.braces[0].w != 304 {
		t.Errorf("braces: want one of 304, got %v", f.braces)
	}
	if len(f.crosses) != 1 || f.crosses[0] != (dot{x: 173, y: 65, r: 12}) {
		t.Errorf("crosses: want one at 173, 65, got %v", f.crosses)
	}
	if len(f.labels) != 1 || !f.labels[0].found || f.title != "A bar: 7 + 4 = 11" {
		t.Errorf("labels: want 11 as the answer, got %v, %q", f.labels, f.title)
	}
}
