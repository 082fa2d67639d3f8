package reading

import "homebuild/internal/problem"

// Fitting lists what a story with these numbers could tell, each kind once: the
// choice for a teacher whose language is not read. The numbers are taken in the
// order in which they are told where the kind allows it, and all of them count.
func Fitting(numbers []int) []problem.Problem {
	var out []problem.Problem
	for _, kind := range problem.Kinds() {
		for order := range orders(numbers) {
			if len(order) < len(numbers) {
				continue
			}
			if p, err := fromTold(kind, order...); err == nil {
				out = append(out, p)
				break
			}
		}
	}
	return out
}

// Counting are the numbers of a text that count: those that are marked, else all
// that are written in digits.
func (t Text) Counting() []int {
	var marked, digits []int
	for _, n := range t.Numerals {
		switch {
		case n.Marked:
			marked = append(marked, n.Value)
		case !n.Word:
			digits = append(digits, n.Value)
		}
	}
	if len(marked) > 0 {
		return marked
	}
	return digits
}
