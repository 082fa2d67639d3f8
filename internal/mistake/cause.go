package mistake

// Cause is a known way to a wrong number. The order is that in which a teacher
// would listen for them (common practice, no published source).
type Cause uint8

const (
	ReversedComparison  Cause = iota + 1 // "more" or "fewer" read as the other way round
	AddedInstead                         // added where the story takes away or asks for a part
	SubtractedInstead                    // took away where the story joins
	SmallerFromLarger                    // columns: took the small digit from the large one
	CarryDropped                         // columns: wrote the ones, forgot the new ten
	BorrowNoDecrement                    // columns: opened a ten but left it standing
	FirstStepOnly                        // stopped after the first of two steps
	LeftOut                              // used all the numbers but one
	PartOnly                             // gave back a number of the story
	UsedExtra                            // worked with the number that is not needed
	CountedStart                         // counted the start number as one
	OneTooFar                            // counted one too many
	BothDigitsWritten                    // columns: wrote both digits of a column's sum
	OnesWithTens                         // columns: lined up ones under tens
	AllDigitsAdded                       // columns: added every digit as if it were ones
	SideBySide                           // wrote the numbers side by side
	BorrowFromZero                       // columns: 0 became 9, nothing further left changed
	BorrowAcrossZero                     // columns: skipped a 0 and took from beyond it
	StopsBorrowAtZero                    // columns: added ten, changed nothing at a 0
	ZeroMinus                            // columns: 0 - N is N
	ZeroResult                           // columns: 0 - N is 0
	ZeroInsteadOfBorrow                  // columns: wrote 0 where the top digit is too small
	lastCause           = ZeroInsteadOfBorrow
)

var causeIDs = [lastCause + 1]string{
	ReversedComparison:  "reversed-comparison",
	AddedInstead:        "added-instead",
	SubtractedInstead:   "subtracted-instead",
	SmallerFromLarger:   "smaller-from-larger",
	CarryDropped:        "carry-dropped",
	BorrowNoDecrement:   "borrow-no-decrement",
	FirstStepOnly:       "first-step-only",
	LeftOut:             "left-out",
	PartOnly:            "part-only",
	UsedExtra:           "used-extra",
	CountedStart:        "counted-start",
	OneTooFar:           "one-too-far",
	BothDigitsWritten:   "both-digits-written",
	OnesWithTens:        "ones-with-tens",
	AllDigitsAdded:      "all-digits-added",
	SideBySide:          "side-by-side",
	BorrowFromZero:      "borrow-from-zero",
	BorrowAcrossZero:    "borrow-across-zero",
	StopsBorrowAtZero:   "stops-borrow-at-zero",
	ZeroMinus:           "zero-minus",
	ZeroResult:          "zero-result",
	ZeroInsteadOfBorrow: "zero-instead-of-borrow",
}

// Causes lists every cause in order.
func Causes() []Cause {
	all := make([]Cause, 0, lastCause)
	for c := Cause(1); c <= lastCause; c++ {
		all = append(all, c)
	}
	return all
}

// String gives the id used in message ids: "counted-start".
func (c Cause) String() string {
	if c < 1 || c > lastCause {
		return "no-cause"
	}
	return causeIDs[c]
}
