package recheck

import (
	"slices"
	"strconv"
	"strings"

	"golang.org/x/net/html"
)

// Shapes of a picture, as they lie on its sheet.
type (
	label struct {
		x, y  int
		text  string
		class string
		found bool // on a plate that stands out: the answer
	}
	box  struct{ x, y, w, h int }
	rect struct {
		box
		class string
	}
	dot struct {
		x, y, r int
		class   string
	}
	hop struct{ from, to int }
)

// figure is a picture taken apart.
type figure struct {
	title   string
	labels  []label
	rects   []rect // plates apart
	plates  []rect
	circles []dot // drawn one by one
	dots    []dot // drawn as a path
	blocks  []rect
	crosses []dot // middles of what is crossed out
	hops    []hop
	arrows  int   // heads of arrows
	stops   []dot // marks on a number line
	ticks   []int // where a number line is marked off
	braces  []box
	rules   []int // heights of lines drawn across
	columns bool  // lines between columns
}

// figureOf takes a picture apart.
func figureOf(svg *html.Node) *figure {
	f := &figure{}
	if t := find(svg, tag("title")); t != nil {
		f.title = text(t)
	}
	f.walk(svg, 0, 0)
	for i, l := range f.labels {
		for _, plate := range f.plates {
			if strings.Contains(plate.class, "found") && plate.holds(l.x, l.y-8) {
				f.labels[i].found = true
			}
		}
	}
	return f
}

func (f *figure) walk(n *html.Node, dx, dy int) {
	for x := range n.ChildNodes() {
		if x.Type != html.ElementNode {
			continue
		}
		at := func(name string) int { v, _ := strconv.Atoi(attr(x, name)); return v }
		name := attr(x, "class")
		switch x.Data {
		case "g":
			move := ints(strings.TrimPrefix(attr(x, "transform"), "translate"))
			if len(move) == 2 {
				f.walk(x, dx+move[0], dy+move[1])
			} else {
				f.walk(x, dx, dy)
			}
		case "text":
			f.labels = append(f.labels, label{x: at("x") + dx, y: at("y") + dy, text: text(x), class: name})
		case "rect":
			r := rect{box{at("x") + dx, at("y") + dy, at("width"), at("height")}, name}
			if strings.Contains(name, "plate") {
				f.plates = append(f.plates, r)
			} else {
				f.rects = append(f.rects, r)
			}
		case "circle":
			f.circles = append(f.circles, dot{at("cx") + dx, at("cy") + dy, at("r"), name})
		case "line":
			if at("y1") == at("y2") {
				f.rules = append(f.rules, at("y1")+dy)
			}
		case "path":
			f.path(attr(x, "d"), name, dx, dy)
		}
	}
}

// path sorts the strokes of a path by their form.
func (f *figure) path(d, class string, dx, dy int) {
	if _, fill, ok := strings.Cut(class, " "); ok && fill != "guide" {
		class = fill // of hundreds, tens, ones
	}
	for _, s := range strokes(d) {
		x, y := s.x+dx, s.y+dy
		switch {
		case s.form == "aa":
			if d := (dot{x + s.moves[0][0], y, s.moves[0][0], class}); class == "solid" {
				f.stops = append(f.stops, d)
			} else {
				f.dots = append(f.dots, d)
			}
		case s.form == "v" && class == "tick":
			f.ticks = append(f.ticks, x)
		case strings.HasPrefix(s.form, "hvh"):
			f.blocks = append(f.blocks, rect{box{x, y, s.moves[0][0], s.moves[1][0]}, class})
		case s.form == "q" && strings.HasPrefix(class, "arch"):
			f.hops = append(f.hops, hop{x, x + s.moves[0][2]})
		case strings.HasPrefix(s.form, "qhq") && class == "brace":
			f.braces = append(f.braces, box{x: x, y: y, w: s.width()})
		case class == "cross" && s.form == "l" && min(s.moves[0][0], s.moves[0][1]) > 0:
			f.crosses = append(f.crosses, dot{x: x + s.moves[0][0]/2, y: y + s.moves[0][1]/2, r: s.moves[0][0] / 2})
		case class == "arch" || class == "move":
			f.arrows++
		case class == "thin":
			f.columns = true
		}
	}
}

// stroke is a part of a path from one "move to" to the next.
type stroke struct {
	x, y  int     // where it starts
	form  string  // its commands: "aa" is a dot, "hvh" a box
	moves [][]int // what each command says
}

// width is how far the stroke goes to the right in all.
func (s stroke) width() int {
	w := 0
	for i, c := range s.form {
		switch c {
		case 'h':
			w += s.moves[i][0]
		case 'l', 'q', 'a':
			w += s.moves[i][len(s.moves[i])-2]
		}
	}
	return w
}

// strokes reads the outline of a path (SVG 1.1, 8.3 "Path data"), in whole
// numbers. Moves are kept relative.
func strokes(d string) []stroke {
	var out []stroke
	x, y := 0, 0
	for _, part := range commands(d) {
		c, n := part.letter, part.numbers
		switch {
		case c == 'M' && len(n) == 2:
			x, y = n[0], n[1]
			out = append(out, stroke{x: x, y: y})
		case c == 'm' && len(n) == 2:
			x, y = x+n[0], y+n[1]
			out = append(out, stroke{x: x, y: y})
		case c == 'z' || c == 'Z' || len(out) == 0 || len(n) == 0:
		default:
			s := &out[len(out)-1]
			s.form += string(c)
			s.moves = append(s.moves, n)
			switch c {
			case 'h':
				x += n[0]
			case 'v':
				y += n[0]
			default:
				x, y = x+n[len(n)-2], y+n[len(n)-1]
			}
		}
	}
	return out
}

// command is a letter of a path with its numbers.
type command struct {
	letter  rune
	numbers []int
}

// commands splits a path; a command that is repeated without its letter is
// written out.
func commands(d string) []command {
	size := map[rune]int{'l': 2, 'q': 4, 'a': 7, 'm': 2, 'M': 2, 'h': 1, 'v': 1}
	var out []command
	for i := 0; i < len(d); {
		end := i + 1
		for end < len(d) && !strings.ContainsRune("MmLlHhVvQqAaZz", rune(d[end])) {
			end++
		}
		letter, n := rune(d[i]), ints(d[i+1:end])
		step := max(size[letter], 1)
		for first := true; first || len(n) >= step; first = false {
			take := min(step, len(n))
			out = append(out, command{letter, n[:take]})
			n = n[take:]
		}
		i = end
	}
	return out
}

// ints reads whole numbers that stand apart by a space, a comma or a sign.
func ints(s string) []int {
	var out []int
	for _, f := range strings.FieldsFunc(strings.ReplaceAll(s, "-", " -"), func(r rune) bool { return strings.ContainsRune(" ,()", r) }) {
		if n, err := strconv.Atoi(f); err == nil {
			out = append(out, n)
		}
	}
	return out
}

func (b box) holds(x, y int) bool { return b.x <= x && x <= b.x+b.w && b.y <= y && y <= b.y+b.h }

// hasRect reports whether the picture has a rectangle of a class.
func (f *figure) hasRect(class string) bool {
	return slices.ContainsFunc(f.rects, func(r rect) bool { return r.class == class })
}

// numbers are the numbers that can be read in the picture.
func (f *figure) numbers() []int {
	var out []int
	for _, l := range f.labels {
		if l.class != "name" {
			out = append(out, numbers(l.text)...)
		}
	}
	return out
}
