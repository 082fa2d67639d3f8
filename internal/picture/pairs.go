package picture

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// Pairs is the pattern of every way to take a number apart: a row of dots for
// each pair, one more in the first part from row to row.
type Pairs struct {
	Total int
	List  []problem.Pair
}

// AllPairs draws every answer of a story in which both parts are asked for. It
// reports false for other stories and for totals that are no longer countable.
func AllPairs(p problem.Problem) (Pairs, bool) {
	list := p.Pairs()
	if list == nil || len(list)-1 > Most {
		return Pairs{}, false
	}
	return Pairs{Total: len(list) - 1, List: list}, true
}

// pairLabel is the room at the end of a row for "12 + 8".
const pairLabel = 84

// Pitch is the room for a dot.
func (p Pairs) Pitch() int { return min(22, (Inner-pairLabel)/max(p.Total, 1)) }

// Radius is the radius of every dot.
func (p Pairs) Radius() int { return max(p.Pitch()*2/5, 4) }

// Row places the dots of a pair, their middles at y.
func (p Pairs) Row(pair problem.Pair, y int) (first, second []Point) {
	all := grid(Margin, y-p.Pitch()/2, p.Total, Most, p.Pitch())
	return all[:pair.First], all[pair.First:]
}

// Describe says what the pattern shows.
func (p Pairs) Describe() phrase.Line {
	return phrase.Say("picture.drawing.pairs", phrase.Number("Whole", p.Total))
}
