package picture

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// Mark is what is special about a place of a ten frame.
type Mark uint8

const (
	Plain   Mark = iota // a dot, or nothing
	Crossed             // a dot that is taken away
	Ringed              // a dot that moves, or has moved
	Dashed              // a dot that is not known yet, or a place to be filled
)

// Cell is one place of a ten frame.
type Cell struct {
	Fill int // which part's dot: 1, 2 or 3; 0 for none
	Mark Mark
}

// Label is a number under the frames, with the dot that it counts.
type Label struct {
	Amount
	Cell Cell
}

// Frames is one ten frame or two, filled row by row from the left.
type Frames struct {
	Cells   []Cell // 10 or 20
	Labels  []Label
	Whole   Amount
	Stacked bool // one above the other, in half the width
	Left    int  // where stacked frames start
	line    phrase.Line
}

// Describe says what lies in the frames.
func (t Frames) Describe() phrase.Line { return t.line }

// cellSize is the side of a place: one frame, or two beside each other.
var cellSize = [...]int{1: 44, 2: 29}

// stackGap is the room between stacked frames, for arrows.
const stackGap = 24

// Count is the number of frames.
func (t Frames) Count() int { return len(t.Cells) / 10 }

// Size is the side of a place.
func (t Frames) Size() int { return cellSize[t.Count()] }

// Corner is the top left corner of a frame, the first being 0.
func (t Frames) Corner(frame int) Point {
	width := 5 * t.Size()
	if t.Stacked {
		return Point{t.Left, Margin + frame*(2*t.Size()+stackGap)}
	}
	if t.Count() == 1 {
		return Point{(Width - width) / 2, Margin}
	}
	return Point{Margin + frame*(Inner-width), Margin}
}

// Middle is the middle of a place.
func (t Frames) Middle(cell int) Point {
	c := t.Corner(cell / 10)
	half, in := t.Size()/2, cell%10
	return Point{c.X + in%5*t.Size() + half, c.Y + in/5*t.Size() + half}
}

func framesFor(n int) []Cell {
	if n <= 10 {
		return make([]Cell, 10)
	}
	return make([]Cell, 20)
}

func framesOf(p problem.Problem, stage Stage) Frames {
	f := grown(p, stage)
	t := Frames{Cells: framesFor(f.whole.N), Whole: f.whole, line: f.describe(TenFrame)}
	switch {
	case f.whole.Written() && f.undivided():
		t.put(0, f.whole.N, Cell{Fill: 1})
	case f.allAsked():
		t.put(0, f.whole.N, Cell{Fill: 1})
		for i, a := range f.parts {
			t.Labels = append(t.Labels, Label{a, Cell{Fill: i + 1, Mark: Dashed}})
		}
	case p.Kind().Situation() == problem.TakeFrom:
		t.takeFrom(f)
		t.line = f.describeTaken(TenFrame)
	default:
		t.join(f)
	}
	return t
}

// join fills the parts in one after the other.
func (t *Frames) join(f parts) {
	at := 0
	for i, a := range f.parts {
		cell := Cell{Fill: i + 1}
		if !a.Written() {
			cell.Mark = Dashed
		}
		if a.Drawn() {
			t.put(at, a.N, cell)
			t.Labels = append(t.Labels, Label{a, cell})
		}
		at += a.N
	}
}

// takeFrom puts what is left first, and crosses out what is taken at the end.
func (t *Frames) takeFrom(f parts) {
	taken, left := f.parts[0], f.parts[1]
	gone, rest := Cell{Fill: 1, Mark: Crossed}, Cell{Fill: 1}
	if !taken.Written() {
		gone.Mark = Dashed
	}
	if !left.Written() && !f.whole.Written() {
		rest.Mark = Dashed
	}
	if left.Drawn() {
		t.put(0, left.N, rest)
		t.Labels = append(t.Labels, Label{left, rest})
	}
	if taken.Drawn() {
		t.put(left.N, taken.N, gone)
		t.Labels = append(t.Labels, Label{taken, gone})
	}
}

// allAsked reports whether no part is known: both addends unknown.
func (f parts) allAsked() bool {
	for _, a := range f.parts {
		if a.State != Asked {
			return false
		}
	}
	return true
}

// put fills n places from at on.
func (t *Frames) put(at, n int, cell Cell) {
	for i := range n {
		t.Cells[at+i] = cell
	}
}
