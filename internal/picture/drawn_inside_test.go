package picture_test

import (
	"fmt"
	"regexp"
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

// inside re-reads the coordinates of a drawing.
func inside(t *testing.T, name, drawing string) {
	t.Helper()
	var texts []area
	var sheet area
	shift := []int{0}
	for _, line := range strings.Split(drawing, "\n") {
		switch {
		case strings.HasPrefix(line, "</g>"):
			shift = shift[:len(shift)-1]
			continue
		case strings.HasPrefix(line, "<g "):
			shift = append(shift, shift[len(shift)-1]+translated(line))
			continue
		case strings.HasPrefix(line, "<svg"):
			box := strings.Fields(attr(line, "viewBox"))
			sheet = area{0, 0, atoi(box[2]), atoi(box[3])}
			continue
		}
		where, ok := areaOf(line)
		if !ok {
			continue
		}
		where.y1 += shift[len(shift)-1]
		where.y2 += shift[len(shift)-1]
		if where.x1 < 0 || where.y1 < 0 || where.x2 > sheet.x2 || where.y2 > sheet.y2 {
			t.Fatalf("%s: %v is outside %v: %s in\n%s", name, where, sheet, line, drawing)
		}
		if strings.HasPrefix(line, "<text") {
			for _, other := range texts {
				if where.meets(other) {
					t.Fatalf("%s: the text of %s is over another in\n%s", name, line, drawing)
				}
			}
			texts = append(texts, where)
		}
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
	case strings.HasPrefix(line, "<text") && !strings.Contains(line, `class="name"`):
		_, text, _ := strings.Cut(line, ">")
		half := utf8.RuneCountInString(strings.TrimSuffix(text, "</text>")) * 12 / 2
		return area{n("x") - half, n("y") - 16, n("x") + half, n("y")}, true
	}
	return area{}, false
}

var step = regexp.MustCompile(`([a-zA-Z])([^a-zA-Z]*)`)
var whole = regexp.MustCompile(`-?\d+`)

// pathArea walks a path from corner to corner.
func pathArea(d string) area {
	x, y := 0, 0
	var a area
	for i, s := range step.FindAllStringSubmatch(d, -1) {
		var v []int
		for _, text := range whole.FindAllString(s[2], -1) {
			v = append(v, atoi(text))
		}
		x, y = walked(x, y, s[1], v)
		if i == 0 {
			a = area{x, y, x, y}
		}
		a = area{min(a.x1, x), min(a.y1, y), max(a.x2, x), max(a.y2, y)}
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
