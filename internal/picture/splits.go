package picture

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// splits is the pattern of every way to take a number apart: a row of dots for
// each pair, one more in the first part from row to row.
type splits []problem.Pair

// AllPairs draws every answer of a story in which both parts are asked for. It
// reports false for other stories and for totals that are no longer countable.
func AllPairs(p problem.Problem) (Picture, bool) {
	pairs := splits(p.Pairs())
	return pairs, len(pairs) > 0 && pairs.total() <= Most
}

func (s splits) total() int { return s[0].First + s[0].Second }

// splitLabel is the room at the end of a row for "12 + 8".
const splitLabel = 84

// pitch is the room for a dot.
func (s splits) pitch() int { return min(22, (inner-splitLabel)/max(s.total(), 1)) }

// radius is the radius of every dot.
func (s splits) radius() int { return max(s.pitch()*2/5, 4) }

// row places the dots of all, their middles at y.
func (s splits) row(y int) []point { return grid(margin, y-s.pitch()/2, s.total(), Most, s.pitch()) }

// Figure draws a row for each pair.
func (s splits) Figure() Figure {
	height := max(s.pitch(), 24)
	return Figure{"splits", 8 + height*len(s), func(d *Pen) {
		for i, pair := range s {
			y := 4 + height*i + height/2
			dots := s.row(y)
			d.group("split", func() {
				d.dots(dots[:pair.First], s.radius(), fills[1])
				d.dots(dots[pair.First:], s.radius(), fills[2])
				d.Text(margin+s.total()*s.pitch()+48, y+6, d.sum(pair.First, pair.Second), "small")
			})
		}
	}}
}

// Describe says what the pattern shows.
func (s splits) Describe() phrase.Line {
	return phrase.Say("picture.drawing.pairs", phrase.Number("Whole", s.total()))
}
