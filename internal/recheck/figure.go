package recheck

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"golang.org/x/net/html"

	"homebuild/internal/pattern"
)

// figure is a picture taken apart. Its own name is the sort of picture.
type figure struct {
	group
	title  string   // its text alternative
	faults []string // what does not add up in it
}

// fault notes what does not add up.
func (f *figure) fault(text string, values ...any) {
	f.faults = append(f.faults, fmt.Sprintf(text, values...))
}

// group is a part of a picture that says what it is: a part, a hop, a legend.
// What stands in groups of its own is in those alone.
type group struct {
	name   string
	labels []label
	marks  []mark
	groups []group
}

// label is a number, a "?" or a sum that is written; names are left out.
type label struct {
	x     int
	class string
	text  string // in European digits
	found bool   // on a plate that stands out: the answer
}

// mark is something drawn, where its group has it. A dot, a box and a circle
// lie in their width and height; another stroke starts at x, y and goes so far.
type mark struct {
	class, form string // dot, box, circle, or the commands of a path
	x, y, w, h  int
}

// figureOf takes a picture apart.
func figureOf(svg *html.Node) *figure {
	f := &figure{group: groupOf(svg)}
	if t := find(svg, "title"); t != nil {
		f.title = text(t)
	}
	return f
}

func groupOf(n *html.Node) group {
	g := group{name: strings.TrimPrefix(attr(n, "class"), "picture ")}
	g.read(n)
	return g
}

func (g *group) read(n *html.Node) {
	plate := ""
	for _, x := range children(n, "") {
		at := func(name string) int { v, _ := strconv.Atoi(attr(x, name)); return v }
		class := attr(x, "class")
		switch {
		case x.Data == "g" && class == "": // it only moves what is in it
			g.read(x)
		case x.Data == "g":
			g.groups = append(g.groups, groupOf(x))
		case x.Data == "text" && class != "name":
			g.labels = append(g.labels, label{at("x"), class, european(text(x)), plate == "plate found"})
		case x.Data == "rect":
			g.marks = append(g.marks, mark{class, "box", at("x"), at("y"), at("width"), at("height")})
		case x.Data == "circle":
			r := at("r")
			g.marks = append(g.marks, mark{class, "circle", at("cx") - r, at("cy") - r, 2 * r, 2 * r})
		case x.Data == "path":
			g.marks = append(g.marks, strokes(attr(x, "d"), class)...)
		}
		plate = class
	}
}

var commands = pattern.Of(`([MmLlHhVvQqAa])([^A-Za-z]*)`)

// strokes reads the outline of a path (SVG 1.1, 8.3 "Path data"), in whole
// numbers: a mark for each "move to".
func strokes(d, class string) []mark {
	var out []mark
	x, y := 0, 0
	for _, c := range commands().FindAllStringSubmatch(d, -1) {
		letter, n := c[1], append([]int{0, 0}, ints(c[2])...)
		dx, dy := n[len(n)-2], n[len(n)-1]
		switch letter {
		case "M":
			x, y = 0, 0
		case "h":
			dx, dy = dy, 0
		case "v":
			dx = 0
		}
		x, y = x+dx, y+dy
		if letter == "M" || letter == "m" || len(out) == 0 {
			out = append(out, mark{class: class, x: x, y: y})
			continue
		}
		m := &out[len(out)-1]
		switch m.form += letter; m.form {
		case "aa": // there and back
			m.form, m.y, m.h = "dot", m.y-m.w/2, m.w
		case "hvh":
			m.form = "box"
		default:
			m.w, m.h = x-m.x, y-m.y
		}
	}
	return out
}

var integer = pattern.Of(`-?\d+`)

// ints reads whole numbers that stand apart by a space or a sign.
func ints(s string) []int {
	var out []int
	for _, word := range integer().FindAllString(s, -1) {
		if n, err := strconv.Atoi(word); err == nil {
			out = append(out, n)
		}
	}
	return out
}

// all lists the groups in g that have one of the names.
func (g group) all(names ...string) []group {
	return slices.DeleteFunc(slices.Clone(g.groups), func(x group) bool { return !slices.Contains(names, x.name) })
}

// one is the first of all, or an empty group.
func (g group) one(names ...string) group { return append(g.all(names...), group{})[0] }

// those lists the marks of a form that have one of the classes, or any.
func (g group) those(form string, classes ...string) []mark {
	return slices.DeleteFunc(slices.Clone(g.marks), func(m mark) bool {
		return m.form != form || len(classes) > 0 && !slices.Contains(classes, m.class)
	})
}

// everyLabel lists the labels of g and of the groups in it, but for groups of
// a name.
func (g group) everyLabel(but string) []label {
	out := slices.Clone(g.labels)
	for _, x := range g.groups {
		if x.name != but {
			out = append(out, x.everyLabel(but)...)
		}
	}
	return out
}

// numbers are the numbers that can be read in a group.
func (g group) numbers() []int {
	var out []int
	for _, l := range g.everyLabel("") {
		out = append(out, numbers(l.text)...)
	}
	return out
}

// amount is a number that a picture shows, or its "?" or empty place.
type amount struct {
	n     int
	known bool
}

func (l label) amount() amount {
	if n := numbers(l.text); len(n) == 1 {
		return amount{n[0], true}
	}
	return amount{}
}

// amount is the group's own number.
func (g group) amount() amount { return append(g.labels, label{})[0].amount() }

// split is a whole with its parts. The longer of two bars or rows is the whole
// of the shorter one and the difference, which may not be drawn.
func (g group) split() (whole group, parts []group) {
	whole, parts = g.one("whole", "longer"), g.all("part", "shorter", "difference")
	if len(parts) == 1 && parts[0].name == "shorter" {
		parts = append(parts, group{name: "difference"})
	}
	return whole, parts
}

// adds wants the parts of a group to make its whole, as far as they are known.
func (f *figure) adds(g group) {
	whole, parts := g.split()
	sum, open := 0, len(parts) == 0
	for _, part := range parts {
		a := part.amount()
		sum, open = sum+a.n, open || !a.known
	}
	switch a := whole.amount(); {
	case a.known && !open && sum != a.n:
		f.fault("%s: the parts make %d, not %d", g.name, sum, a.n)
	case a.known && sum > a.n:
		f.fault("%s: a part is more than the whole %d", g.name, a.n)
	}
}
