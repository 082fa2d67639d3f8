package strategy

import "homebuild/internal/problem"

// knownDouble reports whether a child knows n + n by heart: 1 to 10, and the
// larger doubles that are as familiar (15, 25, whole tens and hundreds).
// Common practice, no published source.
func knownDouble(n int) bool {
	return n >= 1 && (n <= 10 || n == 15 || n == 25 || round(n))
}

func doublesFit(c problem.Calculation) bool {
	return isSum(c) && c.Numbers[0] == c.Numbers[1] && knownDouble(c.Numbers[0])
}

func doubles(c problem.Calculation, w *working) {
	a := c.Numbers[0]
	w.step("know", made(a, a), number("A", a), number("Sum", a+a))
	w.chain()
}

// nearDoublesFit asks for neighbours: 6 + 7. A difference of two is worked by
// give and take: 6 + 8 = 7 + 7.
func nearDoublesFit(c problem.Calculation) bool {
	if !isSum(c) {
		return false
	}
	big, small, _ := bySize(c)
	return big == small+1 && knownDouble(small)
}

func nearDoubles(c problem.Calculation, w *working) {
	big, small, _ := bySize(c)
	double := small + small
	w.step("double", made(small, small), number("A", small), number("Double", double))
	w.step("more", made(double, 1), number("A", small), number("B", big), number("Sum", double+1))
	w.chain(problem.Sum(small, small, 1), problem.Sum(double, 1))
}
