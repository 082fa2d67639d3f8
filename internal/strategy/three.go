package strategy

import "homebuild/internal/problem"

// joined is a sum of three with two of its numbers joined first. Where the
// two are not neighbours, the third is moved to the end.
type joined struct {
	a, b, c    int  // a and b are joined, c comes after
	first      bool // c stands before them: 2 + 6 + 4 = 2 + 10
	rearranged bool // 8 + 4 + 2 = 8 + 2 + 4
}

// joinings lists the three ways to join two of c's numbers; nil unless c is a
// sum of three.
func joinings(c problem.Calculation) []joined {
	if c.Op != problem.Plus || len(c.Numbers) != 3 {
		return nil
	}
	x, y, z := c.Numbers[0], c.Numbers[1], c.Numbers[2]
	return []joined{
		{a: x, b: y, c: z},
		{a: x, b: z, c: y, rearranged: true},
		{a: y, b: z, c: x, first: true},
	}
}

func (j joined) chain(w *working) {
	switch {
	case j.first:
		w.chain(problem.Sum(j.c, j.a+j.b))
	case j.rearranged:
		w.chain(problem.Sum(j.a, j.b, j.c), problem.Sum(j.a+j.b, j.c))
	default:
		w.chain(problem.Sum(j.a+j.b, j.c))
	}
}

// friendly finds the pair that makes ten, else a hundred, else another round
// number.
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

func friendlyPairFits(c problem.Calculation) bool {
	_, ok := friendly(c)
	return ok
}

func friendlyPair(c problem.Calculation, w *working) {
	j, _ := friendly(c)
	ten := j.a + j.b
	w.step("pair", made(j.a, j.b), number("A", j.a), number("B", j.b), number("Ten", ten))
	w.step("add", made(ten, j.c), number("Ten", ten), number("C", j.c), number("Sum", ten+j.c))
	j.chain(w)
}

// halves finds the joining with which both sums are easy: one that ends in a
// double (4 + 9 + 5 = 9 + 9), else one that begins with a double, else the
// two smaller numbers first.
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

func (j joined) before(k joined) bool {
	if d, e := j.doubling(), k.doubling(); d != e {
		return d > e
	}
	return j.a+j.b < k.a+k.b
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

func twoPartsFits(c problem.Calculation) bool {
	_, ok := halves(c)
	return ok
}

func twoParts(c problem.Calculation, w *working) {
	j, _ := halves(c)
	part := j.a + j.b
	w.step("join", made(j.a, j.b), number("A", j.a), number("B", j.b), number("Part", part))
	w.step("add", made(part, j.c), number("Part", part), number("C", j.c), number("Sum", part+j.c))
	j.chain(w)
}
