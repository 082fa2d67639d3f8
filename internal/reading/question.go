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
	a.who = s.phrase(s.askedAbout(a, c, p, than), "")
	if than >= 0 && (q.more || q.fewer) {
		a.want = wantDifference
		a.than = s.phrase(until(c.tokens[than+1:], func(t token) bool { return t.mark || r.cues.forms[t.low].base != "" }), a.who)
		return
	}
	a.class = s.kind(c, p)
	for _, at := range p.places {
		if at.word != "of" && !r.cues.has("from", at.word) && (a.class != give || !r.cues.has("to", at.word)) {
			a.place = s.placeName(at.tokens)
		}
	}
	a.want, a.sign = wants(a.class)
	for _, x := range c.amounts {
		if a.want == wantMissing && x.numeral >= 0 {
			a.goal = x.numeral
		}
	}
	a.end = a.end || c.form.base == "keep" || c.form.base == "stay" || c.form.base == "remain"
	switch {
	case a.want == wantNone || a.want == wantMissing:
	case r.cues.says("start", c.tokens):
		a.want = wantStart
	case a.total, a.want == wantAmount && a.who == together:
		a.want = wantTotal
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
		(c.form.base == "be" || c.form.class == help) && !p.there && !s.r.cues.has("they", p.after[0].low) && than < 0 {
		if a.adj == "" && len(p.after) == 1 {
			a.adj = p.after[0].low
		}
		return nil
	}
	return p.after
}
