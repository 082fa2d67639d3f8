package mistake

import "homebuild/internal/problem"

// working is a written subtraction in progress, digits from the ones up.
type working struct {
	top, bottom []int
}

func newWorking(c problem.Calculation) working {
	w := max(width(c.Numbers[0]), width(c.Numbers[1]))
	return working{top: digits(c.Numbers[0], w), bottom: digits(c.Numbers[1], w)}
}

// subtract works every column from the ones up. The rule gives the digit of
// column i and may change the columns to the left.
func subtract(c problem.Calculation, column func(w working, i int) int) (int, bool) {
	w := newWorking(c)
	out := make([]int, len(w.top))
	for i := range w.top {
		out[i] = column(w, i)
	}
	return unlessRight(c, number(out))
}

// short reports whether the top digit of column i is too small.
func (w working) short(i int) bool { return w.top[i] < w.bottom[i] }

// take takes one from column i as taught: a 0 becomes 9 and the next gives.
func (w working) take(i int) {
	for ; i < len(w.top); i++ {
		if w.top[i] > 0 {
			w.top[i]--
			return
		}
		w.top[i] = 9
	}
}

// opened is the digit of column i after a ten was opened for it where needed;
// take says how the column to the left gives the ten.
func (w working) opened(i int, take func(i int)) int {
	if !w.short(i) {
		return w.top[i] - w.bottom[i]
	}
	if i+1 < len(w.top) {
		take(i + 1)
	}
	return w.top[i] + 10 - w.bottom[i]
}

func smallerFromLarger(c problem.Calculation) (int, bool) {
	return subtract(c, func(w working, i int) int {
		return max(w.top[i], w.bottom[i]) - min(w.top[i], w.bottom[i])
	})
}

func borrowNoDecrement(c problem.Calculation) (int, bool) {
	return subtract(c, func(w working, i int) int {
		return w.opened(i, func(int) {})
	})
}

func zeroInsteadOfBorrow(c problem.Calculation) (int, bool) {
	return subtract(c, func(w working, i int) int { return max(0, w.top[i]-w.bottom[i]) })
}

// zeroMinus takes a 0 that was there and a 0 left by a borrow alike.
func zeroMinus(c problem.Calculation) (int, bool) {
	return subtract(c, func(w working, i int) int {
		if w.top[i] == 0 {
			return w.bottom[i]
		}
		return w.opened(i, w.take)
	})
}

func zeroResult(c problem.Calculation) (int, bool) {
	return subtract(c, func(w working, i int) int {
		if w.top[i] == 0 {
			return 0
		}
		return w.opened(i, w.take)
	})
}

func borrowFromZero(c problem.Calculation) (int, bool) {
	return subtract(c, func(w working, i int) int {
		return w.opened(i, func(next int) { w.top[next] = (w.top[next] + 9) % 10 })
	})
}

func borrowAcrossZero(c problem.Calculation) (int, bool) {
	return subtract(c, func(w working, i int) int {
		return w.opened(i, func(next int) {
			for next < len(w.top) && w.top[next] == 0 {
				next++
			}
			if next < len(w.top) {
				w.top[next]--
			}
		})
	})
}

func stopsBorrowAtZero(c problem.Calculation) (int, bool) {
	return subtract(c, func(w working, i int) int {
		return w.opened(i, func(next int) { w.top[next] = max(0, w.top[next]-1) })
	})
}
