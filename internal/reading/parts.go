package reading

import "slices"

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
	clitic     string // "le" da, "lui" donne
	reflexive  bool   // "se" rompen
	start, end bool
	total      bool
}

// place is a small word with what it leads to: "in the basket".
type place struct {
	word   string
	tokens []token
	at     int
}

// splitter goes through the words of a clause.
type splitter struct {
	*Reader
	clause
	parts parts
	first int // where the first amount after the verb begins
}

// split sorts the words around a clause's verb.
func (s *scene) split(c clause) parts {
	said := c.tokens[c.start:c.end]
	w := splitter{Reader: s.r, clause: c, first: c.end, parts: parts{
		start: s.r.cues.says("start", said), end: s.r.cues.says("end", said), total: s.r.cues.says("total", said),
	}}
	for _, q := range c.amounts {
		if q.start > c.verb {
			w.first = min(w.first, q.start)
		}
	}
	w.parts.there = s.r.cues.is("there-is", c.form)
	for i := c.start; i < c.end; i++ {
		if w.inAmount(i) || c.tokens[i].mark || i == c.verb || w.helping(i) || w.clitic(i) || w.particle(i) {
			continue
		}
		if i > c.verb && s.r.cues.has("than", c.tokens[i].low) {
			w.parts.hasThan = true
			w.parts.than = until(c.tokens[i+1:c.end], func(t token) bool { return t.mark || s.r.cues.forms[t.low].base != "" || t.number() })
			break
		}
		if end := w.leads(i); end > i {
			i = end - 1
			continue
		}
		w.word(i)
	}
	return w.parts
}

// inAmount reports whether a word belongs to an amount.
func (w *splitter) inAmount(i int) bool {
	return slices.ContainsFunc(w.amounts, func(q quantity) bool { return i >= q.start && i < q.end })
}

// helping reports whether a word only helps the verb, and notes what it says.
func (w *splitter) helping(i int) bool {
	t := w.tokens[i]
	if w.cues.has("there", t.low) {
		w.parts.there = true
		return true
	}
	f, ok := w.cues.forms[t.low]
	if ok && i < w.verb && w.cues.is("be", f) {
		w.parts.passive = true
		return true
	}
	return ok && (i < w.verb && (f.class == help || w.cues.is("have", f) || f.class == need) || w.cues.is("get", f))
}

// clitic notes a small word at a verb that says to whom or by itself: "le da",
// "se rompen"; or a pronoun there that says the subject again: "Lina a-t-elle".
func (w *splitter) clitic(i int) bool {
	low, next := w.tokens[i].low, i+1
	if w.cues.has("reflexive", low) {
		w.parts.reflexive = true
		return true
	}
	if _, again := w.cues.forms[w.before(i)]; again && i < w.verb && len(w.parts.subject) > 0 && w.pronoun(low) {
		return true
	}
	if !w.cues.has("clitics", low) || i > w.verb+1 || i > w.verb && w.cues.has("determiners", low) {
		return false
	}
	if _, verb := w.cues.forms[w.tokens[min(next, w.end-1)].low]; w.cues.has("determiners", low) && !verb {
		return false
	}
	w.parts.clitic = low
	return true
}

func (w *splitter) before(i int) string {
	if i == w.start {
		return ""
	}
	return w.tokens[i-1].low
}

func (r *Reader) pronoun(low string) bool {
	return r.cues.has("she", low) || r.cues.has("he", low) || r.cues.has("they", low)
}

// particle notes a small word that changes the verb: "flies away", "takes 3
// out". It reports whether the word does no more than that; "gets on the bus"
// leads to a place, too.
func (w *splitter) particle(i int) bool {
	kind, ok := w.cues.Particles[w.tokens[i].low]
	if !ok || w.parts.particle != "" || i <= w.verb || i > w.verb+1 && !w.cues.has("them", w.tokens[i-1].low) && !w.inAmount(i-1) {
		return false
	}
	next := i + 1
	bare := next >= w.end || w.tokens[next].mark || w.inAmount(next) ||
		slices.ContainsFunc([]string{"joins", "adverbs", "places"}, func(list string) bool { return w.cues.has(list, w.tokens[next].low) })
	if bare || i == w.verb+1 {
		w.parts.particle = kind
	}
	return bare
}

// leads reads "in the basket" and "after lunch" and tells where they end; i for
// other words.
func (w *splitter) leads(i int) int {
	t := w.tokens[i]
	if w.cues.has("joins", t.low) && i+1 < w.end && w.cues.has("times", w.tokens[i+1].low) {
		w.parts.times = append(w.parts.times, place{w.tokens[i+1].low, nil, i})
		return i + 2
	}
	if w.cues.has("determiners", t.low) && i+1 < w.end && w.cues.has("times-alone", w.tokens[i+1].low) { // "un día"
		return i + 1
	}
	if w.cues.has("times-alone", t.low) {
		w.parts.times = append(w.parts.times, place{t.low, nil, i})
		return i + 1
	}
	if !w.cues.has("places", t.low) || w.cues.has("determiners", t.low) && !w.givesTo(i) {
		return i
	}
	end := w.placeEnd(i + 1)
	w.parts.addPlace(w.Reader, place{t.low, w.tokens[i+1 : end], i})
	return end
}

// givesTo tells a word that leads to somebody from an article that looks the
// same: "dá 3 a Omar", "a menina".
func (w *splitter) givesTo(i int) bool {
	return i > w.verb && i+1 < w.end && w.tokens[i+1].capital && (w.form.class == give || w.parts.clitic != "")
}

// word takes a word of the subject, or one straight after the verb.
func (w *splitter) word(i int) {
	t := w.tokens[i]
	switch {
	case w.cues.has("adverbs", t.low) && !w.cues.has("all", t.low), w.cues.has("joins", t.low) && (!w.cues.has("and", t.low) || len(w.parts.subject) == 0):
	case i < w.verb:
		w.parts.subject = append(w.parts.subject, t)
	case i < w.first:
		w.parts.after = append(w.parts.after, t)
	}
}

func until(tokens []token, stop func(token) bool) []token {
	if i := slices.IndexFunc(tokens, stop); i >= 0 {
		return tokens[:i]
	}
	return tokens
}

// placeEnd is where the words after "in" or "from" end.
func (w *splitter) placeEnd(i int) int {
	has := w.cues.has
	for words := 0; i < w.end; i++ {
		t := w.tokens[i]
		f := w.cues.forms[t.low]
		determined, pronoun := has("determiners", t.low), has("she", t.low) || has("he", t.low)
		switch {
		case t.mark, t.number(), w.inAmount(i), i == w.verb, w.cues.is("be", f), f.class == help, has("there", t.low),
			has("joins", t.low), has("places", t.low) && !determined, has("than", t.low):
			return i
		case words > 0 && (determined || pronoun || has("adverbs", t.low)):
			return i
		case words > 0 && t.capital && !has("determiners", w.tokens[i-1].low) && !w.tokens[i-1].capital: // in the morning Lina
			return i
		case pronoun && !determined:
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
