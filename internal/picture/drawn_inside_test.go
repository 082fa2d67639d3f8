package picture_test

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// TestInside draws every kind of story at every stage and wants all of it on
// its sheet, and no two texts over each other.
func TestInside(t *testing.T) {
	count := 0
	for _, k := range problem.Kinds() {
		for _, numbers := range [][]int{{8, 6}, {13, 4}, {20, 0}, {1, 1}, {56, 37}, {99, 1}, {345, 167}, {500, 500}, {999, 1}, {8, 4, 2}, {13, 4, 5}, {400, 300, 200}} {
			p, err := problem.New(k, numbers...)
			if err != nil {
				continue
			}
			for _, kind := range picture.Kinds() {
				for _, stage := range picture.Stages() {
					pic, err := picture.OfProblem(p, kind, stage)
					if err != nil {
						continue
					}
					count++
					inside(t, k.String()+" as "+kind.String(), drawn(pic))
				}
			}
		}
	}
	for _, s := range samples(t) {
		inside(t, s.name, drawn(s.picture))
	}
	if count < 1000 {
		t.Errorf("only %d pictures were drawn", count)
	}
}

// TestWaysInside does the same for the strategies.
func TestWaysInside(t *testing.T) {
	check := func(op problem.Op, numbers ...int) {
		c := problem.Calculation{Op: op, Numbers: numbers}
		for _, w := range strategy.Ways(c, 3) {
			for _, s := range w.Steps {
				if s.Picture != nil {
					inside(t, fmt.Sprint(c, " by ", w.Name), drawn(s.Picture))
				}
			}
		}
	}
	wide := 1 // steps; in a quick run they are wider
	if testing.Short() {
		wide = 13
	}
	for a := 0; a <= 999; a += wide + a/7 {
		for b := 0; a+b <= 1000; b += wide + b/5 {
			check(problem.Plus, a, b)
			check(problem.Minus, a+b, b)
		}
	}
	for _, n := range [][]int{{2, 6, 4}, {4, 9, 5}, {25, 40, 75}, {300, 400, 300}} {
		check(problem.Plus, n...)
	}
	check(problem.Minus, 13, 3, 2)
	check(problem.Minus, 1000, 321, 456)
}

// area is a rectangle.
type area struct{ x1, y1, x2, y2 int }

func (a area) meets(b area) bool { return a.x1 < b.x2 && b.x1 < a.x2 && a.y1 < b.y2 && b.y1 < a.y2 }

// with is as large as two areas.
func (a area) with(b area) area {
	return area{min(a.x1, b.x1), min(a.y1, b.y1), max(a.x2, b.x2), max(a.y2, b.y2)}
}

// thing is an element of a drawing that can be seen: a shape or a text.
type thing struct {
	area
	line  string // of the drawing
	group int    // counts the groups of a class; 0 for a thing outside of any
	class string // of that group
}

func (m thing) text() bool { return strings.HasPrefix(m.line, "<text") }

// is reports whether one of the classes of the element itself is class.
func (m thing) is(class string) bool {
	return slices.Contains(strings.Fields(attr(m.line, "class")), class)
}

// things re-reads the coordinates of a drawing, and of its sheet.
func things(drawing string) (all []thing, sheet area) {
	open, groups := []thing{{}}, 0
	for _, line := range strings.Split(drawing, "\n") {
		in := open[len(open)-1]
		switch {
		case strings.HasPrefix(line, "</g>"):
			open = open[:len(open)-1]
		case strings.HasPrefix(line, "<g "):
			if class := attr(line, "class"); class != "" {
				groups++
				in.group, in.class = groups, class
			}
			in.y1 += translated(line)
			open = append(open, in)
		case strings.HasPrefix(line, "<svg"):
			box := strings.Fields(attr(line, "viewBox"))
			sheet = area{0, 0, atoi(box[2]), atoi(box[3])}
		default:
			where, ok := areaOf(line)
			if !ok {
				continue
			}
			where.y1 += in.y1
			where.y2 += in.y1
			all = append(all, thing{where, line, in.group, in.class})
		}
	}
	return all, sheet
}

// inside wants all of a drawing on its sheet, and no two texts over each other.
func inside(t *testing.T, name, drawing string) {
	t.Helper()
	var texts []area
	all, sheet := things(drawing)
	for _, m := range all {
		if m.x1 < 0 || m.y1 < 0 || m.x2 > sheet.x2 || m.y2 > sheet.y2 {
			t.Fatalf("%s: %v is outside %v: %s in\n%s", name, m.area, sheet, m.line, drawing)
		}
		if !m.text() {
			continue
		}
		for _, other := range texts {
			if m.meets(other) {
				t.Fatalf("%s: the text of %s is over another in\n%s", name, m.line, drawing)
			}
		}
		texts = append(texts, m.area)
	}
}

func translated(line string) int {
	_, y, ok := strings.Cut(strings.TrimSuffix(attr(line, "transform"), ")"), ",")
	if !ok {
		return 0
	}
	return atoi(y)
}

func atoi(s string) int {
	n, err := strconv.Atoi(s)
	if err != nil {
		panic(err) // the drawing has something other than whole numbers
	}
	return n
}

func attr(line, name string) string {
	_, rest, ok := strings.Cut(line, " "+name+`="`)
	if !ok {
		return ""
	}
	value, _, _ := strings.Cut(rest, `"`)
	return value
}

// areaOf is where an element lies; it takes a text to be as wide as bold
// digits are.
func areaOf(line string) (area, bool) {
	n := func(name string) int { return atoi(attr(line, name)) }
	switch {
	case strings.HasPrefix(line, "<rect"):
		return area{n("x"), n("y"), n("x") + n("width"), n("y") + n("height")}, true
	case strings.HasPrefix(line, "<circle"):
		return area{n("cx") - n("r"), n("cy") - n("r"), n("cx") + n("r"), n("cy") + n("r")}, true
	case strings.HasPrefix(line, "<line"):
		return area{min(n("x1"), n("x2")), min(n("y1"), n("y2")), max(n("x1"), n("x2")), max(n("y1"), n("y2"))}, true
	case strings.HasPrefix(line, "<path"):
		return pathArea(attr(line, "d")), true
	case strings.HasPrefix(line, "<text"):
		_, text, _ := strings.Cut(line, ">")
		if attr(line, "class") == "name" { // begins at its place
			return area{n("x"), n("y") - 16, n("x") + utf8.RuneCountInString(strings.TrimSuffix(text, "</text>"))*12, n("y")}, true
		}
		half := utf8.RuneCountInString(strings.TrimSuffix(text, "</text>")) * 12 / 2
		return area{n("x") - half, n("y") - 16, n("x") + half, n("y")}, true
	}
	return area{}, false
}

var step = regexp.MustCompile(`([a-zA-Z])([^a-zA-Z]*)`)
var whole = regexp.MustCompile(`-?\d+`)

// corners walks a path from corner to corner, over the middle of each curve and round
// each circle.
func corners(d string) (at [][2]int) {
	x, y := 0, 0
	for _, s := range step.FindAllStringSubmatch(d, -1) {
		var v []int
		for _, text := range whole.FindAllString(s[2], -1) {
			v = append(v, atoi(text))
		}
		switch s[1] {
		case "q":
			at = append(at, [2]int{x + v[0]/2 + v[2]/4, y + v[1]/2 + v[3]/4})
		case "a": // half a circle, from side to side
			at = append(at, [2]int{x, y - v[1]}, [2]int{x, y + v[1]})
		}
		x, y = walked(x, y, s[1], v)
		at = append(at, [2]int{x, y})
	}
	return at
}

// pathArea is as large as the corners of a path.
func pathArea(d string) area {
	at := corners(d)
	a := area{at[0][0], at[0][1], at[0][0], at[0][1]}
	for _, c := range at {
		a = a.with(area{c[0], c[1], c[0], c[1]})
	}
	return a
}

func walked(x, y int, command string, v []int) (int, int) {
	switch command {
	case "z":
		return x, y
	case "M":
		return v[0], v[1]
	case "h":
		return x + v[0], y
	case "v":
		return x, y + v[0]
	}
	return x + v[len(v)-2], y + v[len(v)-1]
}
