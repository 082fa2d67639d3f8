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
	rest := r.askedLater(tokens[q.end:], &q)
	if i := r.condition(rest); i >= 0 {
		told = append(told, s.facts(rest[i:])...)
		rest = rest[:i]
	}
	a := asks{goal: -1, noun: q.noun, adj: q.adj, total: r.cues.says("total", tokens), end: r.cues.says("end", rest)}
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
func (r *Reader) helps(f form) bool {
	return f.class == help || r.cues.is("be", f) || r.cues.is("have", f)
}

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
	than, other := s.askedOf(a, c, p)
	if than >= 0 && r.apart(c.tokens[:than], &q) {
		a.want, a.fewer = wantDifference, q.fewer
		a.than = s.phrase(other, a.who)
		return
	}
	if a.class = s.kind(c, p); r.cues.Order.ThanUnsaid && (q.more || q.fewer) && a.class == hold && a.who != "" && len(c.amounts) == 0 {
		a.want, a.fewer = wantDifference, q.fewer // than whom is not said
		return
	}
	s.askedUnsaid(a, c, p)
	for _, at := range p.places {
		if !r.cues.has("of", at.word) && !r.cues.has("from", at.word) && (a.class != give || !r.cues.has("to", at.word)) {
			a.place = s.placeName(at.tokens)
		}
	}
	a.want, a.sign = wants(a.class)
	for _, x := range c.amounts {
		if a.want == wantMissing && x.numeral >= 0 {
			a.goal = x.numeral
		}
	}
	a.end = a.end || r.cues.is("keep", c.form)
	switch {
	case a.want == wantNone || a.want == wantMissing:
	case r.cues.says("start", c.tokens):
		a.want = wantStart
	case a.total, a.want == wantAmount && a.who == together:
		a.want = wantTotal
	}
}

// askedOf works out whose amount is asked, and tells where "than" stands, -1 for
// nowhere, and the words for whose it would be compared with.
func (s *scene) askedOf(a *asks, c clause, p parts) (than int, other []token) {
	r := s.r
	than = slices.IndexFunc(c.tokens, func(t token) bool { return r.cues.has("than", t.low) })
	about := s.askedAbout(a, c, p, than)
	if than >= 0 {
		other = until(c.tokens[than+1:], func(t token) bool { return t.mark || r.cues.forms[t.low].base != "" })
		if than < c.verb && len(other) > 1 && s.known(other[:1]) { // "plus qu'Omar Lina a-t-elle"
			about, other = other[1:], other[:1]
		}
	}
	a.who = s.phrase(about, "")
	if a.adj != "" && slices.ContainsFunc(c.tokens, func(t token) bool { return r.cues.has("not", t.low) }) {
		a.adj = "not " + a.adj // those that are otherwise
	}
	return than, other
}

// askedLater takes the thing that is asked for out of the words after the verb,
// where it is not said before: "combien reste-t-il de pommes".
func (r *Reader) askedLater(rest []token, q *quantity) []token {
	for i, t := range rest {
		if q.noun != "" || !r.cues.has("asked-later", t.low) || i+1 == len(rest) || r.nounsAfter(rest, i+1) == i+1 {
			continue
		}
		later := r.amount(rest, i+1, i+1)
		q.noun, q.adj = later.noun, later.adj
		q.more, q.fewer = q.more || later.more, q.fewer || later.fewer
		return slices.Concat(rest[:i], rest[later.end:])
	}
	return rest
}

// apart reports whether more or fewer than something is asked for; the word for
// it may stand apart from the thing, straight before "than".
func (r *Reader) apart(before []token, q *quantity) bool {
	for i := range before {
		apart := quantity{}
		if r.relation(before, i, &apart) == len(before) {
			q.more, q.fewer = q.more || apart.more, q.fewer || apart.fewer
		}
	}
	return q.more || q.fewer
}

// askedUnsaid works out whose amount is asked where the question leaves it out:
// "¿cuántas tiene?", "¿cuántas le quedan?".
func (s *scene) askedUnsaid(a *asks, c clause, p parts) {
	r := s.r
	switch {
	case a.who != "" || a.adj != "" && r.cues.is("be", c.form):
	case p.clitic != "":
		if a.class == hold || a.class == need {
			a.who = s.indirect(p, "")
		}
	case a.class == hold && c.form.own:
		for _, at := range p.places {
			if r.cues.has("to", at.word) && s.known(at.tokens) {
				a.who = s.phrase(at.tokens, "")
			}
		}
	case r.cues.Order.LeftOut && c.verb >= 0 && !c.form.own && !p.there && !r.cues.is("be", c.form) && c.form.class != help:
		a.who = s.leftOut(c.form, p)
	}
}

// wants is what a question asks for by its verb alone. A verb that only helps
// asks for something that is done in a word that is not known.
func wants(kind class) (want, int) {
	switch kind {
	case help:
		return wantNone, 0
	case need:
		return wantMissing, 0
	case gain, come, take, put:
		return wantChange, 1
	case lose, give:
		return wantChange, -1
	}
	return wantAmount, 0
}

// askedAbout are the words for whose amount is asked: before the verb, or after
// it in "how many has she". In "how many are red" the word says what they are
// like instead.
func (s *scene) askedAbout(a *asks, c clause, p parts, than int) []token {
	if len(p.subject) > 0 && (than < 0 || than > c.verb) {
		return p.subject
	}
	if len(p.subject) == 0 && len(p.after) > 0 && s.r.cues.forms[p.after[0].low].base == "" &&
		(s.r.cues.is("be", c.form) || c.form.class == help) && !p.there && !s.r.cues.has("they", p.after[0].low) && than < 0 {
		if a.adj == "" && len(p.after) == 1 {
			a.adj = s.r.cues.quality(p.after[0].low)
		}
		return nil
	}
	if r := s.r; c.form.own && len(p.subject) == 0 && len(p.after) == 1 && !p.after[0].capital && !r.pronoun(p.after[0].low) && !s.known(p.after) {
		a.adj = r.cues.quality(p.after[0].low) // "siguen encendidas"
		return nil
	}
	return p.after
}
