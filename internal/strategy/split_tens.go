package strategy

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// splitTens works place by place: 56 + 37 is 50 + 30, 6 + 7, 80 + 13. Adding
// is always safe; taking away only where no place has too little, because a
// child who meets 5 - 9 there turns it round and takes 5 from 9.
var splitTens = method{
	id:    "split-tens",
	grade: 1,
	fits: func(c problem.Calculation) bool {
		switch {
		case slices.Max(c.Numbers) < 10:
			return false
		case isDifference(c):
			a, b := c.Numbers[0], c.Numbers[1]
			return a > b && b > 0 && problem.PlacesOf(a).Covers(problem.PlacesOf(b))
		case c.Op == problem.Minus:
			return false
		}
		for place := range placeIDs {
			if len(parts(c, place)) > 1 {
				return true
			}
		}
		return false
	},
	work: func(c problem.Calculation, w *working) {
		var split problem.Expression
		var results []int
		for place := problem.HundredsPlace; place >= problem.OnesPlace; place-- {
			found := parts(c, place)
			if len(found) == 0 {
				continue
			}
			e := problem.Sum(found...)
			id, name := placeIDs[place], "Sum"
			if c.Op == problem.Minus {
				e, id, name = problem.Difference(found[0], found[1:]...), "take-"+id, "Rest"
			}
			switch {
			case len(found) > 1:
				w.step(id, evaluated(e), number(name, e.Value()))
			case c.Op == problem.Minus: // 70 - 0 of 575 - 503
				w.step("take-none", left(found[0], 0), number("Rest", found[0]))
			}
			split = append(split, e...)
			results = append(results, e.Value())
		}
		w.hint("hint")
		w.carriesDropped()
		w.partsLost(split, results)
		w.join(split, results)
		w.showPlaces()
	},
	variant: withHundreds("split-hundreds", "split-tens"),
}

// placeIDs end the message ids of steps for a place.
var placeIDs = [...]string{problem.OnesPlace: "ones", problem.TensPlace: "tens", problem.HundredsPlace: "hundreds"}

// parts lists what c's numbers have in a place, without the zeros.
func parts(c problem.Calculation, place int) []int {
	var found []int
	for _, n := range c.Numbers {
		if v := problem.PlacesOf(n)[place]; v > 0 {
			found = append(found, v)
		}
	}
	return found
}

// partsLost are the slips of putting parts together: a number's part left out, or
// the result of a place, or all results but one. A ten that is lost as a new one is
// not lost as a part, too.
func (w *working) partsLost(split problem.Expression, results []int) {
	answer := w.way.Calculation.Value()
	var numbers []int
	for _, t := range split {
		numbers = append(numbers, answer-problem.Expression{t}.Value())
	}
	for _, r := range results {
		numbers = append(numbers, answer-r, r)
	}
	for _, n := range numbers {
		if n > 0 && !slices.ContainsFunc(w.way.Slips, func(s Slip) bool { return s.Name == CarryDropped && s.Answer == n }) {
			w.addSlip(Slip{Name: PartLost, Answer: n, Ask: w.lookAtPlaces()})
		}
	}
}

// lookAtPlaces is what to ask a child who left a part out: to look at every place that
// the numbers have.
func (w *working) lookAtPlaces() phrase.Line {
	if slices.Max(w.way.Calculation.Numbers) >= 100 {
		return phrase.Say("mistake.part-lost.hundreds")
	}
	return phrase.Say("mistake.part-lost.tens")
}

// carriesDropped are the slips of losing the ten that the ones of a sum make, or
// the hundred that its tens make. Who loses none has the answer, which is no slip.
func (w *working) carriesDropped() {
	c := w.way.Calculation
	if c.Op != problem.Plus {
		return
	}
	for place, unit := range []int{10, 100} {
		lost := problem.Sum(parts(c, place)...).Value() / unit * unit
		w.addSlip(Slip{Name: CarryDropped, Answer: c.Value() - lost, Ask: CarryLine(lost)})
	}
}

// CarryLine is what to ask a child who lost so much of a sum: the ten, or the tens,
// that its ones make, the hundred or hundreds that its tens make, or one of each.
func CarryLine(lost int) phrase.Line {
	end := "both"
	switch {
	case lost == 10:
		end = "hint"
	case lost < 100:
		end = "tens"
	case lost == 100:
		end = "hundred"
	case lost%100 == 0:
		end = "hundreds"
	}
	return phrase.Say("mistake.carry-dropped." + end)
}

// join puts the results of the places together, at once where every place
// keeps its own digit, else one after the other, and writes the chain. Places
// where nothing is left are joined only where the last step would not show the
// answer (40 + 0 = 40), and not written in the chain.
func (w *working) join(split problem.Expression, results []int) {
	sides := []problem.Expression{split, sumOf(results)}
	if last := w.way.Steps[len(w.way.Steps)-1].Equation.Sides(); last[1].Value() == w.way.Calculation.Value() {
		results = nil
	}
	for len(results) > 1 {
		n := 2
		if separate(results) {
			n = len(results)
		}
		q := made(results[:n]...)
		sum := q.Sides()[1].Value()
		w.step("join", q, number("Sum", sum))
		results = append([]int{sum}, results[n:]...)
		sides = append(sides, sumOf(results))
	}
	w.chain(sides...)
}

// separate reports whether no two of the numbers share a place: 300 + 20 + 4.
func separate(numbers []int) bool {
	var taken [len(placeIDs)]bool
	for _, n := range numbers {
		for place, v := range problem.PlacesOf(n) {
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
	return problem.Sum(slices.DeleteFunc(slices.Clone(numbers), func(n int) bool { return n == 0 })...)
}
