package picture

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// mark is what is special about a place of a ten frame.
type mark uint8

const (
	plain   mark = iota // a dot, or nothing
	crossed             // a dot that is taken away
	ringed              // a dot that moves, or has moved
	dashed              // a dot that is not known yet, or a place to be filled
)

// cell is one place of a ten frame.
type cell struct {
	fill int // which part's dot: 1, 2 or 3; 0 for none
	mark mark
}

// tray is ten frames on the sheet, each two rows of five, filled row by row
// from the left.
type tray struct {
	cells   []cell
	corners []point // the top left corner of each frame
	size    int     // the side of a place
}

const twoFrames = 29 // the side of a place where two frames share the width

// trayFor has frames for n beside each other.
func trayFor(n int) tray {
	if n <= 10 {
		const size = 44
		return tray{make([]cell, 10), []point{{(Width - 5*size) / 2, margin}}, size}
	}
	return tray{make([]cell, 20), []point{{margin, margin}, {margin + inner - 5*twoFrames, margin}}, twoFrames}
}

// put fills n places from at on.
func (t tray) put(at, n int, c cell) {
	for i := range n {
		t.cells[at+i] = c
	}
}

// middle is the middle of a place.
func (t tray) middle(i int) point {
	corner, in := t.corners[i/10], i%10
	return point{corner.x + in%5*t.size + t.size/2, corner.y + in/5*t.size + t.size/2}
}

// bottom is where the lowest frame ends.
func (t tray) bottom() int { return t.corners[len(t.corners)-1].y + 2*t.size }

// paint draws the empty frames and then the dots, those of one look together.
func (t tray) paint(d *Pen) {
	for _, at := range t.corners {
		d.Rect(at.x, at.y, 5*t.size, 2*t.size, "grid")
		inside := new(path).move(at.x, at.y+t.size).by(5*t.size, 0)
		for i := 1; i < 5; i++ {
			inside.move(at.x+i*t.size, at.y).by(0, 2*t.size)
		}
		d.path("thin", inside)
	}
	var filled [len(fills)][]point
	var marked [dashed + 1][]point
	for i, c := range t.cells {
		at := t.middle(i)
		marked[c.mark] = append(marked[c.mark], at)
		if c.mark != dashed {
			filled[c.fill] = append(filled[c.fill], at)
		}
	}
	r := t.size * 2 / 5
	for fill, dots := range filled[1:] {
		d.dots(dots, r, fills[fill+1])
	}
	d.dots(marked[dashed], r, "unknown")
	d.dots(marked[ringed], r, "ring")
	d.cross(marked[crossed], r)
}

// frames is a story on one ten frame or two.
type frames struct {
	tray
	labels []label
	whole  amount
	line   phrase.Line
}

func fitsFrames(p problem.Problem) bool {
	return joinsOrTakes(p) && largest(p) <= Most
}

func framesOf(p problem.Problem, stage Stage) Picture {
	s := grown(p, stage)
	f := frames{tray: trayFor(s.whole.n), whole: s.whole, line: s.describe("picture.ten-frame")}
	switch {
	case s.whole.written() && s.undivided():
		f.put(0, s.whole.n, cell{fill: 1})
	case s.asksAll():
		f.put(0, s.whole.n, cell{fill: 1})
		for i, a := range s.parts {
			f.labels = append(f.labels, label{a, cell{i + 1, dashed}})
		}
	case isTaken(p):
		f.takeFrom(s)
		f.line = s.describeTaken("picture.ten-frame")
	default:
		f.join(s)
	}
	return f
}

// join fills the parts in one after the other.
func (f *frames) join(s amounts) {
	at := 0
	for i, a := range s.parts {
		f.count(a, at, cell{i + 1, markOf(a, plain)})
		at += a.n
	}
}

// takeFrom puts what is left first, and crosses out what is taken at the end.
func (f *frames) takeFrom(s amounts) {
	taken, left := s.parts[0], s.parts[1]
	f.count(left, 0, cell{fill: 1})
	f.count(taken, left.n, cell{1, crossed})
}

// markOf is the mark of an amount's dots, which are dashed while it is not known.
func markOf(a amount, told mark) mark {
	if a.written() {
		return told
	}
	return dashed
}

// count puts an amount's dots in, with a label that counts them.
func (f *frames) count(a amount, at int, c cell) {
	if a.drawn() {
		f.put(at, a.n, c)
		f.labels = append(f.labels, label{a, c})
	}
}

// Figure draws the frames under the whole, and what they hold below them.
func (f frames) Figure() Figure {
	down := below(f.whole) - margin
	height := down + f.bottom() + 6
	if len(f.labels) > 0 {
		height += 38
	}
	return Figure{"frames", height, func(d *Pen) {
		left, right := f.corners[0].x, f.corners[len(f.corners)-1].x+5*f.size
		d.whole(span{left, right - left}, f.whole)
		d.Group("", 0, down, func() {
			f.paint(d)
			d.legend(f.bottom()+24, f.labels)
		})
	}}
}

// Describe says what lies in the frames.
func (f frames) Describe() phrase.Line { return f.line }
