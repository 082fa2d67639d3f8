package reading

import (
	"slices"
	"strings"

	"homebuild/internal/problem"
)

// label tells amounts of one story apart.
func (f fact) label() string {
	return strings.Join([]string{f.who, f.place, f.adj, f.noun, f.time}, "|")
}

// named reports whether a word means this amount: its owner, place, thing or
// what it is like.
func (d *decider) named(f fact, label string) bool {
	if label == "" {
		return false
	}
	words := strings.Fields(label)
	last, adj := d.r.cues.nounPhrase(words)
	return f.who == label || f.place == label || f.adj == label || f.time == label ||
		f.noun == last && (adj == "" || adj == f.adj) || len(words) > 1 && f.adj != "" && f.adj == adj
}

// amounts are the known amounts of a story in which nothing happens to them:
// what somebody has, or finds when nothing was told before.
func (d *decider) amounts() (known []fact, happens []fact) {
	for _, f := range d.facts {
		first := f.sort == change && f.sign > 0 && !f.more && !f.of
		for _, g := range known {
			if f.who == g.who && (g.sort == state || g.label() == f.label()) || f.who == "" {
				first = false
			}
		}
		if f.class == take || f.to != "" || f.from != "" {
			first = false
		}
		switch {
		case f.known() && (f.sort == state || first):
			known = append(known, f)
		case f.sort == change:
			happens = append(happens, f)
		}
	}
	return known, happens
}

// account is the story of one holder's amount.
type account struct {
	before, after []fact // states before and after the first change
	changes       []fact // with the sign that they have here
}

// holder says whose amount the question is about: "" for the only one.
func (d *decider) holder() string {
	for _, h := range []string{d.ask.who, d.ask.place} {
		if h == "" || h == together {
			continue
		}
		for _, f := range d.facts {
			if f.sort == state && (f.who == h || f.place == h) {
				return h
			}
		}
	}
	return ""
}

// stranger reports whether somebody is asked about of whom nothing was told.
func (d *decider) stranger() bool {
	h := d.ask.who
	return h != "" && h != together && (d.gets(h) || !slices.ContainsFunc(d.facts, func(f fact) bool { return f.who == h || f.place == h || f.to == h || f.from == h }))
}

// gets reports whether somebody is given some of what others have, and it is not
// told how many there were before.
func (d *decider) gets(who string) bool {
	given, others := false, false
	for _, f := range d.facts {
		given = given || f.sort == change && (f.to == who || f.from == who) && f.who != who
		others = others || f.sort == state && f.who != "" && f.who != who
		if f.sort == state && (f.who == who || f.place == who) {
			return false
		}
	}
	return given && others
}

// account gathers what happens to a holder's amount.
func (d *decider) account() (account, bool) {
	h := d.holder()
	var a account
	person := false
	for _, f := range d.facts {
		person = person || f.sort == state && f.who == h && d.acts(h)
	}
	owner := h
	for _, f := range d.facts {
		switch f.sort {
		case state:
			if h != "" && f.who != h && f.place != h && (f.who != "" || f.place != "" && !person) {
				continue
			}
			if h == "" {
				if who := f.holder(); who != "" && owner != "" && who != owner {
					d.doubt("more than one has some")
				} else if who != "" {
					owner = who
				}
				person = person || d.acts(f.who)
			}
			if len(a.changes) == 0 {
				a.before = append(a.before, f)
			} else {
				a.after = append(a.after, f)
			}
		case change:
			of := owner
			if of == "" && len(a.before)+len(a.changes) == 0 {
				of = f.who
			}
			f.sign = d.effect(f, of, person)
			if f.sign == 0 {
				continue
			}
			if f.sign > 0 && len(a.before)+len(a.changes) == 0 && f.known() && !f.more && !f.start && f.to == "" && d.ask.want != wantStart {
				f.sort = state // what was found first is what is there
				a.before = append(a.before, f)
				if f.who != "" {
					owner, person = f.who, true
				}
				continue
			}
			a.changes = append(a.changes, f)
		}
	}
	return a, len(a.before)+len(a.after) > 0
}

// acts reports whether a holder can do something: Lina, not a jar.
func (d *decider) acts(who string) bool {
	words := strings.Fields(who)
	return len(words) > 0 && !d.r.cues.stems["containers"][d.head(words)]
}

// head is the noun among the words for a holder.
func (d *decider) head(words []string) string {
	noun, _ := d.r.cues.nounPhrase(words)
	return noun
}

func (f fact) holder() string {
	if f.who != "" {
		return f.who
	}
	return f.place
}

// effect is what a change does to a holder's amount: 1, -1, or 0 for nothing.
func (d *decider) effect(f fact, owner string, person bool) int {
	switch {
	case f.to != "" && f.to == owner:
		return 1
	case f.from != "" && f.from == owner:
		return -1
	case f.class == put && f.place != "" && f.place == owner:
		return 1
	case f.who != "" && f.who == owner:
		if f.class == put {
			return -1
		}
		if f.class == gain && f.of { // some of what was there, not more
			d.doubt("where these come from is not clear")
			return -1
		}
		return f.sign
	case f.who == "": // the things themselves move
		if f.place != "" && owner != "" && !person && f.place != owner && f.sign > 0 && f.class != gain {
			return 0
		}
		return f.sign
	case owner == "" && f.class == put:
		return 1
	case person:
		if f.class == lose && (f.of || d.ask.end) || f.of && f.sign > 0 {
			return -1
		}
		return 0
	case f.class == lose, f.class == take, f.class == give:
		return -1
	case f.class == gain:
		if f.more {
			d.doubt("where what %s gets comes from is not clear", f.who)
		}
		return -1
	case f.class == come, f.class == put:
		return 1
	}
	return 0
}

// signs picks the kind of a row of changes.
var chains = map[[2]int]problem.Kind{
	{1, 1}: problem.AddThenAdd, {1, -1}: problem.AddThenTake, {-1, 1}: problem.TakeThenAdd, {-1, -1}: problem.TakeThenTake,
}
