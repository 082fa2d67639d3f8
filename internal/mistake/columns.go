package mistake

import (
	"strconv"

	"homebuild/internal/problem"
)

// columnRules are the rules for written addition and subtraction. Source:
// Brown and Burton (1978) and VanLehn (1990) for subtraction; for addition
// common practice, no published source. A rule gives its answer, and whether it
// applies: one that happens to give the right answer does not.
var columnRules = []rule{
	{BothDigitsWritten, whereLarge(problem.Plus, bothDigitsWritten)},
	{OnesWithTens, whereLarge(problem.Plus, onesWithTens)},
	{BorrowNoDecrement, inEachStep(tenNotGiven)},
	{HundredNoDecrement, inEachStep(hundredNotGiven)},
	{ZeroInsteadOfBorrow, whereLarge(problem.Minus, zeroInsteadOfBorrow)},
	{ZeroMinus, whereLarge(problem.Minus, zeroMinus)},
	{ZeroResult, whereLarge(problem.Minus, zeroResult)},
	{BorrowFromZero, whereLarge(problem.Minus, borrowFromZero)},
	{BorrowAcrossZero, whereLarge(problem.Minus, borrowAcrossZero)},
	{StopsBorrowAtZero, whereLarge(problem.Minus, stopsBorrowAtZero)},
}

// units are what one of each place is worth.
var units = [...]int{problem.OnesPlace: 1, problem.TensPlace: 10, problem.HundredsPlace: 100}

// width is how many digits n is written with.
func width(n int) int { return len(strconv.Itoa(n)) }

// unlessRight is the result of a rule that gave n.
func unlessRight(c problem.Calculation, n int) (int, bool) { return n, n != c.Value() }

// columnSums adds the digits of each column by themselves, from the ones up.
func columnSums(c problem.Calculation) [len(units)]int {
	var total problem.Places
	for _, n := range c.Numbers {
		total = total.Plus(problem.PlacesOf(n))
	}
	for place, unit := range units {
		total[place] /= unit
	}
	return total
}

func bothDigitsWritten(c problem.Calculation) (int, bool) {
	n := 0
	sums := columnSums(c)
	for place := problem.HundredsPlace; place >= problem.OnesPlace; place-- {
		n = besides(n, sums[place])
	}
	return unlessRight(c, n)
}

// besides writes b to the right of a.
func besides(a, b int) int {
	for range width(b) {
		a *= 10
	}
	return a + b
}

func onesWithTens(c problem.Calculation) (int, bool) {
	if len(c.Numbers) != 2 || width(c.Numbers[0]) == width(c.Numbers[1]) {
		return 0, false
	}
	bigger, smaller := max(c.Numbers[0], c.Numbers[1]), min(c.Numbers[0], c.Numbers[1])
	return unlessRight(c, bigger+10*smaller)
}

func allDigitsAdded(c problem.Calculation) (int, bool) {
	n := 0
	for _, sum := range columnSums(c) {
		n += sum
	}
	return unlessRight(c, n)
}
