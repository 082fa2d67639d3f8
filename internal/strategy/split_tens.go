package strategy

import (
	"slices"

	"homebuild/internal/problem"
)

// splitTensFits wants parts of the same place to work with. Adding is always
// safe; taking away only where no place has too little, because a child who
// meets 5 - 9 there turns it round and takes 5 from 9.
func splitTensFits(c problem.Calculation) bool {
	if slices.Max(c.Numbers) < 10 {
		return false
	}
	if isDifference(c) {
		a, b := c.Numbers[0], c.Numbers[1]
		return a > b && b > 0 && !borrows(a, b)
	}
	if c.Op == problem.Minus {
		return false
	}
	for place := range 3 {
		if len(parts(c, place)) > 1 {
			return true
		}
	}
	return false
}

// borrows reports whether a place of a has less than the same place of b.
func borrows(a, b int) bool {
	p, q := placesOf(a), placesOf(b)
	for place := range p {
		if p[place] < q[place] {
			return true
		}
	}
	return false
}

// parts lists what c's numbers have in a place, without the zeros.
func parts(c problem.Calculation, place int) []int {
	var found []int
	for _, n := range c.Numbers {
		if v := placesOf(n)[place]; v > 0 {
			found = append(found, v)
		}
	}
	return found
}

// splitTens works from the largest place to the smallest and joins the
// results: 56 + 37 is 50 + 30, 6 + 7, 80 + 13.
func splitTens(c problem.Calculation, w *working) {
	var split problem.Expression
	var results []int
	for place := hundredsPlace; place >= onesPlace; place-- {
		found := parts(c, place)
		if len(found) == 0 {
			continue
		}
		e := problem.Sum(found...)
		id, name := placeIDs[place], "Sum"
		if c.Op == problem.Minus {
			e, id, name = problem.Difference(found[0], found[1:]...), "take-"+id, "Rest"
		}
		if len(found) > 1 {
			w.step(id, evaluated(e), number(name, e.Value()))
		}
		split = append(split, e...)
		results = append(results, e.Value())
	}
	w.join(split, results)
}

// join puts the results of the places together, at once where every place
// keeps its own digit, else one after the other, and writes the chain. A place
// where nothing is left is joined too (40 + 0 = 40), but not written in the
// chain.
func (w *working) join(split problem.Expression, results []int) {
	sides := []problem.Expression{split, sumOf(results)}
	for len(results) > 1 {
		n := 2
		if separate(results) {
			n = len(results)
		}
		q := made(results[:n]...)
		w.step("join", q, number("Sum", q.Sides()[1].Value()))
		results = append([]int{q.Sides()[1].Value()}, results[n:]...)
		sides = append(sides, sumOf(results))
	}
	w.chain(sides...)
}

// separate reports whether no two of the numbers share a place: 300 + 20 + 4.
func separate(numbers []int) bool {
	var taken [3]bool
	for _, n := range numbers {
		for place, v := range placesOf(n) {
			if v > 0 && taken[place] {
				return false
			}
			taken[place] = taken[place] || v > 0
		}
	}
	return true
}

// sumOf is the sum of the numbers that are not zero.
func sumOf(numbers []int) problem.Expression {
	var e problem.Expression
	for _, n := range numbers {
		if n > 0 {
			e = append(e, problem.Term{Op: problem.Plus, Value: n})
		}
	}
	return e
}
