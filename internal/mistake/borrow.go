package mistake

import "homebuild/internal/problem"

// subtraction is a written subtraction in progress.
type subtraction struct{ top, bottom problem.Places }

// subtract works every column from the ones up. The rule gives the value of a
// column and may change the columns to the left.
func subtract(c problem.Calculation, column func(s *subtraction, place int) int) (int, bool) {
	s := subtraction{problem.PlacesOf(c.Numbers[0]), problem.PlacesOf(c.Numbers[1])}
	var out problem.Places
	for place := range out {
		out[place] = column(&s, place)
	}
	return unlessRight(c, out.Value())
}

// opened is the value of a column after one of the next was opened for it where
// needed; take says how the next column gives it. The last column never needs one:
// the whole is not less than what is taken away.
func (s *subtraction) opened(place int, take func(next int)) int {
	if s.top[place] < s.bottom[place] {
		s.top[place] += 10 * units[place]
		take(place + 1)
	}
	return s.top[place] - s.bottom[place]
}

// give takes one from a column as taught. One that has none is opened in its turn.
func (s *subtraction) give(place int) { s.top[place] -= units[place] }

func smallerFromLarger(c problem.Calculation) (int, bool) {
	return subtract(c, func(s *subtraction, i int) int {
		return max(s.top[i], s.bottom[i]) - min(s.top[i], s.bottom[i])
	})
}

func borrowNoDecrement(c problem.Calculation) (int, bool) {
	return subtract(c, func(s *subtraction, i int) int { return s.opened(i, func(int) {}) })
}

// tenNotGiven is borrowNoDecrement where the ones are too few, as what is asked then
// says; and the same where a hundred was opened, too, and that one paid.
func tenNotGiven(r reading) []wrong {
	if !r.opens(problem.TensPlace) {
		return nil
	}
	var out []wrong
	if n, applies := borrowNoDecrement(r.calc); applies {
		out = append(out, wrong{answer: n})
	}
	if problem.PlacesOf(r.calc.Numbers[0])[problem.TensPlace] > 0 {
		out = append(out, wrong{answer: r.calc.Value() + 10})
	}
	return out
}

// hundredNotGiven opened a hundred for the tens, which was not taken from the
// hundreds. A hundred that was opened through a 0 for the ones has causes of its own.
func hundredNotGiven(r reading) []wrong {
	if !r.opens(problem.HundredsPlace) || r.opens(problem.TensPlace) && problem.PlacesOf(r.calc.Numbers[0])[problem.TensPlace] == 0 {
		return nil
	}
	return []wrong{{answer: r.calc.Value() + 100}}
}

// opens reports whether a written difference opens one of a place, since the numbers
// to the right of it are too few to take from.
func (r reading) opens(place int) bool {
	if r.small() || r.calc.Op != problem.Minus || len(r.calc.Numbers) != 2 {
		return false
	}
	return r.trades(units[place])
}

func zeroInsteadOfBorrow(c problem.Calculation) (int, bool) {
	return subtract(c, func(s *subtraction, i int) int { return max(0, s.top[i]-s.bottom[i]) })
}

// zeroMinus takes a 0 that was there and a 0 left by a borrow alike.
func zeroMinus(c problem.Calculation) (int, bool) {
	return subtract(c, func(s *subtraction, i int) int {
		if s.top[i] == 0 {
			return s.bottom[i]
		}
		return s.opened(i, s.give)
	})
}

func zeroResult(c problem.Calculation) (int, bool) {
	return subtract(c, func(s *subtraction, i int) int {
		if s.top[i] == 0 {
			return 0
		}
		return s.opened(i, s.give)
	})
}

func borrowFromZero(c problem.Calculation) (int, bool) {
	return subtract(c, func(s *subtraction, i int) int {
		return s.opened(i, func(next int) {
			if s.top[next] == 0 {
				s.top[next] = 9 * units[next]
			} else {
				s.top[next] -= units[next]
			}
		})
	})
}

func borrowAcrossZero(c problem.Calculation) (int, bool) {
	return subtract(c, func(s *subtraction, i int) int {
		return s.opened(i, func(next int) {
			for next < len(units) && s.top[next] == 0 {
				next++
			}
			if next < len(units) {
				s.top[next] -= units[next]
			}
		})
	})
}

func stopsBorrowAtZero(c problem.Calculation) (int, bool) {
	return subtract(c, func(s *subtraction, i int) int {
		return s.opened(i, func(next int) { s.top[next] = max(0, s.top[next]-units[next]) })
	})
}
