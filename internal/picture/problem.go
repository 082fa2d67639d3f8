package picture

import (
	"errors"
	"fmt"

	"homebuild/internal/problem"
)

// ErrFit says that a problem cannot be shown by a kind of picture.
var ErrFit = errors.New("the picture does not fit the problem")

// Fits reports whether a kind of picture can show p at every stage.
func Fits(kind Kind, p problem.Problem) bool {
	chain, whole := p.Kind().Steps() != nil, largest(p)
	compare, both := p.Kind().Situation() == problem.Compare, p.Kind() == problem.TogetherBoth
	if whole > problem.Largest {
		return false
	}
	switch kind {
	case BarModel:
		return true
	case Drawing:
		return !chain && whole <= Most
	case TenFrame:
		return !chain && !compare && whole <= Most
	case NumberBond:
		return !chain
	case NumberLine:
		return !both && p.Kind() != problem.BiggerThenTogether && hops(p)
	case BaseTen:
		return !chain && !both && whole >= 10
	case Columns:
		return !chain && !both && whole >= 10
	}
	return false
}

func largest(p problem.Problem) int {
	most := 0
	for _, step := range p.Steps() {
		most = max(most, step.Fact().Whole.Value)
	}
	return most
}

// hops reports whether every hop of p's walk moves.
func hops(p problem.Problem) bool {
	for _, hop := range lineOf(p, Solved).Hops {
		if hop.N == 0 {
			return false
		}
	}
	return true
}

// OfProblem shows p by a kind of picture at a stage of its story. The error
// wraps ErrFit where the kind cannot show p; see Fits.
func OfProblem(p problem.Problem, kind Kind, stage Stage) (Picture, error) {
	if !Fits(kind, p) {
		return nil, fmt.Errorf("%w: %v of %v as %v", ErrFit, p.Kind(), p.Numbers(), kind)
	}
	compare := p.Kind().Situation() == problem.Compare
	switch kind {
	case BarModel:
		if p.Kind().Steps() != nil {
			return stepsOf(p, stage), nil
		}
		if compare {
			return comparison(grown(p, stage)), nil
		}
		return barOf(p, stage), nil
	case Drawing:
		if compare {
			return Rows{Comparison: comparison(grown(p, stage))}, nil
		}
		return dotsOf(p, stage), nil
	case TenFrame:
		return framesOf(p, stage), nil
	case NumberBond:
		return bondOf(p, stage), nil
	case NumberLine:
		return lineOf(p, stage), nil
	case BaseTen:
		return blocksOf(p, stage), nil
	}
	return columnsOf(p, stage), nil
}
