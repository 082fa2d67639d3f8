package reading

import "strings"

// clause tells what a part of a sentence says about its amounts.
func (s *scene) clause(c clause) []fact {
	p := s.split(c)
	kind := s.kind(c, p)
	subject := s.phrase(p.subject, "")
	if len(p.subject) == 1 && p.clitic != "" && s.r.cues.has("they", p.subject[0].low) {
		subject = somebody // "on lui donne 3"
	}
	acts := subject != ""
	if !acts && !s.itself(c, p) && !p.there {
		subject = s.leftOut(c.form, p) // "... and eats 3"
	}
	to := s.indirect(p, subject)
	s.lost = s.lost || !acts && p.clitic != "" && s.several("") && len(c.amounts) > 0 && !s.itself(c, p) && s.doubt != ""
	var out []fact
	base := fact{class: kind, who: subject, start: p.start, end: p.end, total: p.total, moves: !acts && s.itself(c, p)}
	for i := range c.amounts {
		out = append(out, s.fact(base, c, p, i, to))
	}
	if acts && subject != somebody && (to == "" || to != s.who) {
		s.who = subject
	}
	for _, f := range out {
		if f.sort != versus && f.who != "" {
			s.last = f.who
		}
		if f.place != "" && f.who == "" {
			s.last = f.place
		}
		s.owns(f)
	}
	return out
}

// fact is what a clause tells of one of its amounts.
func (s *scene) fact(f fact, c clause, p parts, i int, to string) fact {
	f.quantity = c.amounts[i]
	f.moves = f.moves || f.quantity.start < c.verb
	s.places(&f, c, p, i)
	if f.moves {
		f.who = ""
		if i > 0 && c.amounts[i-1].of && c.amounts[i-1].noun == "" || s.r.before(c, f.quantity, "of") {
			f.class = hold
		}
	}
	if name := s.newOwner(c, i); name != "" {
		f.who = name
	}
	s.sortOut(&f, c, p)
	f.dative(to)
	s.nouns(&f, c, i)
	return f
}

func subjectAmount(c clause) bool { return len(c.amounts) > 0 && c.amounts[0].start < c.verb }

// itself reports whether what is counted is the subject: "5 balloons pop",
// "llegan 4", "se rompen 3".
func (s *scene) itself(c clause, p parts) bool {
	return subjectAmount(c) || len(c.amounts) > 0 && (c.form.own || p.reflexive && c.form.person == they && c.form.class == lose)
}

// dative says who gains or loses by what happens: "le da 3", "le quedan 5".
func (f *fact) dative(who string) {
	if who == "" {
		return
	}
	switch f.class {
	case give, gain, put, come:
		f.to = who
	case lose, take:
		f.from = who
	case hold, need:
		f.who = who
	}
}

// before reports whether a word of a list stands before an amount, with determiners
// between.
func (r *Reader) before(c clause, q quantity, list string) bool {
	i := q.start - 1
	for i >= c.start && r.cues.has("determiners", c.tokens[i].low) {
		i--
	}
	return i >= c.start && r.cues.has(list, c.tokens[i].low)
}

// kind is what the verb does here, with the small word after it.
func (s *scene) kind(c clause, p parts) class {
	kind := c.form.class
	moved := subjectAmount(c) || kind == move || kind == give || kind == put || s.r.cues.is("parting", c.form) || len(c.amounts) > 0 && p.particle == lose
	if p.particle != "" && kind != hold && kind != lose && moved {
		switch {
		case kind == take && p.particle != lose:
		case kind == give && p.particle == come:
		case kind == put && p.particle == come:
		case kind == take: // takes 3 out, takes 3 away, takes 3 home
		case kind == gain && !subjectAmount(c) && p.particle == come:
		default:
			kind = p.particle
		}
	}
	if kind == hold && p.particle == lose && subjectAmount(c) && !s.r.helps(c.form) && !s.r.cues.is("stay", c.form) {
		kind = lose // 5 ducks swim away
	}
	if p.passive && (kind == lose || kind == gain) && s.r.cues.ends("lasting", c.tokens[c.verb].low) && p.particle == "" {
		kind = hold // 8 candles are burning
	}
	if p.passive && kind == give { // was given 6
		kind = gain
	}
	return kind
}

// places notes where and from whom to whom.
func (s *scene) places(f *fact, c clause, p parts, i int) {
	from, until := c.start, c.end
	if i > 0 {
		from = c.amounts[i].start
	}
	if i+1 < len(c.amounts) {
		until = c.amounts[i+1].start
	}
	var here []place
	for _, at := range p.places {
		if at.at >= from && at.at < until || i > 0 && at.at < c.verb && at.at < c.amounts[0].start {
			here = append(here, at)
		}
	}
	for _, at := range p.times {
		if at.at >= from && at.at < until {
			f.time = at.word
		}
	}
	if len(here) == 0 && i+1 < len(c.amounts) && !p.hasThan && len(p.places) == 1 && f.class != give {
		here = p.places // "8 red and 5 blue kites in the shop"
	}
	for _, at := range here {
		who := s.r.cues.has("to", at.word) && (f.class == give)
		switch {
		case p.clitic != "" && s.r.cues.has("to", at.word): // that is whom the clitic means
		case s.r.cues.has("to", at.word) && f.class == hold && f.moves && s.known(at.tokens):
			f.belongs = s.phrase(at.tokens, "")
		case s.r.cues.has("from", at.word):
			f.from = s.phrase(at.tokens, f.who)
		case who:
			f.to = s.phrase(at.tokens, f.who)
		case s.r.cues.has("into", at.word) || s.r.cues.has("places", at.word) && !s.r.cues.has("of", at.word) && !s.r.cues.has("no-place", at.word):
			f.place = s.placeName(at.tokens)
		}
	}
	if f.class == give && len(p.after) > 0 {
		f.to = s.phrase(p.after, f.who)
	}
	if f.class == give && len(p.after) == 0 && f.to == "" && i > 0 {
		return
	}
	if f.place == "" && f.class == put {
		f.place = s.place
	}
	if f.place != "" {
		s.place = f.place
	}
}

// placeName is a place without its determiner; "it" is the last one.
func (s *scene) placeName(tokens []token) string {
	var words []string
	for _, t := range tokens {
		switch {
		case s.r.cues.has("it", t.low) && len(tokens) == 1 || s.r.cues.has("itself", t.low):
			return s.place
		case s.r.cues.has("determiners", t.low):
		default:
			words = append(words, s.r.cues.owner(t.low))
		}
	}
	return strings.Join(words, " ")
}

// newOwner is the name that stands before a later amount: "Omar has 9 and Lina 5".
func (s *scene) newOwner(c clause, i int) string {
	if i == 0 {
		return ""
	}
	at := c.amounts[i].start - 1
	if at > c.amounts[i-1].end-1 && at > c.verb && c.tokens[at].capital && at > 0 && (s.r.cues.has("and", c.tokens[at-1].low) || c.tokens[at-1].mark) {
		return s.phrase(c.tokens[at:at+1], "")
	}
	return ""
}

// sortOut says what the clause tells about the amount, and for whom.
func (s *scene) sortOut(f *fact, c clause, p parts) {
	f.sort = change
	switch {
	case p.hasThan && (f.more || f.fewer):
		s.versus(f, c, p)
	case f.fewer, f.more && f.class == hold && !f.moves: // than whom is not said
		f.sort = versus
	case f.class == hold:
		f.sort = state
		if f.moves || p.there {
			f.who = f.belongs
			if f.adj == "" && f.noun == "" || f.of || f.rest || f.place == "" {
				f.predicate(s.r, c)
			}
		}
		if s.r.cues.is("keep", c.form) {
			f.end = true
		}
	case f.class == need:
		f.sort = goal
	case f.class == gain, f.class == come, f.class == take:
		f.sign = 1
	case f.class == lose, f.class == give:
		f.sign = -1
	case f.class == put:
		f.sign = 1
		if f.place == "" {
			f.sign = 0
		}
	case f.class == move:
		f.sign = 0
	}
}

// versus says who is compared with whom.
func (s *scene) versus(f *fact, c clause, p parts) {
	f.sort = versus
	f.than = s.phrase(p.than, f.who)
	if f.moves {
		f.who = s.phrase(p.subject, f.than)
	}
	if f.who == "" && s.r.cues.is("be", c.form) && !p.there && f.quantity.start > c.verb { // "soit 6 de plus qu'Omar"
		f.who = s.it(f.than)
	}
}

// predicate reads "8 are red".
func (f *fact) predicate(r *Reader, c clause) {
	if !r.cues.is("be", c.form) || f.end {
		return
	}
	if i := c.verb + 1; i < c.end && f.quantity.start < c.verb {
		t := c.tokens[i]
		if !t.mark && !t.number() && !r.cues.has("places", t.low) && !r.cues.has("adverbs", t.low) && !r.cues.has("determiners", t.low) && !r.cues.has("not", t.low) {
			f.adj = r.cues.quality(t.low)
		}
	}
}

// nouns carries the thing over where a sentence leaves it out: "5 red and 3 blue
// kites", "finds 6 more".
func (s *scene) nouns(f *fact, c clause, i int) {
	before := !s.r.cues.nounFirst()
	if !before && i > 0 && f.noun != "" && f.adj == "" {
		f.like = c.amounts[i-1].adj != ""
	}
	if f.noun == "" || before && i+1 < len(c.amounts) && c.amounts[i].end+1 == c.amounts[i+1].start && f.adj == "" && c.amounts[i+1].adj != "" && f.noun != c.amounts[i+1].noun {
		later := ""
		for _, q := range c.amounts[i+1:] {
			if later == "" && q.noun != "" {
				later = q.noun
			}
		}
		switch {
		case f.noun != "": // "5 red and 3 blue kites"
			f.adj, f.noun = f.noun, later
		case later != "" && i+1 < len(c.amounts) && !f.of && !f.more && s.noun == "":
			f.noun = later
		default:
			f.noun = s.noun
		}
	}
	if f.noun != "" {
		s.noun = f.noun
	}
}
