package strategy

import (
	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// pairs joins four numbers two and two, then both sums:
// 24 + 17 + 36 + 13 = 24 + 36 + 17 + 13 = 60 + 30.
var pairs = method{
	id:    "pairs",
	grade: 2,
	fits: func(c problem.Calculation) bool {
		_, ok := paired(c)
		return ok
	},
	work: func(c problem.Calculation, w *working) {
		p, _ := paired(c)
		first, second := p[0]+p[1], p[2]+p[3]
		w.step("first", made(p[0], p[1]), number("A", p[0]), number("B", p[1]), number("Part", first))
		w.step("second", made(p[2], p[3]), number("A", p[2]), number("B", p[3]), number("Part", second))
		w.step("add", made(first, second), number("Part", first), number("Other", second), number("Sum", first+second))
		w.hint("hint")
		for _, n := range c.Numbers {
			w.slipTo(LeftOut, c.Value()-n)
		}
		if p[1] != c.Numbers[1] {
			w.chain(problem.Sum(p[:]...), problem.Sum(first, second))
		} else {
			w.chain(problem.Sum(first, second))
		}
		w.show(picture.Pairs(p[0], p[1], p[2], p[3]))
	},
}

// paired finds which two to join first: so that every sum is easy, and of those as
// many as can be are whole tens. The first number stays the first.
func paired(c problem.Calculation) (best [4]int, ok bool) {
	if c.Op != problem.Plus || len(c.Numbers) != 4 {
		return best, false
	}
	n, most := c.Numbers, -1
	for _, p := range [][4]int{{n[0], n[1], n[2], n[3]}, {n[0], n[2], n[1], n[3]}, {n[0], n[3], n[1], n[2]}} {
		first, second := p[0]+p[1], p[2]+p[3]
		if !easy(p[0], p[1]) || !easy(p[2], p[3]) || !easy(first, second) {
			continue
		}
		if tens := wholeTens(first, second); tens > most {
			best, most = p, tens
		}
	}
	return best, most >= 0
}

// wholeTens counts the numbers that are whole tens.
func wholeTens(numbers ...int) (count int) {
	for _, n := range numbers {
		if n%10 == 0 {
			count++
		}
	}
	return count
}
