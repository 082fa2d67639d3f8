package strategy

import "homebuild/internal/problem"

// tenAndMore wants a ten that can stay whole: 10 + 4, 6 + 12, 17 - 4, 20 - 6.
// A teen number may grow or shrink by its ones, but the ones may not pass ten;
// that is what making ten and bridging back are for.
var tenAndMore = method{
	id:    "ten-and-more",
	grade: 1,
	fits: func(c problem.Calculation) bool {
		if len(c.Numbers) != 2 {
			return false
		}
		big, small, _ := bySize(c)
		switch {
		case wholeAndMore(c):
			return true
		case isSum(c):
			return teen(big) && small > 0 && ones(big)+small <= 10
		case small < 1 || small > 9:
			return false
		}
		return (teen(big) && small < ones(big)) || (big >= 20 && ones(big) == 0)
	},
	work: func(c problem.Calculation, w *working) {
		big, small, turned := bySize(c)
		switch {
		case wholeAndMore(c) && c.Op == problem.Plus:
			w.hint("hint-join", number("Ten", big), number("More", small))
		case wholeAndMore(c):
			w.hint("hint-bare", number("A", big), number("More", small))
		case teen(big) && c.Op == problem.Plus:
			w.hint("hint-ones")
		case teen(big):
			w.hint("hint-take", number("Ten", 10), number("More", ones(big)), number("B", small))
		default:
			w.hint("hint-open", number("A", big), number("Ten", big-10), number("More", 10), number("B", small))
		}
		switch {
		case wholeAndMore(c) && c.Op == problem.Plus:
			w.step("join", made(big, small), number("Ten", big), number("More", small), number("Sum", big+small))
			w.chain()
		case wholeAndMore(c):
			w.step("bare", left(big, small), number("A", big), number("More", small), number("Ten", big-small))
			w.chain()
		case c.Op == problem.Plus:
			w.moreOnes(big, small, turned)
		default:
			w.fewerOnes(big, small)
		}
		w.showTens()
	},
}

func teen(n int) bool { return n > 10 && n < 20 }

// wholeAndMore reports whether place value alone gives the answer: 20 + 4,
// 100 + 45, 74 - 4, 145 - 45.
func wholeAndMore(c problem.Calculation) bool {
	big, small, _ := bySize(c)
	more := big
	if c.Op == problem.Minus {
		more = big - small
	}
	for _, unit := range []int{10, 100} {
		if small > 0 && small < unit && more >= unit && more%unit == 0 {
			return true
		}
	}
	return false
}

// moreOnes: 6 + 12 = 6 + 2 + 10 = 8 + 10 = 18.
func (w *working) moreOnes(big, small int, turned bool) {
	more := ones(big)
	part := more + small
	w.step("split", parted(10, more), number("A", big), number("Ten", 10), number("More", more))
	w.step("add", made(more, small), number("More", more), number("B", small), number("Part", part))
	w.step("join", made(10, part), number("Ten", 10), number("More", part), number("Sum", 10+part))
	w.slip(RestForgotten, problem.Sum(more, small), number("Used", more), number("B", big))
	w.slip(RestForgotten, problem.Sum(10, small), number("Used", 10), number("B", big))
	w.stepOff(problem.Calculation{Op: problem.Plus, Numbers: []int{more, small}}.Asked())
	if turned {
		w.chain(problem.Sum(small, more, 10), problem.Sum(part, 10))
	} else {
		w.chain(problem.Sum(10, more, small), problem.Sum(10, part))
	}
}

// fewerOnes: 17 - 4 = 10 + 7 - 4 = 10 + 3 = 13, 40 - 6 = 30 + 10 - 6 = 30 + 4.
func (w *working) fewerOnes(a, b int) {
	more := ones(a)
	if more == 0 {
		more = 10
	}
	ten, part := a-more, more-b
	w.step("split", parted(ten, more), number("A", a), number("Ten", ten), number("More", more))
	w.step("take", left(more, b), number("More", more), number("B", b), number("Part", part))
	w.step("join", made(ten, part), number("Ten", ten), number("More", part), number("Sum", ten+part))
	w.slip(RestForgotten, problem.Difference(more, b), number("Used", more), number("B", a))
	w.stepOff(problem.Calculation{Op: problem.Minus, Numbers: []int{more, b}}.Asked())
	opened := then(problem.Sum(ten, more), problem.Minus, b)
	w.chain(opened, problem.Sum(ten, part))
}
