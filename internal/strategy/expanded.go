package strategy

import "homebuild/internal/problem"

// expandedFits wants numbers past 20: below, there is nothing to set out in
// tens and ones that a shorter way does not do better.
func expandedFits(c problem.Calculation) bool {
	if c.Largest() <= 20 {
		return false
	}
	if c.Op == problem.Minus {
		return isDifference(c) && c.Numbers[1] > 0 && c.Value() > 0
	}
	parts := 0
	for _, n := range c.Numbers {
		if n > 0 {
			parts++
		}
	}
	return parts > 1
}

func expanded(c problem.Calculation, w *working) {
	if c.Op == problem.Minus {
		w.expandedDifference(c.Numbers[0], c.Numbers[1])
		return
	}
	w.expandedSum(c)
}

// expandedSum adds from the ones up and regroups what passes ten: 6 + 7 = 13,
// 13 = 10 + 3, 50 + 30 + 10 = 90, 90 + 3 = 93.
func (w *working) expandedSum(c problem.Calculation) {
	var results places
	carried := 0
	for place := onesPlace; place <= hundredsPlace; place++ {
		found := parts(c, place)
		if carried > 0 {
			found = append(found, carried)
		}
		total := problem.Sum(found...).Value()
		if len(found) > 1 {
			w.step(placeIDs[place], made(found...), number("Sum", total))
		}
		results[place], carried = total, 0
		if place != hundredsPlace {
			results[place] = placesOf(total)[place]
			carried = total - results[place]
		}
		if carried > 0 && results[place] > 0 {
			w.step("regroup-"+placeIDs[place], parted(carried, results[place]),
				number("Sum", total), number("Up", carried), number("Stays", results[place]))
		}
	}
	var long []int
	for _, n := range c.Numbers {
		long = append(long, filled(placesOf(n))...)
	}
	w.joinColumns(problem.Sum(long...), places{}, results)
}

// expandedDifference opens a ten or a hundred first where a place has too
// little: 65 = 50 + 15, then 15 - 9 = 6, 50 - 40 = 10, 10 + 6 = 16.
func (w *working) expandedDifference(a, b int) {
	p, q := placesOf(a), placesOf(b)
	w.open(a, &p, q)
	var results places
	long := problem.Sum(filled(p)...)
	for place := onesPlace; place <= hundredsPlace; place++ {
		results[place] = p[place] - q[place]
		if q[place] > 0 {
			w.step("take-"+placeIDs[place], left(p[place], q[place]), number("Rest", results[place]))
		}
	}
	for _, n := range filled(q) {
		long = append(long, problem.Term{Op: problem.Minus, Value: n})
	}
	w.joinColumns(long, p, results)
}

// open moves a ten to the ones and a hundred to the tens as q needs it; a
// hundred is opened for the ones where there is no ten.
func (w *working) open(a int, p *places, q places) {
	if p[onesPlace] < q[onesPlace] {
		id := "open-ten"
		if p[tensPlace] == 0 {
			id = "open-hundred-for-ones"
			p[hundredsPlace] -= 100
			p[tensPlace] += 100
		}
		p[tensPlace] -= 10
		p[onesPlace] += 10
		w.step(id, parted(filled(*p)...), number("A", a))
	}
	if p[tensPlace] < q[tensPlace] {
		p[hundredsPlace] -= 100
		p[tensPlace] += 100
		w.step("open-hundred", parted(filled(*p)...), number("A", a))
	}
}

// filled lists the places that are not zero, the largest first.
func filled(p places) []int {
	var found []int
	for place := hundredsPlace; place >= onesPlace; place-- {
		if p[place] > 0 {
			found = append(found, p[place])
		}
	}
	return found
}

// joinColumns joins the results of the columns that were used.
func (w *working) joinColumns(long problem.Expression, used, results places) {
	var found []int
	for place := hundredsPlace; place >= onesPlace; place-- {
		if used[place] > 0 || results[place] > 0 {
			found = append(found, results[place])
		}
	}
	if len(found) > 1 {
		q := made(found...)
		w.step("join", q, number("Sum", q.Sides()[1].Value()))
	}
	w.chain(long, sumOf(found))
}
