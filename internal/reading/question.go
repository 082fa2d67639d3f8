package reading

import "slices"

// question reads the sentence that asks; what stands before its "how many" may
// tell something, too.
func (s *scene) question(tokens []token, at int) (asks, []fact) {
	r := s.r
	var told []fact
	if before := tokens[:at]; len(before) > 0 {
		told = s.facts(before)
	}
	n := r.cues.phrase("question", tokens, at)
	q := r.amount(tokens, at, at+n)
	rest := tokens[q.end:]
	if i := r.condition(rest); i >= 0 {
		told = append(told, s.facts(rest[i:])...)
		rest = rest[:i]
	}
	a := asks{goal: -1, noun: q.noun, adj: q.adj, fewer: q.fewer, total: r.cues.says("total", tokens), end: r.cues.says("end", rest)}
	amounts, verbs := r.quantities(rest)
	main := r.mainVerbs(rest, verbs)
	if again := r.another(rest); again && r.cues.says("both", rest) || again && len(amounts) == 0 {
		a.want = wantBoth
		return a, told
	}
	c := clause{tokens: rest, end: len(rest), verb: -1, amounts: amounts}
	if len(main) > 0 {
		c.verb = main[0]
		for n := 1; n < len(main) && r.helps(verbs[c.verb]) && !r.joined(rest, c.verb, main[n]); n++ {
			c.verb = main[n]
		}
		c.form = verbs[c.verb]
	} else if len(verbs) > 0 {
		for i := range rest {
			if f, ok := verbs[i]; ok {
				c.verb, c.form = i, f
			}
		}
	}
	s.asked(&a, c, q)
	return a, told
}

// condition is where a part begins that tells what happens before the answer:
// "... if she finds 6 more"; -1 for none.
func (r *Reader) condition(tokens []token) int {
	amounts, verbs := r.quantities(tokens)
	for i, t := range tokens {
		if i == 0 || !r.cues.has("condition", t.low) {
			continue
		}
		verb, number := false, false
		for j := range tokens[i:] {
			_, is := verbs[i+j]
			verb = verb || is
		}
		for _, q := range amounts {
			number = number || q.start > i && q.numeral >= 0
		}
		if verb && number {
			return i
		}
	}
	return -1
}

// helps reports whether a verb can stand beside another one.
func (r *Reader) helps(f form) bool { return f.class == help || f.base == "be" || f.base == "have" }

// another reports whether a second "how many" follows.
func (r *Reader) another(tokens []token) bool {
	for i := range tokens {
		if r.cues.phrase("question", tokens, i) > 0 {
			return true
		}
	}
	return false
}

// asked works out what is wanted.
func (s *scene) asked(a *asks, c clause, q quantity) {
	r := s.r
	p := s.split(c)
	than := slices.IndexFunc(c.tokens, func(t token) bool { return r.cues.has("than", t.low) })
	subject := p.subject
	if len(subject) == 0 || than >= 0 && than < c.verb {
		subject = p.after // how many has she
	}
	if len(p.subject) == 0 && len(p.after) == 0 && c.verb < 0 {
		subject = nil
	}
	if c.form.base == "be" || c.form.class == help {
		if len(p.subject) == 0 && len(p.after) > 0 && !p.there && !r.cues.has("they", p.after[0].low) && than < 0 {
			if a.adj == "" && len(p.after) == 1 { // are red
				a.adj = p.after[0].low
			}
			subject = nil
		}
	}
	kind := s.kind(c, p)
	if than >= 0 && (q.more || q.fewer) {
		a.want = wantDifference
		a.who = s.phrase(subject, "")
		a.than = s.phrase(until(c.tokens[than+1:], func(t token) bool { return t.mark || r.cues.forms[t.low].base != "" }), a.who)
		return
	}
	a.who = s.phrase(subject, "")
	for _, at := range p.places {
		switch {
		case r.cues.has("to", at.word) && kind == give, r.cues.has("from", at.word):
		case at.word == "of":
		default:
			a.place = s.placeName(at.tokens)
		}
	}
	a.class, a.want = kind, wantAmount
	switch kind {
	case help: // asks for something that is done in a word that is not known
		a.want = wantNone
		return
	case need:
		a.want = wantMissing
		for _, x := range c.amounts {
			if x.numeral >= 0 {
				a.goal = x.numeral
			}
		}
	case gain, come, take:
		a.want, a.sign = wantChange, 1
	case lose, give:
		a.want, a.sign = wantChange, -1
	case put:
		a.want, a.sign = wantChange, 1
	}
	if c.form.base == "keep" || c.form.base == "stay" || c.form.base == "remain" {
		a.end = true
	}
	switch {
	case r.cues.says("start", c.tokens):
		a.want = wantStart
	case a.total && a.want != wantMissing:
		a.want = wantTotal
	case a.want == wantAmount && a.who == together:
		a.want = wantTotal
	}
}
