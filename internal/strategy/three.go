package strategy

import (
	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

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

// leftOut are the slips of adding two of three numbers.
func (w *working) leftOut(c problem.Calculation) {
	for _, j := range joinings(c) {
		w.slipTo(LeftOut, j.a+j.b)
	}
}

// show draws the two that are joined, and the third: on ten frames where the
// two make ten, else as one bar.
func (j joined) show(w *working) {
	if j.a+j.b == 10 && 10+j.c <= picture.Most {
		w.showFrames(problem.TogetherThree, j.a, j.b, j.c)
		return
	}
	w.show(picture.Joined(j.a, j.b, j.c))
}
