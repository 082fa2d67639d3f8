package picture

import (
	"slices"

	"homebuild/internal/problem"
)

// Suits reports whether a picture of a calculation that is worked out tells the
// same story as the one-step problem that the calculation answers. It does not
// where it crosses out and nothing is taken away, or shows parts of a whole
// where two amounts are compared.
func Suits(p Picture, of problem.Problem) bool {
	return !(crossesOut(p) && !isTaken(of) || isBond(p) && isCompare(of))
}

func isBond(p Picture) bool {
	_, ok := p.(bond)
	return ok
}

// crossesOut reports whether something is crossed out in a picture.
func crossesOut(p Picture) bool {
	switch p := p.(type) {
	case dots:
		return p.taken
	case frames:
		return anyCrossed(p.labels)
	case blocks:
		return anyCrossed(p.legend)
	}
	return false
}

func anyCrossed(labels []label) bool {
	return slices.ContainsFunc(labels, func(l label) bool { return l.cell.mark == crossed })
}
