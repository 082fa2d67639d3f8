package reading

import (
	"slices"
)

// clause is a part of a sentence with one verb that matters.
type clause struct {
	tokens     []token
	start, end int // in the sentence
	verb       int
	form       form
	amounts    []quantity
}

// facts reads a sentence that tells.
func (s *scene) facts(tokens []token) []fact {
	amounts, verbs := s.r.quantities(tokens)
	var out []fact
	for _, c := range s.r.clauses(tokens, amounts, verbs) {
		out = append(out, s.clause(c)...)
	}
	return out
}

// clauses cuts a sentence so that each part has one main verb.
func (r *Reader) clauses(tokens []token, amounts []quantity, verbs map[int]form) []clause {
	main := r.mainVerbs(tokens, verbs)
	var out []clause
	start := 0
	for n, v := range main {
		end := len(tokens)
		if n+1 < len(main) {
			end = r.border(tokens, v, main[n+1])
		}
		c := clause{tokens: tokens, start: start, end: end, verb: v, form: verbs[v]}
		for _, q := range amounts {
			if q.start >= start && q.start < end {
				c.amounts = append(c.amounts, q)
			}
		}
		out = append(out, c)
		start = end
	}
	return out
}

// mainVerbs leaves out verbs that only help another: "was sitting", "has found",
// and "left" beside a verb that says so much already.
func (r *Reader) mainVerbs(tokens []token, verbs map[int]form) []int {
	var at []int
	for i := range tokens {
		if _, ok := verbs[i]; ok {
			at = append(at, i)
		}
	}
	var out []int
	for n, i := range at {
		f := verbs[i]
		if f.base == "leave" && tokens[i].low == "left" && n > 0 && !r.joined(tokens, at[n-1], i) {
			continue
		}
		if f.base == "get" && n > 0 && verbs[at[n-1]].base == "have" && !r.joined(tokens, at[n-1], i) {
			continue // has she got
		}
		if r.helps(f) && n+1 < len(at) && r.adverbsBetween(tokens, i, at[n+1]) && !(tokens[at[n+1]].low == "left") {
			continue
		}
		out = append(out, i)
	}
	return out
}

// adverbsBetween reports whether nothing of weight stands between two verbs.
func (r *Reader) adverbsBetween(tokens []token, from, to int) bool {
	for _, t := range tokens[from+1 : to] {
		if !r.cues.has("adverbs", t.low) && !r.cues.has("not", t.low) && t.low != "to" {
			return false
		}
	}
	return true
}

// joined reports whether a word or comma parts two verbs.
func (r *Reader) joined(tokens []token, from, to int) bool {
	for i := from + 1; i < to; i++ {
		names := tokens[i].low == "and" && tokens[i-1].capital && tokens[i+1].capital // Omar and Mei
		if (r.cues.has("joins", tokens[i].low) || tokens[i].mark) && !names {
			return true
		}
	}
	return false
}

// border is where the clause of one verb ends and that of the next begins.
func (r *Reader) border(tokens []token, from, to int) int {
	for i := to - 1; i > from; i-- {
		if r.cues.has("joins", tokens[i].low) || tokens[i].mark && tokens[i].low != "'" {
			if tokens[i].low == "and" && i > from+1 && tokens[i-1].capital && tokens[i+1].capital && r.joined(tokens, from, i) {
				continue // while Omar and Mei
			}
			return i
		}
	}
	return to
}

// parts are what stands around a verb.
type parts struct {
	subject    []token
	places     []place
	times      []place // "monday"
	after      []token // straight after the verb, before the first amount
	particle   class
	than       []token
	hasThan    bool
	there      bool
	passive    bool
	start, end bool
	total      bool
}

// place is a small word with what it leads to: "in the basket".
type place struct {
	word   string
	tokens []token
	at     int
}

func (s *scene) split(c clause) parts {
	r := s.r
	p := parts{
		start: r.cues.says("start", c.tokens[c.start:c.end]), end: r.cues.says("end", c.tokens[c.start:c.end]),
		total: r.cues.says("total", c.tokens[c.start:c.end]),
	}
	inAmount := func(i int) bool {
		return slices.ContainsFunc(c.amounts, func(q quantity) bool { return i >= q.start && i < q.end })
	}
	first := c.end
	for _, q := range c.amounts {
		if q.start > c.verb {
			first = min(first, q.start)
		}
	}
	for i := c.start; i < c.end; i++ {
		t := c.tokens[i]
		if inAmount(i) || t.mark || i == c.verb {
			continue
		}
		if t.low == "there" {
			p.there = true
			continue
		}
		if f, ok := r.cues.forms[t.low]; ok && i < c.verb && f.base == "be" {
			p.passive = true
			continue
		} else if ok && (i < c.verb && (f.class == help || f.base == "have" || f.class == need) || f.base == "get") {
			continue
		}
		if i > c.verb && r.cues.has("than", t.low) {
			p.hasThan = true
			p.than = until(c.tokens[i+1:c.end], func(t token) bool { return t.mark || r.cues.forms[t.low].base != "" || t.number() })
			break
		}
		if kind, ok := r.cues.Particles[t.low]; ok && p.particle == "" && i > c.verb && (i == c.verb+1 || c.tokens[i-1].low == "them" || i > 0 && inAmount(i-1)) {
			next := i + 1
			bare := next >= c.end || c.tokens[next].mark || r.cues.has("joins", c.tokens[next].low) || r.cues.has("adverbs", c.tokens[next].low) || inAmount(next) || r.cues.has("places", c.tokens[next].low)
			if bare || i == c.verb+1 {
				p.particle = kind
			}
			if bare {
				continue
			}
		}
		if r.cues.has("joins", t.low) && i+1 < c.end && r.cues.has("times", c.tokens[i+1].low) { // after lunch
			p.times = append(p.times, place{c.tokens[i+1].low, nil, i})
			i++
			continue
		}
		if r.cues.has("places", t.low) {
			end := s.placeEnd(c, i+1, inAmount)
			p.addPlace(r, place{t.low, c.tokens[i+1 : end], i})
			i = end - 1
			continue
		}
		if r.cues.has("adverbs", t.low) && t.low != "all" || r.cues.has("joins", t.low) && (t.low != "and" || len(p.subject) == 0) {
			continue
		}
		switch {
		case i < c.verb:
			p.subject = append(p.subject, t)
		case i < first:
			p.after = append(p.after, t)
		}
	}
	return p
}

func until(tokens []token, stop func(token) bool) []token {
	if i := slices.IndexFunc(tokens, stop); i >= 0 {
		return tokens[:i]
	}
	return tokens
}

// placeEnd is where the words after "in" or "from" end.
func (s *scene) placeEnd(c clause, i int, inAmount func(int) bool) int {
	r, words := s.r, 0
	for ; i < c.end; i++ {
		t := c.tokens[i]
		determined := r.cues.has("determiners", t.low)
		if t.mark || inAmount(i) || i == c.verb || t.number() || r.cues.has("joins", t.low) || r.cues.has("places", t.low) || r.cues.has("than", t.low) ||
			words > 0 && (determined || t.capital && !r.cues.has("determiners", c.tokens[i-1].low) && !c.tokens[i-1].capital) ||
			r.cues.forms[t.low].base == "be" || r.cues.forms[t.low].class == help || t.low == "there" ||
			words > 0 && (r.cues.has("adverbs", t.low) || r.cues.has("she", t.low) || r.cues.has("he", t.low)) {
			return i
		}
		if words == 0 && (r.cues.has("she", t.low) || r.cues.has("he", t.low)) && !determined {
			return i + 1
		}
		if !determined {
			words++
		}
	}
	return i
}

func (p *parts) addPlace(r *Reader, at place) {
	for _, t := range at.tokens {
		if r.cues.has("times", t.low) {
			p.times = append(p.times, place{t.low, nil, at.at})
			return
		}
	}
	if len(at.tokens) > 0 {
		p.places = append(p.places, at)
	}
}

// find gives the first place that a word of a list leads to.
func (p parts) find(r *Reader, list string) []token {
	for _, at := range p.places {
		if r.cues.has(list, at.word) {
			return at.tokens
		}
	}
	return nil
}
