package picture

import "homebuild/internal/phrase"

// Rows is two rows of dots, one above the other, each dot of the shorter row
// under a dot of the longer one.
type Rows struct {
	Comparison
	// Double marks the rows as the two parts of a double or a near double.
	// Turned says that the longer row is the second part.
	Double, Turned bool
}

// Fills are the parts' fills of the longer row, the shorter row, and the
// extra dots of the longer row.
func (r Rows) Fills() (longer, shorter, extra int) {
	switch {
	case r.Turned:
		return 2, 1, 2
	case r.Double:
		return 1, 2, 1
	}
	return 1, 1, 2
}

// WithNames returns r with the names of the two rows.
func (r Rows) WithNames(bigger, smaller phrase.Value) Rows {
	r.Comparison = r.Comparison.WithNames(bigger, smaller)
	return r
}

// rowStart is where the dots begin, after the number of the row.
const rowStart = 56

// Pitch is the room for a dot: the longer row fits the width.
func (r Rows) Pitch() int { return min(28, (Width-Margin-rowStart)/max(r.Bigger.N, 1)) }

// Radius is the radius of every dot.
func (r Rows) Radius() int { return r.Pitch() * 2 / 5 }

// Spans gives the longer row, the shorter row and the extra dots at the end of
// the longer one.
func (r Rows) Spans() (longer, shorter, extra Span) {
	longer = Span{rowStart, r.Bigger.N * r.Pitch()}
	shorter = Span{rowStart, r.Smaller.N * r.Pitch()}
	return longer, shorter, Span{shorter.End(), r.Difference.N * r.Pitch()}
}

// Row places the dots that lie in a span, their middles at y.
func (r Rows) Row(s Span, y int) []Point {
	return grid(s.X, y-r.Pitch()/2, s.W/r.Pitch(), Most, r.Pitch())
}

// Describe says both rows.
func (r Rows) Describe() phrase.Line {
	line := r.Comparison.Describe()
	line.ID = "picture.drawing." + r.variant()
	if r.Double && r.Difference.N == 0 {
		return phrase.Say("picture.drawing.same", r.Bigger.value("Each"))
	}
	return line
}
