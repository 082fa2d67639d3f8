package strategy

import (
	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// doubles are known by heart: 7 + 7 = 14.
var doubles = method{
	id:    "doubles",
	grade: 1,
	fits:  forSum(func(big, small int) bool { return big == small && knownDouble(big) }),
	work: func(c problem.Calculation, w *working) {
		a := c.Numbers[0]
		w.step("know", made(a, a), number("A", a), number("Sum", a+a))
		w.hint("hint", number("A", a))
		w.slip(OtherDouble, problem.Sum(a-1, a-1))
		w.slip(OtherDouble, problem.Sum(a+1, a+1))
		w.chain()
		w.show(picture.Double(a, a))
	},
}

// knownDouble reports whether a child knows n + n by heart: 1 to 10, and the
// larger doubles that are as familiar (15, 25, whole tens and hundreds).
// Common practice, no published source.
func knownDouble(n int) bool {
	return n == 15 || n == 25 || round(n)
}
