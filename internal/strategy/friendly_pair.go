package strategy

import "homebuild/internal/problem"

// friendlyPair joins two of three numbers that make ten, else a hundred, else
// another round number: 8 + 4 + 2 = 8 + 2 + 4 = 10 + 4. Only ten is called ten.
var friendlyPair = method{
	id:    "friendly-pair",
	grade: 1,
	fits: func(c problem.Calculation) bool {
		_, ok := friendly(c)
		return ok
	},
	work: func(c problem.Calculation, w *working) {
		j, _ := friendly(c)
		ten := j.a + j.b
		w.step("pair", made(j.a, j.b), number("A", j.a), number("B", j.b), number("Ten", ten))
		w.step("add", made(ten, j.c), number("Ten", ten), number("C", j.c), number("Sum", ten+j.c))
		w.hint("hint")
		w.leftOut(c)
		j.chain(w)
		j.show(w)
	},
	variant: func(c problem.Calculation) string {
		if j, _ := friendly(c); j.a+j.b != 10 {
			return "friendly-pair-round"
		}
		return "friendly-pair"
	},
}

// friendly finds the pair to join.
func friendly(c problem.Calculation) (joined, bool) {
	var found joined
	best := 0
	for _, j := range joinings(c) {
		ten, rank := j.a+j.b, 0
		switch {
		case j.a == 0 || j.b == 0 || ten < 10 || !round(ten):
			continue
		case ten == 10:
			rank = 3
		case ten == 100:
			rank = 2
		default:
			rank = 1
		}
		if rank > best {
			found, best = j, rank
		}
	}
	return found, best > 0
}
