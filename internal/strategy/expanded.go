package strategy

import (
	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// expanded sets a calculation out in columns of hundreds, tens and ones. It
// wants numbers past 20: below, there is nothing to set out that a shorter way
// does not do better. Four numbers would be too tall a sheet.
var expanded = method{
	id:    "expanded",
	grade: 2,
	fits: func(c problem.Calculation) bool {
		if c.Largest() <= 20 {
			return false
		}
		if c.Op == problem.Minus {
			return isDifference(c) && c.Numbers[1] > 0 && c.Value() > 0
		}
		return len(sumOf(c.Numbers)) > 1 && len(c.Numbers) < 4
	},
	work: func(c problem.Calculation, w *working) {
		if c.Op == problem.Minus {
			w.expandedDifference(c.Numbers[0], c.Numbers[1])
		} else {
			w.expandedSum(c)
		}
		w.hint("hint")
		w.carriesDropped()
		w.show(picture.Expanded(c))
	},
	variant: withHundreds("expanded-hundreds", "expanded"),
}

// expandedSum adds from the ones up and regroups what passes ten: 6 + 7 = 13,
// 13 = 10 + 3, 50 + 30 + 10 = 90, 90 + 3 = 93.
func (w *working) expandedSum(c problem.Calculation) {
	var results problem.Places
	carried := 0
	for place, id := range placeIDs {
		found := parts(c, place)
		if carried > 0 {
			found = append(found, carried)
		}
		total := problem.Sum(found...).Value()
		if len(found) > 1 {
			w.step(id, made(found...), number("Sum", total))
		}
		results[place], carried = total, 0
		if place != problem.HundredsPlace {
			results[place] = problem.PlacesOf(total)[place]
			carried = total - results[place]
		}
		if carried > 0 && results[place] > 0 {
			w.step("regroup-"+id, parted(carried, results[place]),
				number("Sum", total), number("Up", carried), number("Stays", results[place]))
		}
	}
	var long []int
	for _, n := range c.Numbers {
		long = append(long, problem.PlacesOf(n).Filled()...)
	}
	w.joinColumns(problem.Sum(long...), problem.Places{}, results)
}

// expandedDifference opens a ten or a hundred first where a place has too
// little: 65 = 50 + 15, then 15 - 9 = 6, 50 - 40 = 10, 10 + 6 = 16.
func (w *working) expandedDifference(a, b int) {
	p, q := problem.PlacesOf(a), problem.PlacesOf(b)
	for place, id := range []string{"open-ten", "open-hundred"} {
		if p[place] >= q[place] {
			continue
		}
		if place == problem.OnesPlace && p[problem.TensPlace] == 0 {
			id = "open-hundred-for-ones"
		}
		p = p.Open(place)
		w.step(id, parted(p.Filled()...), number("A", a))
	}
	results := p.Minus(q)
	for place, id := range placeIDs {
		if q[place] > 0 {
			w.step("take-"+id, left(p[place], q[place]), number("Rest", results[place]))
		}
	}
	long := problem.Sum(p.Filled()...)
	for _, n := range q.Filled() {
		long = append(long, problem.Term{Op: problem.Minus, Value: n})
	}
	w.joinColumns(long, p, results)
}

// joinColumns joins the results of the columns that were used.
func (w *working) joinColumns(long problem.Expression, used, results problem.Places) {
	var found []int
	for place := problem.HundredsPlace; place >= problem.OnesPlace; place-- {
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
