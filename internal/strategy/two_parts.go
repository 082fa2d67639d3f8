package strategy

import (
	"cmp"

	"homebuild/internal/problem"
)

// twoParts joins two of three numbers so that both sums are easy:
// 4 + 9 + 5 = 4 + 5 + 9 = 9 + 9.
var twoParts = method{
	id:    "two-parts",
	grade: 1,
	fits: func(c problem.Calculation) bool {
		_, ok := halves(c)
		return ok
	},
	work: func(c problem.Calculation, w *working) {
		j, _ := halves(c)
		part := j.a + j.b
		w.step("join", made(j.a, j.b), number("A", j.a), number("B", j.b), number("Part", part))
		w.step("add", made(part, j.c), number("Part", part), number("C", j.c), number("Sum", part+j.c))
		w.hint("hint")
		w.leftOut(c)
		j.chain(w)
		j.show(w)
	},
}

// halves finds the joining: one that ends in a double (4 + 9 + 5 = 9 + 9),
// else one that begins with a double, else the two smaller numbers first.
func halves(c problem.Calculation) (joined, bool) {
	var found joined
	ok := false
	for _, j := range joinings(c) {
		if easy(j.a, j.b) && easy(j.a+j.b, j.c) && (!ok || j.before(found)) {
			found, ok = j, true
		}
	}
	return found, ok
}

// easy reports whether a sum of two can be done in one go: it reaches a whole
// ten, is a double, adds nothing, or adds ones, tens or hundreds alone.
func easy(a, b int) bool {
	return (a+b)%10 == 0 || a == b || min(a, b) == 0 || round(a) || round(b)
}

func (j joined) before(k joined) bool {
	return cmp.Or(cmp.Compare(k.doubling(), j.doubling()), cmp.Compare(j.a+j.b, k.a+k.b)) < 0
}

func (j joined) doubling() int {
	switch {
	case j.a+j.b == j.c && j.c > 0:
		return 2
	case j.a == j.b && j.a > 0:
		return 1
	}
	return 0
}
