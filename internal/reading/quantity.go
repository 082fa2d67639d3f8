package reading

import "strings"

// quantity is an amount in a sentence: "5 more red kites", "some of them".
type quantity struct {
	start, end  int // tokens
	numeral     int // -1 for an amount that is not told
	asked       bool
	more, fewer bool
	of          bool // "8 of them"
	rest        bool // "the rest"
	noun, adj   string
}

// quantities finds the amounts of a sentence and tells its verbs from its nouns.
func (r *Reader) quantities(s []token) (amounts []quantity, verbs map[int]form) {
	verbs = map[int]form{}
	for i := 0; i < len(s); {
		if n := r.amountAt(s, i); n > 0 {
			q := r.amount(s, i, i+n)
			amounts = append(amounts, q)
			i = q.end
			continue
		}
		if n := r.cues.phrase("question", s, i); n > 0 {
			i = r.amount(s, i, i+n).end
			continue
		}
		if f, ok := r.cues.forms[s[i].low]; ok && !s[i].mark && (r.helps(f) || !r.nounHere(s, i, f)) {
			verbs[i] = f
		}
		i++
	}
	return amounts, verbs
}

// amountAt is how many tokens from i on begin an amount; 0 for none.
func (r *Reader) amountAt(s []token, i int) int {
	if i >= len(s) {
		return 0
	}
	if s[i].number() || s[i].asked {
		return 1
	}
	if n := r.cues.phrase("rest", s, i); n > 0 {
		return n
	}
	if n := r.cues.phrase("some", s, i); n > 0 && !r.question(s, i) {
		return n
	}
	if n := r.cues.phrase("more-before", s, i); n > 0 { // "mais 6 conchas"
		if after := r.amountAt(s, i+n); after > 0 && r.cues.phrase("rest", s, i+n) == 0 {
			return n + after
		}
	}
	return 0
}

// nounHere reports whether a form that could be a verb is a noun: "the hand",
// "his left hand", but "the boys hand".
func (r *Reader) nounHere(s []token, i int, f form) bool {
	if i == 0 {
		return false
	}
	if r.cues.has("determiners", s[i-1].low) && !r.cues.has("clitics", s[i-1].low) && (i < 2 || !r.pronoun(s[i-2].low)) {
		return true
	}
	for _, t := range s[:i] {
		if r.cues.forms[t.low].class == help { // did the mouse take
			return false
		}
	}
	several := r.cues.several(s[i-1].low)
	return i > 1 && r.cues.has("determiners", s[i-2].low) && s[i].low == f.base && !several && !s[i-1].number()
}

// question reports whether the word before i asks: the "many" of "how many".
func (r *Reader) question(s []token, i int) bool {
	return i > 0 && r.cues.phrase("question", s, i-1) > 0
}

// amount reads the amount whose number or word is s[start:i].
func (r *Reader) amount(s []token, start, i int) quantity {
	q := quantity{start: start, numeral: -1, rest: r.cues.phrase("rest", s, start) > 0, more: r.cues.phrase("more-before", s, start) > 0}
	for _, t := range s[start:i] {
		if t.number() {
			q.numeral = t.numeral
		}
		q.asked = q.asked || t.asked
	}
	i = r.relation(s, i, &q)
	if i < len(s) && r.cues.has("of", s[i].low) && i+1 < len(s) && (r.cues.has("they", s[i+1].low) || r.cues.has("it", s[i+1].low) || r.cues.has("determiners", s[i+1].low)) {
		q.of = true
		i++
		if i+1 < len(s) && s[i+1].number() { // of the 14 kites: another amount
			q.end = i + 1
			return q
		}
		if r.cues.has("they", s[i].low) && !r.cues.has("determiners", s[i].low) {
			q.end = i + 1
			return q
		}
	}
	for i < len(s) && r.cues.has("determiners", s[i].low) && !r.cues.has("it", s[i].low) && (i+1 == len(s) || !r.cues.has("times-alone", s[i+1].low)) {
		i++
	}
	end := r.nounsAfter(s, i)
	words := lows(s[i:end])
	q.noun, q.adj = r.cues.nounPhrase(words)
	for _, w := range words { // 7 years old
		if stem := r.cues.stem(w); r.cues.stems["seldom"][stem] {
			q.noun, q.adj = stem, ""
		}
	}
	end = r.madeOf(s, end, &q)
	q.end = r.relation(s, end, &q)
	return q
}

// madeOf takes in what a noun is of, where that stands after it: "lápices de
// color".
func (r *Reader) madeOf(s []token, i int, q *quantity) int {
	if !r.cues.nounFirst() || q.noun == "" || i >= len(s) || !r.cues.has("of", s[i].low) || r.relation(s, i, &quantity{}) > i {
		return i
	}
	end := r.nounsAfter(s, i+1)
	if end == i+1 {
		return i
	}
	q.adj = strings.TrimSpace(q.adj + " " + strings.Join(lows(s[i:end]), " "))
	return end
}

func lows(tokens []token) []string {
	out := make([]string, len(tokens))
	for i, t := range tokens {
		out[i] = t.low
	}
	return out
}

// relation skips "more" and "fewer" and notes them.
func (r *Reader) relation(s []token, i int, q *quantity) int {
	for i < len(s) {
		more, fewer := r.cues.phrase("more", s, i), r.cues.phrase("fewer", s, i)
		if more+fewer == 0 {
			return i
		}
		q.more, q.fewer = q.more || more > fewer, q.fewer || fewer > more
		i += max(more, fewer)
	}
	return i
}

// nounsAfter is where the noun that begins at i ends, with its adjectives.
func (r *Reader) nounsAfter(s []token, i int) int {
	for n := 0; i < len(s) && n < 4; n++ {
		t := s[i]
		f, verb := r.cues.forms[t.low]
		switch {
		case t.mark, t.number(), t.asked, t.capital && !t.first, r.cues.has("clitics", t.low), r.cues.has("reflexive", t.low), r.cues.has("times-alone", t.low), r.cues.nounFirst() && r.relation(s, i, &quantity{}) > i,
			r.cues.has("places", t.low), r.cues.has("joins", t.low), r.cues.has("adverbs", t.low), r.cues.has("than", t.low),
			r.cues.has("determiners", t.low), r.cues.has("she", t.low), r.cues.has("he", t.low), r.cues.has("they", t.low), r.cues.has("it", t.low), r.cues.has("me", t.low),
			verb && (!f.noun || r.cues.is("be", f) || r.cues.is("have", f) || f.class == help || n > 0 && r.verbFollows(s, i)):
			return i
		}
		i++
	}
	return i
}

// verbFollows reports whether a form such as "lands" is a verb after a noun: one
// bird lands.
func (r *Reader) verbFollows(s []token, i int) bool {
	return i > 0 && !r.cues.several(s[i-1].low) && i >= 2 && s[i-2].text == "1"
}
