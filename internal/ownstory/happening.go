package ownstory

import "homebuild/internal/problem"

// Happening is what happens in a story: the first of the two things that a teacher
// says of hers. It is a row of the published table (problem.Situation), under the
// word that stands in a week file.
type Happening problem.Situation

const (
	Joins    = Happening(problem.AddTo)       // some are there, some come
	Leaves   = Happening(problem.TakeFrom)    // some are there, some go
	Parts    = Happening(problem.PutTogether) // two to four parts, seen as one whole
	Compared = Happening(problem.Compare)     // two amounts side by side
)

var happenings = map[Happening]struct{ id, label string }{
	Joins:    {"joins", "Some come."},
	Leaves:   {"leaves", "Some go."},
	Parts:    {"parts", "Parts make a whole."},
	Compared: {"compared", "Two are compared."},
}

// Happenings lists all of them in the table's order.
func Happenings() []Happening { return []Happening{Joins, Leaves, Parts, Compared} }

// ParseHappening finds one by the word in a week file.
func ParseHappening(id string) (Happening, bool) {
	for _, h := range Happenings() {
		if h.String() == id {
			return h, true
		}
	}
	return 0, false
}

// String is the word in a week file: "joins".
func (h Happening) String() string { return happenings[h].id }

// Label says it to a person who chooses: "Some come."
func (h Happening) Label() string { return happenings[h].label }

// sentences say what the stories of a kind ask, for a person who chooses; where
// what happens leaves that open, they say it first.
var sentences = map[problem.Kind]string{
	problem.AddToResult:        "How many then?",
	problem.AddToChange:        "How many came?",
	problem.AddToStart:         "How many at first?",
	problem.TakeFromResult:     "How many are left?",
	problem.TakeFromChange:     "How many went?",
	problem.TakeFromStart:      "How many at first?",
	problem.TogetherTotal:      "How many in all?",
	problem.TogetherAddend:     "How many in the other part?",
	problem.TogetherBoth:       "How many could be in each?",
	problem.DifferenceMore:     "How many more?",
	problem.DifferenceFewer:    "How many fewer?",
	problem.BiggerMore:         "One has so many more. How many has that one?",
	problem.BiggerFewer:        "One has so many fewer. How many has the other?",
	problem.SmallerMore:        "One has so many more. How many has the other?",
	problem.SmallerFewer:       "One has so many fewer. How many has that one?",
	problem.TogetherThree:      "Three parts. How many in all?",
	problem.TogetherFour:       "Four parts. How many in all?",
	problem.AddThenAdd:         "Then more come. How many then?",
	problem.AddThenTake:        "Then some go. How many then?",
	problem.TakeThenAdd:        "Then some come. How many then?",
	problem.TakeThenTake:       "Then more go. How many are left?",
	problem.TogetherThenTake:   "Then some go. How many are left?",
	problem.BiggerThenTogether: "One has so many more. How many have both?",
}

// turns reports whether the stories of a kind tell their numbers in an order of
// their own. Two parts, or two amounts that are compared, come in any order.
func turns(kind problem.Kind) bool {
	switch kind {
	case problem.TogetherTotal, problem.TogetherThree, problem.TogetherFour, problem.TogetherAddend, problem.DifferenceMore, problem.DifferenceFewer:
		return false
	}
	return true
}
