package reading

import (
	"slices"

	"homebuild/internal/problem"
)

var no problem.Problem

// by picks a kind by the direction of a change.
func by(sign int, more, less problem.Kind) problem.Kind {
	if sign > 0 {
		return more
	}
	return less
}

// left is what is there after all that happened.
func (d *decider) left() (problem.Problem, bool) {
	a, ok := d.account()
	if !ok || len(a.after) > 0 || d.stranger() || slices.ContainsFunc(a.changes, d.wentThere) {
		return no, false
	}
	for _, c := range a.changes {
		if !c.known() {
			return no, false
		}
	}
	switch {
	case len(a.before) == 1 && len(a.changes) == 1:
		return d.make(by(a.changes[0].sign, problem.AddToResult, problem.TakeFromResult), a.before[0], a.changes[0])
	case len(a.before) == 1 && len(a.changes) == 2:
		return d.make(chains[[2]int{a.changes[0].sign, a.changes[1].sign}], a.before[0], a.changes[0], a.changes[1])
	case len(a.before) == 2 && len(a.changes) == 1 && a.changes[0].sign < 0 && a.before[0].label() != a.before[1].label():
		return d.make(problem.TogetherThenTake, a.before[0], a.before[1], a.changes[0])
	case len(a.changes) == 0 && d.ask.adj == "" && !slices.ContainsFunc(a.before, func(f fact) bool { return d.ask.place != "" && f.place != d.ask.place }):
		return d.sum(a.before)
	}
	return no, false
}

// wentThere reports whether what leaves goes to the place that is asked about.
func (d *decider) wentThere(f fact) bool {
	return f.moves && f.sign < 0 && f.place != "" && f.place == d.ask.place
}

// sum puts amounts of different sorts or places together.
func (d *decider) sum(parts []fact) (problem.Problem, bool) {
	for i, f := range parts {
		if slices.ContainsFunc(parts[:i], func(g fact) bool { return g.label() == f.label() }) {
			return no, false
		}
		if f.end != parts[0].end { // what is there now holds what was there
			return no, false
		}
		if f.rest || f.of || f.total || f.who == together || d.r.cues.covers(f.noun, d.ask.noun) {
			return no, false
		}
	}
	switch len(parts) {
	case 2:
		return d.make(problem.TogetherTotal, parts...)
	case 3:
		return d.make(problem.TogetherThree, parts...)
	}
	return no, false
}

// whole is a total.
func (d *decider) whole() (problem.Problem, bool) {
	known, happens := d.amounts()
	if len(happens) == 0 {
		return d.sum(known)
	}
	if d.ask.who == together && len(known) > 1 && !slices.ContainsFunc(happens, func(f fact) bool { return f.sign < 0 && f.to == "" }) {
		return no, false
	}
	return d.left()
}

// started is what was there at first.
func (d *decider) started() (problem.Problem, bool) {
	a, _ := d.account()
	if len(a.changes) != 1 || slices.ContainsFunc(a.before, fact.known) && len(a.after) > 0 {
		return no, false
	}
	end := a.after
	if len(end) == 0 && len(a.before) > 0 {
		end = a.before[len(a.before)-1:]
		d.doubt("the end is told before what happened")
	}
	if len(end) != 1 {
		return no, false
	}
	c := a.changes[0]
	return d.make(by(c.sign, problem.AddToStart, problem.TakeFromStart), c, end[0])
}

// changed is how many came or went.
func (d *decider) changed() (problem.Problem, bool) {
	a, ok := d.account()
	if !ok {
		return no, false
	}
	if len(a.changes) == 0 && len(a.before) == 2 && a.before[0].sort == state && a.before[1].sort == state && a.before[0].class == hold {
		a.before, a.after = a.before[:1], a.before[1:]
	}
	if len(a.after) == 0 { // nothing is told of the end: they are put together
		known, happens := d.amounts()
		if len(happens) > 0 || slices.ContainsFunc(known, func(f fact) bool { return f.sort != change }) {
			return no, false
		}
		return d.sum(known)
	}
	if len(a.before) != 1 || len(a.after) != 1 || len(a.changes) > 1 || !a.before[0].known() || !a.after[0].known() {
		return no, false
	}
	sign := d.ask.sign
	if len(a.changes) == 1 {
		if sign = a.changes[0].sign; a.changes[0].known() {
			return no, false
		}
	} else if d.ask.class == give {
		d.doubt("who gives to whom is not told")
	}
	return d.make(by(sign, problem.AddToChange, problem.TakeFromChange), a.before[0], a.after[0])
}

// part is the other part of a whole.
func (d *decider) part() (problem.Problem, bool) {
	known, happens := d.amounts()
	if len(known) != 2 || len(happens) > 0 && !slices.ContainsFunc(happens, func(f fact) bool { return f.rest }) {
		return no, false
	}
	whole, part := known[0], known[1]
	if !d.ofThose(whole, part) && !isWhole(whole, part) {
		whole, part = part, whole
	}
	if !d.ofThose(whole, part) && (!isWhole(whole, part) || isWhole(part, whole)) {
		return no, false
	}
	if d.ask.end && d.ask.adj == "" && d.ask.place == "" || d.value(part) > d.value(whole) {
		return no, false
	}
	same := d.ask.adj != "" && d.ask.adj == part.adj || d.ask.place != "" && d.ask.place == part.place && part.place != whole.place || d.ask.who != "" && d.ask.who == part.who && part.who != whole.who
	other := d.ask.adj != "" || d.ask.place != "" || d.ask.who != "" && d.ask.who != whole.who || part.of || d.ask.noun != "" && d.ask.noun != whole.noun
	if same || !other {
		return no, false
	}
	return d.make(problem.TogetherAddend, part, whole)
}

// ofThose reports whether an amount that is told by what it is like is a part of
// one told before, wherever that is: "en la caja hay 15 botones; 9 son blancos".
func (d *decider) ofThose(w, p fact) bool {
	other := d.ask.adj != "" || d.ask.noun != "" && d.ask.noun != w.noun
	return d.r.cues.nounFirst() && other && w.numeral < p.numeral && w.adj == "" && p.adj != "" && p.place == "" && !w.of && !w.rest
}

// isWhole reports whether one amount is told as a part of another.
func isWhole(w, p fact) bool {
	if w.rest || w.of {
		return false
	}
	if w.total || w.who == together {
		return !p.total && p.who != together
	}
	if p.who == "" && w.place == "" && p.place != "" {
		return true
	}
	return p.of || p.place == w.place && w.adj == "" && p.adj != ""
}

// parted is every pair that makes a whole.
func (d *decider) parted() (problem.Problem, bool) {
	known, _ := d.amounts()
	if len(known) != 1 {
		return no, false
	}
	return d.make(problem.TogetherBoth, known[0])
}

// missing is how many more are needed.
func (d *decider) missing() (problem.Problem, bool) {
	known, happens := d.amounts()
	var want []fact
	for _, f := range d.facts {
		if f.sort == goal && f.known() {
			want = append(want, f)
		}
	}
	if d.ask.goal >= 0 && len(want) == 0 {
		want = []fact{{quantity: quantity{numeral: d.ask.goal}}}
	}
	if len(known) != 1 || len(want) != 1 || len(happens) > 0 {
		return no, false
	}
	return d.make(problem.AddToChange, known[0], want[0])
}
