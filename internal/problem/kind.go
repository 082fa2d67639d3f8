package problem

// Situation is a row of the published table: what happens in the story.
type Situation uint8

const (
	AddTo       Situation = iota + 1 // some are there, some come
	TakeFrom                         // some are there, some go
	PutTogether                      // two kinds or places, seen as one whole; also take apart
	Compare                          // two amounts side by side
)

// Unknown is a column of the table: which quantity is asked.
type Unknown uint8

const (
	Result Unknown = iota + 1
	Change
	Start
	Total
	Addend
	BothAddends
	DifferenceUnknown
	Bigger
	Smaller
)

// Grade is a school year: 0 is kindergarten.
type Grade int

// Kind is one cell of the table of situations, with Compare in two wordings,
// or one of the longer problems built on it.
type Kind uint8

const (
	AddToResult Kind = iota + 1
	AddToChange
	AddToStart
	TakeFromResult
	TakeFromChange
	TakeFromStart
	TogetherTotal
	TogetherAddend
	TogetherBoth
	DifferenceMore
	DifferenceFewer
	BiggerMore
	BiggerFewer
	SmallerMore
	SmallerFewer
	TogetherThree      // three addends, total unknown (1.OA.A.2)
	AddThenAdd         // two steps (2.OA.A.1)
	AddThenTake        // two steps
	TakeThenAdd        // two steps
	TakeThenTake       // two steps
	TogetherThenTake   // two steps
	BiggerThenTogether // two steps: find the bigger amount, then both together
	TogetherFour       // four addends, total unknown (2.NBT.B.6)
	lastKind           = TogetherFour
)

// cell is what the table says about a kind. Grades: Progressions for the
// CCSS-M, K-5 Operations and Algebraic Thinking, Table 2.
type cell struct {
	id        string
	situation Situation
	unknown   Unknown
	first     Grade // the grade that first works with it
	mastered  Grade // the grade by which it is to be mastered
	misleads  bool  // the relation word points to the wrong operation (table, footnote 4)
	steps     []Kind
}

var cells = [lastKind + 1]cell{
	AddToResult:     {id: "add-to-result", situation: AddTo, unknown: Result, first: 0, mastered: 1},
	AddToChange:     {id: "add-to-change", situation: AddTo, unknown: Change, first: 1, mastered: 1},
	AddToStart:      {id: "add-to-start", situation: AddTo, unknown: Start, first: 1, mastered: 2},
	TakeFromResult:  {id: "take-from-result", situation: TakeFrom, unknown: Result, first: 0, mastered: 1},
	TakeFromChange:  {id: "take-from-change", situation: TakeFrom, unknown: Change, first: 1, mastered: 1},
	TakeFromStart:   {id: "take-from-start", situation: TakeFrom, unknown: Start, first: 1, mastered: 2},
	TogetherTotal:   {id: "together-total", situation: PutTogether, unknown: Total, first: 0, mastered: 1},
	TogetherAddend:  {id: "together-addend", situation: PutTogether, unknown: Addend, first: 1, mastered: 1},
	TogetherBoth:    {id: "together-both", situation: PutTogether, unknown: BothAddends, first: 0, mastered: 1},
	DifferenceMore:  {id: "compare-difference-more", situation: Compare, unknown: DifferenceUnknown, first: 1, mastered: 1},
	DifferenceFewer: {id: "compare-difference-fewer", situation: Compare, unknown: DifferenceUnknown, first: 1, mastered: 1},
	BiggerMore:      {id: "compare-bigger-more", situation: Compare, unknown: Bigger, first: 1, mastered: 1},
	BiggerFewer:     {id: "compare-bigger-fewer", situation: Compare, unknown: Bigger, first: 1, mastered: 2, misleads: true},
	SmallerMore:     {id: "compare-smaller-more", situation: Compare, unknown: Smaller, first: 1, mastered: 2, misleads: true},
	SmallerFewer:    {id: "compare-smaller-fewer", situation: Compare, unknown: Smaller, first: 1, mastered: 1},

	TogetherThree:      {id: "together-three", situation: PutTogether, unknown: Total, first: 1, mastered: 1},
	TogetherFour:       {id: "together-four", situation: PutTogether, unknown: Total, first: 2, mastered: 2},
	AddThenAdd:         {id: "add-then-add", situation: AddTo, unknown: Result, first: 2, mastered: 2, steps: []Kind{AddToResult, AddToResult}},
	AddThenTake:        {id: "add-then-take", situation: AddTo, unknown: Result, first: 2, mastered: 2, steps: []Kind{AddToResult, TakeFromResult}},
	TakeThenAdd:        {id: "take-then-add", situation: TakeFrom, unknown: Result, first: 2, mastered: 2, steps: []Kind{TakeFromResult, AddToResult}},
	TakeThenTake:       {id: "take-then-take", situation: TakeFrom, unknown: Result, first: 2, mastered: 2, steps: []Kind{TakeFromResult, TakeFromResult}},
	TogetherThenTake:   {id: "together-then-take", situation: PutTogether, unknown: Result, first: 2, mastered: 2, steps: []Kind{TogetherTotal, TakeFromResult}},
	BiggerThenTogether: {id: "bigger-then-together", situation: Compare, unknown: Total, first: 2, mastered: 2, steps: []Kind{BiggerMore, TogetherTotal}},
}

// Kinds lists every kind in the table's order.
func Kinds() []Kind {
	all := make([]Kind, 0, lastKind)
	for k := AddToResult; k <= lastKind; k++ {
		all = append(all, k)
	}
	return all
}

// ParseKind finds a kind by its id, as written in target files.
func ParseKind(id string) (Kind, bool) {
	for _, k := range Kinds() {
		if cells[k].id == id {
			return k, true
		}
	}
	return 0, false
}

// Valid reports whether k is one of the kinds.
func (k Kind) Valid() bool { return k >= AddToResult && k <= lastKind }

// String gives the id used in files and message ids: "add-to-result".
func (k Kind) String() string {
	if !k.Valid() {
		return "no-kind"
	}
	return cells[k].id
}

// Situation is the row of the table. A chain has that of its first step.
func (k Kind) Situation() Situation { return cells[k].situation }

// Unknown is the column of the table.
func (k Kind) Unknown() Unknown { return cells[k].unknown }

// FirstGrade is the grade that first works with k.
func (k Kind) FirstGrade() Grade { return cells[k].first }

// MasteredBy is the grade by whose end k is to be mastered.
func (k Kind) MasteredBy() Grade { return cells[k].mastered }

// Difficult reports whether k is one of the four subtypes that grade 1 works
// with and grade 2 masters.
func (k Kind) Difficult() bool { return cells[k].first == 1 && cells[k].mastered == 2 }

// Misleads reports whether the table marks the relation word of a Compare story
// as pointing to the wrong operation: "fewer" for the bigger amount, "more" for
// the smaller one.
func (k Kind) Misleads() bool { return cells[k].misleads }

// Steps lists the kinds of a two-step chain in order; nil for one step.
func (k Kind) Steps() []Kind { return cells[k].steps }
