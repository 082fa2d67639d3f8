package mistake

import (
	"homebuild/internal/phrase"
	"homebuild/internal/strategy"
)

// Cause is a known way to a wrong number: a slip of a way of working, or one of
// those below. It is the id used in message ids: "part-only".
type Cause string

// Causes that lie in the reading of the story, or in how numbers are written.
const (
	ReversedComparison Cause = "reversed-comparison" // "more" or "fewer" read as the other way round
	AddedInstead       Cause = "added-instead"       // added where the story takes away or asks for a part
	SubtractedInstead  Cause = "subtracted-instead"  // took away where the story joins
	SecondTurned       Cause = "second-turned"       // two steps: the second change went the other way
	StepsTurned        Cause = "steps-turned"        // two steps: the first change did, or both
	FirstStepOnly      Cause = "first-step-only"     // stopped after the first of two steps
	PartOnly           Cause = "part-only"           // gave back a number of the story
	UsedExtra          Cause = "used-extra"          // worked with the number that is not needed
	ReversedDigits     Cause = "reversed-digits"     // 41 for 14
	SideBySide         Cause = "side-by-side"        // wrote one number after the other
	AllDigitsAdded     Cause = "all-digits-added"    // added every digit as if it were ones
	SmallerFromLarger  Cause = "smaller-from-larger" // took the small digit from the large one

	LeftOut      = Cause(strategy.LeftOut)      // used all the numbers but one
	CountedStart = Cause(strategy.CountedStart) // counted the start number as one
	OneTooFar    = Cause(strategy.OneTooFar)    // counted one too many
	CarryDropped = Cause(strategy.CarryDropped) // a new ten, or hundred, got lost
	NotMended    = Cause(strategy.NotMended)    // took a round number near by and left it there
	MendedWrong  = Cause(strategy.MendedWrong)  // took a round number near by and mended it the wrong way
)

// Causes of working in columns alone.
const (
	BorrowNoDecrement   Cause = "borrow-no-decrement"    // opened a ten but left it standing
	HundredNoDecrement  Cause = "hundred-no-decrement"   // opened a hundred but left it standing
	BothDigitsWritten   Cause = "both-digits-written"    // wrote both digits of a column's sum
	OnesWithTens        Cause = "ones-with-tens"         // lined up ones under tens
	BorrowFromZero      Cause = "borrow-from-zero"       // 0 became 9, nothing further left changed
	BorrowAcrossZero    Cause = "borrow-across-zero"     // skipped a 0 and took from beyond it
	StopsBorrowAtZero   Cause = "stops-borrow-at-zero"   // added ten, changed nothing at a 0
	ZeroMinus           Cause = "zero-minus"             // 0 - N is N
	ZeroResult          Cause = "zero-result"            // 0 - N is 0
	ZeroInsteadOfBorrow Cause = "zero-instead-of-borrow" // wrote 0 where the top digit is too small
)

// Causes lists every cause: the slips of the ways, then the others.
func Causes() []Cause {
	var all []Cause
	for _, s := range strategy.SlipNames() {
		all = append(all, Cause(s))
	}
	return append(all, ReversedComparison, AddedInstead, SubtractedInstead, SecondTurned, StepsTurned, FirstStepOnly,
		PartOnly, UsedExtra, ReversedDigits, SideBySide, AllDigitsAdded, SmallerFromLarger,
		BorrowNoDecrement, HundredNoDecrement, BothDigitsWritten, OnesWithTens, BorrowFromZero, BorrowAcrossZero, StopsBorrowAtZero,
		ZeroMinus, ZeroResult, ZeroInsteadOfBorrow)
}

// Name is the line that tells a teacher what to listen for.
func (c Cause) Name() phrase.Line { return phrase.Say("mistake." + string(c) + ".name") }
