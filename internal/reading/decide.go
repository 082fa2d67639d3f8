package reading

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/problem"
)

// decider weighs what the sentences told against what the question asks.
type decider struct {
	r         *Reader
	text      Text
	facts     []fact
	ask       asks
	questions int
	beyond    string   // a word that no kind of story explains
	doubts    []string // reasons to look twice
	seen      []int    // numerals that a sentence was understood to tell
	used      []int    // numerals that the answer needs
	unclear   bool     // an amount may or may not be of what is asked for
	negated   string   // the "not" of the question
}

// sentence adds what one sentence tells or asks.
func (d *decider) sentence(s *scene, tokens []token) {
	at := -1
	for i := range tokens {
		if d.r.cues.phrase("question", tokens, i) > 0 {
			at = i
			break
		}
	}
	both := at >= 0 && d.r.cues.says("both", tokens)
	for i, t := range tokens {
		if n := d.r.cues.phrase("beyond", tokens, i); n > 0 && !both && d.beyond == "" {
			d.beyond = t.low
		}
		if d.r.cues.has("perhaps", t.low) {
			d.doubt("it says %q", t.low)
		}
		if d.r.cues.has("not", t.low) || d.r.cues.ends("not", t.low) {
			if at >= 0 { // how many are not: only the others can be asked for
				d.negated = t.low
			} else {
				d.doubt("it says %q", t.low)
			}
		}
	}
	if at < 0 {
		if len(tokens) > 0 && tokens[len(tokens)-1].low == "?" {
			d.questions += 2 // asks in words that are not known
		}
		told := s.facts(tokens)
		if amounts, _ := d.r.quantities(tokens); len(amounts) > 0 && len(told) == 0 {
			d.doubt("one sentence speaks of something that is not known")
		}
		d.facts = append(d.facts, told...)
		return
	}
	d.questions++
	ask, told := s.question(tokens, at)
	if both && d.r.cues.says("beyond", tokens) {
		ask.want = wantBoth
	}
	d.ask, d.facts = ask, append(d.facts, told...)
}

func (d *decider) doubt(text string, values ...any) {
	if text = fmt.Sprintf(text, values...); !slices.Contains(d.doubts, text) {
		d.doubts = append(d.doubts, text)
	}
}

func cannot(text string, values ...any) Reading {
	return Reading{Why: fmt.Sprintf(text, values...)}
}

// decide proposes a reading.
func (d *decider) decide(s *scene) Reading {
	switch {
	case d.beyond != "":
		return cannot("it says %q, which no kind of story here explains", d.beyond)
	case d.text.Asked >= 0 && d.markedAsk():
	case d.questions == 0:
		return cannot("no sentence asks how many")
	case d.questions > 1:
		return cannot("more than one thing is asked, or it is asked in words that are not known")
	}
	for _, f := range d.facts {
		d.seen = append(d.seen, f.numeral)
	}
	d.seen = append(d.seen, d.ask.goal)
	d.settle()
	if s.doubt != "" {
		d.doubt("%q could be more than one", s.doubt)
	}
	p, ok := d.problem()
	extra := d.extra(s)
	if !ok || s.lost || d.unclear {
		return cannot("who has how many is not clear")
	}
	if d.negated != "" && p.Kind() != problem.TogetherAddend {
		return cannot("the question says %q", d.negated)
	}
	for _, q := range p.Quantities() {
		if q.Value > Largest {
			return cannot("a number is larger than %d", Largest)
		}
	}
	out := Reading{Problem: p, Certainty: Sure, Extra: extra}
	if len(d.doubts) > 0 {
		out.Certainty, out.Why = Unsure, d.doubts[0]
	}
	return out
}

// markedAsk lets the teacher's [?] say what is asked: the amount at its place.
func (d *decider) markedAsk() bool {
	for i, f := range d.facts {
		if !f.asked {
			continue
		}
		d.ask = asks{goal: -1, who: f.who, place: f.place, noun: f.noun, adj: f.adj}
		later := slices.ContainsFunc(d.facts[i+1:], func(g fact) bool { return g.sort == change })
		switch {
		case f.sort == change:
			d.ask.want, d.ask.class, d.ask.sign = wantChange, f.class, f.sign
			return true
		case f.sort == versus:
			d.ask.want, d.ask.than, d.ask.fewer = wantDifference, f.than, f.fewer
			d.facts = slices.Delete(d.facts, i, i+1)
			return true
		case later:
			d.ask.want = wantStart
			return true
		}
		d.ask.want, d.ask.end, d.ask.total = wantAmount, f.end, f.total || f.who == together
		if d.ask.total {
			d.ask.want = wantTotal
		}
		d.facts = slices.Delete(d.facts, i, i+1)
		return true
	}
	return false
}

// settle fills in the thing that is asked for and leaves out facts about others.
func (d *decider) settle() {
	if d.ask.noun != "" && !slices.ContainsFunc(d.facts, func(f fact) bool { return d.about(f) && f.known() }) {
		if slices.ContainsFunc(d.facts, func(f fact) bool { return f.known() && f.adj == d.ask.noun }) {
			d.ask.adj, d.ask.noun = d.ask.noun, ""
		}
	}
	d.guessNoun()
	if d.ask.want == wantDifference {
		return
	}
	if !slices.ContainsFunc(d.facts, func(f fact) bool { return d.about(f) && f.known() }) {
		if d.r.cues.member(d.ask.noun) {
			d.facts = nil // others are asked about than were told of
		}
		d.doubt("is %q a word for all that is counted?", d.said(d.ask.noun))
		d.ask.noun = ""
	}
	d.facts = slices.DeleteFunc(slices.Clone(d.facts), func(f fact) bool {
		if d.about(f) {
			return false
		}
		if f.known() && d.r.cues.groups[d.ask.noun] != nil && !d.unit(f) {
			d.doubt("does %q mean the %s, too?", d.said(d.ask.noun), d.said(f.noun))
		}
		d.unclear = d.unclear || f.like && !d.again(f)
		return true
	})
	d.alike()
}

// guessNoun takes what most amounts are of, where the question does not say.
func (d *decider) guessNoun() {
	if d.ask.noun != "" {
		return
	}
	names := map[string]int{}
	for _, f := range d.facts {
		if f.known() && f.noun != "" && !d.unit(f) {
			names[f.noun]++
			if d.ask.noun == "" || names[f.noun] > names[d.ask.noun] {
				d.ask.noun = f.noun
			}
		}
	}
	if len(names) > 1 && d.ask.want != wantDifference {
		d.doubt("it is not said of what the question asks")
	}
}

// alike leaves out what is not like the thing that is asked for, where some is:
// blue pens, when red ones are asked for.
func (d *decider) alike() {
	adj := d.ask.adj
	if adj == "" || !slices.ContainsFunc(d.facts, func(f fact) bool { return f.known() && f.adj == adj && f.sort == state }) {
		return
	}
	if !slices.ContainsFunc(d.facts, func(f fact) bool { return f.adj != "" && f.adj != adj }) {
		return // they are all alike
	}
	d.facts = slices.DeleteFunc(d.facts, func(f fact) bool { return f.adj != "" && f.adj != adj })
	for _, f := range d.facts {
		if f.known() && f.adj == "" && f.sort == change {
			d.doubt("it is not said what %d are like", d.value(f))
		}
	}
}

// about reports whether a fact is about the thing that is asked for.
func (d *decider) about(f fact) bool {
	if d.unit(f) && f.noun != d.ask.noun {
		return false
	}
	n := d.ask.noun
	return n == "" || f.noun == "" || f.noun == n || d.r.cues.covers(n, f.noun) || d.r.cues.covers(f.noun, n)
}

// said is a noun as the story writes it, where a stem is not a word itself.
func (d *decider) said(noun string) string {
	if !d.r.cues.nounFirst() {
		return noun
	}
	for _, word := range strings.FieldsFunc(lower(d.text.Plain), func(c rune) bool { return !inWord(c) }) {
		if d.r.cues.stem(word) == noun {
			return word
		}
	}
	return noun
}

// again reports whether the noun of an amount is that of another one, too.
func (d *decider) again(f fact) bool {
	return slices.ContainsFunc(d.facts, func(g fact) bool { return g.noun == f.noun && g.numeral != f.numeral })
}

func (d *decider) unit(f fact) bool { return d.r.cues.stems["seldom"][f.noun] }

// value is the number of a fact.
func (d *decider) value(f fact) int { return d.text.Numerals[f.numeral].Value }

// make makes a problem of facts in the order in which the kind tells them.
func (d *decider) make(kind problem.Kind, facts ...fact) (problem.Problem, bool) {
	var told []int
	for _, f := range facts {
		if !f.known() {
			return problem.Problem{}, false
		}
		told = append(told, d.value(f))
		d.used = append(d.used, f.numeral)
	}
	p, err := fromTold(kind, told...)
	return p, err == nil
}

// extra lists the numbers that are not needed, and doubts where one looks as if
// it were.
func (d *decider) extra(s *scene) []Numeral {
	var out []Numeral
	for i, n := range d.text.Numerals {
		if slices.Contains(d.used, i) || !d.r.counts(d.text, i) || n.Word && n.Value == 1 {
			continue
		}
		out = append(out, n)
		if !slices.Contains(d.seen, i) {
			d.doubt("what %d tells is not clear", n.Value)
			d.unclear = d.unclear || !n.Word
		}
		for _, f := range d.facts {
			if f.numeral == i && (f.sort == change || d.ask.who == "" || f.who == d.ask.who || f.who == "" || d.text.Marked()) {
				d.doubt("%d is told and not needed", n.Value)
				d.unclear = d.unclear || f.sort == change && !slices.Contains(s.owners, f.who)
			}
		}
	}
	return out
}

func (d *decider) problem() (problem.Problem, bool) {
	if i := slices.IndexFunc(d.facts, func(f fact) bool { return f.sort == versus && f.known() }); i >= 0 {
		return d.compared(d.facts[i])
	}
	switch d.ask.want {
	case wantDifference:
		return d.difference()
	case wantStart:
		return d.started()
	case wantChange:
		return d.changed()
	case wantTotal:
		return d.whole()
	case wantBoth:
		return d.parted()
	case wantMissing:
		return d.missing()
	case wantAmount:
		if p, ok := d.part(); ok {
			return p, ok
		}
		d.used = nil
		return d.left()
	}
	return problem.Problem{}, false
}
