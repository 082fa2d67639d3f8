package picture

import (
	"fmt"

	"homebuild/internal/problem"
)

// Kind is a sort of picture that a class can draw for its stories.
type Kind uint8

const (
	BarModel   Kind = iota + 1 // part-whole bar, or comparison bars for Compare
	Drawing                    // simple dots in the parts' own fill, within 20
	TenFrame                   // one or two frames of ten, within 20
	NumberBond                 // whole and parts in circles
	NumberLine                 // hops
	BaseTen                    // hundreds as squares, tens as sticks, ones as dots
	Columns                    // expanded form: tens and ones side by side
	lastKind   = Columns
)

// model is what the package knows about a kind. fits is asked about problems
// up to problem.Largest, of only about those that fit.
type model struct {
	id   string
	fits func(problem.Problem) bool
	of   func(problem.Problem, Stage) Picture
}

var models = [lastKind + 1]model{
	BarModel:   {"bar-model", fitsBars, barsOf},
	Drawing:    {"drawing", fitsDots, dotsOf},
	TenFrame:   {"ten-frame", fitsFrames, framesOf},
	NumberBond: {"number-bond", fitsBond, bondOf},
	NumberLine: {"number-line", fitsLine, lineOf},
	BaseTen:    {"base-ten", fitsPlaces, blocksOf},
	Columns:    {"columns", fitsColumns, columnsOf},
}

// Kinds lists every kind.
func Kinds() []Kind {
	var all []Kind
	for k := BarModel; k <= lastKind; k++ {
		all = append(all, k)
	}
	return all
}

// OrBars draws a problem by a kind of picture where that fits, else in bars, which
// always do.
func OrBars(p problem.Problem, kind Kind, stage Stage) Picture {
	if !Fits(kind, p) {
		kind = BarModel
	}
	out, err := OfProblem(p, kind, stage)
	if err != nil {
		panic("picture: " + err.Error())
	}
	return out
}

// ParseKind finds a kind by its id, as written in week files.
func ParseKind(id string) (Kind, bool) {
	for _, k := range Kinds() {
		if models[k].id == id {
			return k, true
		}
	}
	return 0, false
}

// Valid reports whether k is one of the kinds.
func (k Kind) Valid() bool { return k >= BarModel && k <= lastKind }

// String gives the id used in files and message ids: "bar-model".
func (k Kind) String() string {
	if !k.Valid() {
		return "no-picture"
	}
	return models[k].id
}

// Fits reports whether a kind of picture can show p at every stage. Four parts have
// room in a bar alone.
func Fits(kind Kind, p problem.Problem) bool {
	if p.Kind() == problem.TogetherFour && kind != BarModel {
		return false
	}
	return kind.Valid() && largest(p) <= problem.Largest && models[kind].fits(p)
}

// OfProblem shows p by a kind of picture at a stage of its story. The error
// says that the kind cannot show p; see Fits.
func OfProblem(p problem.Problem, kind Kind, stage Stage) (Picture, error) {
	if !Fits(kind, p) {
		return nil, fmt.Errorf("picture: %v does not fit %v of %v", kind, p.Kind(), p.Numbers())
	}
	return models[kind].of(p, stage), nil
}

// What the kinds ask of a problem. A picture belongs to a situation: amounts
// side by side are compared in bars, rows or along a line; what is taken away is
// crossed out, which can be drawn only where the rest is asked for.

func largest(p problem.Problem) int {
	most := 0
	for _, step := range p.Steps() {
		most = max(most, step.Fact().Whole.Value)
	}
	return most
}

func isChain(p problem.Problem) bool   { return p.Kind().Steps() != nil }
func isCompare(p problem.Problem) bool { return p.Kind().Situation() == problem.Compare }
func isBoth(p problem.Problem) bool    { return p.Kind() == problem.TogetherBoth }
func isTaken(p problem.Problem) bool   { return p.Kind() == problem.TakeFromResult }

// joins reports whether parts are seen in one whole: nothing is compared, and
// nothing leaves.
func joins(p problem.Problem) bool {
	return !isChain(p) && !isCompare(p) && p.Kind().Situation() != problem.TakeFrom
}

// joinsOrTakes wants parts in a whole, or something to cross out.
func joinsOrTakes(p problem.Problem) bool { return joins(p) || isTaken(p) }

// fitsPlaces wants tens to show.
func fitsPlaces(p problem.Problem) bool {
	return joinsOrTakes(p) && !isBoth(p) && largest(p) >= 10
}
