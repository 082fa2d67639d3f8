package reading

import "homebuild/internal/problem"

// difference is how many more one has than another.
func (d *decider) difference() (problem.Problem, bool) {
	known, happens := d.amounts()
	a, b := -1, -1
	for i, f := range known {
		switch {
		case d.named(f, d.ask.who) || d.ask.who == "" && (d.named(f, d.ask.adj) || f.noun == d.ask.noun && !d.named(f, d.ask.than)):
			if !d.named(f, d.ask.than) || a < 0 && d.named(f, d.ask.who) && f.who == d.ask.who {
				a = i
			}
		case d.named(f, d.ask.than):
			b = i
		}
	}
	if d.other(known, &a, &b); a < 0 || b < 0 || a == b || len(happens) > 0 {
		return no, false
	}
	kind, bigger, smaller := problem.DifferenceMore, known[a], known[b]
	if d.ask.fewer {
		kind, bigger, smaller = problem.DifferenceFewer, known[b], known[a]
	}
	if d.value(bigger) < d.value(smaller) {
		return no, false
	}
	return d.make(kind, bigger, smaller)
}

// other takes the other of two amounts where only one is named.
func (d *decider) other(known []fact, a, b *int) {
	if len(known) != 2 || (*a < 0) == (*b < 0) {
		return
	}
	if d.ask.want == wantDifference && d.ask.who != "" {
		d.doubt("who is compared with whom is not clear")
	}
	if *a < 0 {
		*a = 1 - *b
	} else {
		*b = 1 - *a
	}
}

// compared is an amount that is told by its difference to another.
func (d *decider) compared(v fact) (problem.Problem, bool) {
	known, happens := d.amounts()
	if len(happens) > 0 {
		return no, false
	}
	if d.ask.want == wantChange && d.ask.sign > 0 { // how many pages did he read
		d.ask.want = wantAmount
	}
	subject, other := d.sides(v, known)
	tells, knows := -1, ""
	for i, f := range known {
		switch {
		case d.named(f, subject):
			tells, knows = i, subject
		case d.named(f, other):
			tells, knows = i, other
		}
	}
	if tells < 0 || subject == other || other == "" {
		return no, false
	}
	bigger := v.more == (knows == other) // the one that is not told
	if d.ask.want == wantTotal {
		if !bigger || len(known) > 1 {
			return no, false
		}
		if v.fewer {
			d.doubt("the bigger amount is told by what is fewer")
		}
		return d.make(problem.BiggerThenTogether, known[tells], v)
	}
	wanted := subject
	if knows == subject {
		wanted = other
	}
	if !d.asksFor(wanted, known[tells]) {
		return no, false
	}
	kinds := map[[2]bool]problem.Kind{
		{true, true}: problem.BiggerMore, {true, false}: problem.BiggerFewer,
		{false, true}: problem.SmallerMore, {false, false}: problem.SmallerFewer,
	}
	return d.make(kinds[[2]bool{bigger, v.more}], known[tells], v)
}

// sides are whose amount is told by the difference, and to whose.
func (d *decider) sides(v fact, known []fact) (subject, other string) {
	subject, other = v.who, v.than
	if subject == "" && v.adj != "" { // 5 more red kites than blue ones
		subject = v.adj
	}
	if d.r.cues.Order.ThanUnsaid && other == "" && len(known) == 1 && known[0].who != subject && subject != "" {
		d.doubt("who is compared with whom is not clear")
		other = known[0].who
	}
	return subject, other
}

// asksFor reports whether the question can mean the one of two compared amounts
// that is not told.
func (d *decider) asksFor(wanted string, told fact) bool {
	if d.ask.want != wantAmount {
		return false
	}
	if d.ask.who == wanted || d.ask.adj == wanted || d.ask.place == wanted {
		return true
	}
	d.doubt("whose amount is asked is not clear")
	return d.ask.who == "" || !d.named(told, d.ask.who)
}
