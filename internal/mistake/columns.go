package mistake

import (
	"strconv"

	"homebuild/internal/problem"
)

// columnsFrom is the number up to which children of this age work without
// columns, so that no column mistake is looked for (common practice, no
// published source).
const columnsFrom = 20

// wrong is one rule of a mistaken working: the answer it gives, and whether it
// applies. A rule that happens to give the right answer does not apply.
type wrong func(c problem.Calculation) (answer int, applies bool)

// columnRules are the rules for written addition and subtraction. Source:
// Brown and Burton (1978) and VanLehn (1990) for subtraction; for addition
// common practice, no published source.
var columnRules = []struct {
	cause Cause
	op    problem.Op
	wrong wrong
}{
	{CarryDropped, problem.Plus, carryDropped},
	{BothDigitsWritten, problem.Plus, bothDigitsWritten},
	{OnesWithTens, problem.Plus, onesWithTens},
	{AllDigitsAdded, problem.Plus, allDigitsAdded},
	{SmallerFromLarger, problem.Minus, smallerFromLarger},
	{BorrowNoDecrement, problem.Minus, borrowNoDecrement},
	{ZeroInsteadOfBorrow, problem.Minus, zeroInsteadOfBorrow},
	{ZeroMinus, problem.Minus, zeroMinus},
	{ZeroResult, problem.Minus, zeroResult},
	{BorrowFromZero, problem.Minus, borrowFromZero},
	{BorrowAcrossZero, problem.Minus, borrowAcrossZero},
	{StopsBorrowAtZero, problem.Minus, stopsBorrowAtZero},
}

// digits gives the digits of n from the ones up, at least width of them.
func digits(n, width int) []int {
	var d []int
	for ; n > 0 || len(d) < width; n /= 10 {
		d = append(d, n%10)
	}
	return d
}

// number is the value of digits given from the ones up.
func number(d []int) int {
	n := 0
	for i := len(d) - 1; i >= 0; i-- {
		n = 10*n + d[i]
	}
	return n
}

// width is how many digits n is written with.
func width(n int) int { return len(digits(n, 1)) }

// unlessRight is the result of a rule that gave n.
func unlessRight(c problem.Calculation, n int) (int, bool) { return n, n != c.Value() }

// columnSums adds each column by itself, from the ones up.
func columnSums(c problem.Calculation) []int {
	widest := 0
	for _, n := range c.Numbers {
		widest = max(widest, width(n))
	}
	sums := make([]int, widest)
	for _, n := range c.Numbers {
		for i, d := range digits(n, widest) {
			sums[i] += d
		}
	}
	return sums
}

func carryDropped(c problem.Calculation) (int, bool) {
	sums := columnSums(c)
	for i := range sums[:len(sums)-1] {
		sums[i] %= 10
	}
	return unlessRight(c, number(sums)) // the last column has nowhere to drop its ten
}

func bothDigitsWritten(c problem.Calculation) (int, bool) {
	n := 0
	sums := columnSums(c)
	for i := len(sums) - 1; i >= 0; i-- {
		n = besides(n, sums[i])
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

func sideBySide(c problem.Calculation) (int, bool) {
	if c.Op != problem.Plus || c.Numbers[0] == 0 {
		return 0, false
	}
	text := ""
	for _, n := range c.Numbers {
		text += strconv.Itoa(n)
	}
	n, err := strconv.Atoi(text)
	if err != nil {
		return 0, false // longer than any number a child writes
	}
	return unlessRight(c, n)
}
