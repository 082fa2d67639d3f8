package picture

import "homebuild/internal/phrase"

// Rows is two rows of dots, one above the other, each dot of the shorter row
// under a dot of the longer one.
type Rows struct{ Comparison }

// WithNames returns r with the names of the two rows.
func (r Rows) WithNames(bigger, smaller phrase.Value) Rows {
	return Rows{r.Comparison.WithNames(bigger, smaller)}
}

// Pitch is the room for a dot: the longer row fits the width.
func (r Rows) Pitch() int { return min(30, Inner/max(r.Bigger.N, 1)) }

// Radius is the radius of every dot.
func (r Rows) Radius() int { return r.Pitch() * 2 / 5 }

// Spans gives the longer row, the shorter row and the extra dots at the end of
// the longer one.
func (r Rows) Spans() (longer, shorter, extra Span) {
	longer = Span{Margin, r.Bigger.N * r.Pitch()}
	shorter = Span{Margin, r.Smaller.N * r.Pitch()}
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
	if r.Difference == Given(0) {
		return phrase.Say("picture.drawing.same", r.Bigger.value("Each"))
	}
	return line
}
