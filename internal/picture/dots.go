package picture

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// Point is a place in a picture.
type Point struct{ X, Y int }

// Most is the largest number drawn as single dots: more cannot be counted at
// a glance on a phone.
const Most = 20

// Group is the dots of one part.
type Group struct {
	Amount
	Fill    int     // which part: 1, 2 or 3
	Dots    []Point // middles
	Crossed int     // how many dots at the end are crossed out
	Box     Box     // the place of the group, dots or not
}

// Box is a place with a size.
type Box struct{ X, Y, W, H int }

// Dots is a simple drawing: a group of dots for each part, or one group in
// which what is taken away is crossed out.
type Dots struct {
	Parts []Amount
	Whole Amount
	Taken bool // the first part is crossed out of the whole
}

func dotsOf(p problem.Problem, stage Stage) Dots {
	f := grown(p, stage)
	return Dots{Parts: f.parts, Whole: f.whole, Taken: p.Kind() == problem.TakeFromResult}
}

// Single reports whether the dots lie in one group: the whole, not yet taken
// apart, or with something crossed out.
func (d Dots) Single() bool { return d.Taken || d.undecided() }

// undecided reports whether only the whole can be seen.
func (d Dots) undecided() bool {
	for _, a := range d.Parts {
		if a.Written() {
			return false
		}
	}
	return true
}

// dotSize is the room for a dot, and the columns of a group, when there are
// one, two or three groups beside each other.
var dotSize = [...]struct{ pitch, columns, gap int }{1: {30, 10, 0}, 2: {28, 5, 24}, 3: {18, 5, 17}}

// Radius is the radius of every dot.
func (d Dots) Radius() int { return dotSize[d.groups()].pitch * 2 / 5 }

func (d Dots) groups() int {
	if d.Single() {
		return 1
	}
	return len(d.Parts)
}

// Height is the height of the tallest group.
func (d Dots) Height() int {
	most := 1
	size := dotSize[d.groups()]
	for _, n := range d.numbers() {
		most = max(most, (n+size.columns-1)/size.columns)
	}
	return max(most*size.pitch, 36)
}

func (d Dots) numbers() []int {
	if d.Single() {
		return []int{d.Whole.N}
	}
	return numbers(d.Parts)
}

// Groups lays the dots out from y downwards.
func (d Dots) Groups(y int) []Group {
	size := dotSize[d.groups()]
	amounts := d.Parts
	if d.Single() {
		amounts = []Amount{d.Whole}
	}
	out := make([]Group, len(amounts))
	for i, a := range amounts {
		box := Box{Margin + i*(size.columns*size.pitch+size.gap), y, size.columns * size.pitch, d.Height()}
		out[i] = Group{Amount: a, Fill: i + 1, Box: box}
		if a.Written() {
			out[i].Dots = grid(box.X, y, a.N, size.columns, size.pitch)
		}
	}
	if d.Taken && d.Parts[0].Drawn() {
		out[0].Crossed = d.Parts[0].N
	}
	return out
}

// grid places n dots in rows.
func grid(x, y, n, columns, pitch int) []Point {
	dots := make([]Point, n)
	for i := range dots {
		dots[i] = Point{x + i%columns*pitch + pitch/2, y + i/columns*pitch + pitch/2}
	}
	return dots
}

// Describe says the groups.
func (d Dots) Describe() phrase.Line {
	f := parts{parts: d.Parts, whole: d.Whole}
	if d.Taken {
		return f.describeTaken(Drawing)
	}
	return f.describe(Drawing)
}
