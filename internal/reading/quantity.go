package reading

import (
	"slices"
	"strings"
)

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
		n := 1
		isAmount := s[i].number() || s[i].asked
		if !isAmount {
			if rest := r.cues.phrase("rest", s, i); rest > 0 {
				n, isAmount = rest, true
			} else if some := r.cues.phrase("some", s, i); some > 0 && !r.question(s, i) {
				n, isAmount = some, true
			}
		}
		if isAmount {
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

// nounHere reports whether a form that could be a verb is a noun: "the hand",
// "his left hand", but "the boys hand".
func (r *Reader) nounHere(s []token, i int, f form) bool {
	if i == 0 {
		return false
	}
	if r.cues.has("determiners", s[i-1].low) {
		return true
	}
	for _, t := range s[:i] {
		if r.cues.forms[t.low].class == help { // did the mouse take
			return false
		}
	}
	several := strings.HasSuffix(s[i-1].low, "s") || r.cues.Plurals[s[i-1].low] != ""
	return i > 1 && r.cues.has("determiners", s[i-2].low) && s[i].low == f.base && !several && !s[i-1].number()
}

// question reports whether the word before i asks: the "many" of "how many".
func (r *Reader) question(s []token, i int) bool {
	return i > 0 && r.cues.phrase("question", s, i-1) > 0
}

// amount reads the amount whose number or word is s[start:i].
func (r *Reader) amount(s []token, start, i int) quantity {
	q := quantity{start: start, numeral: -1, rest: r.cues.phrase("rest", s, start) > 0}
	for _, t := range s[start:i] {
		if t.number() {
			q.numeral = t.numeral
		}
		q.asked = q.asked || t.asked
	}
	i = r.relation(s, i, &q)
	if i < len(s) && s[i].low == "of" && i+1 < len(s) && (r.cues.has("they", s[i+1].low) || r.cues.has("it", s[i+1].low) || r.cues.has("determiners", s[i+1].low)) {
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
	for i < len(s) && r.cues.has("determiners", s[i].low) && !r.cues.has("it", s[i].low) {
		i++
	}
	end := r.nounsAfter(s, i)
	var words []string
	for _, t := range s[i:end] {
		words = append(words, t.low)
	}
	if n := len(words); n > 0 {
		q.noun, q.adj = r.cues.stem(words[n-1]), strings.Join(words[:n-1], " ")
		for _, w := range words { // 7 years old
			if slices.Contains(r.cues.Units["seldom"], r.cues.stem(w)) {
				q.noun, q.adj = r.cues.stem(w), ""
			}
		}
	}
	q.end = r.relation(s, end, &q)
	return q
}

// relation skips "more" and "fewer" and notes them.
func (r *Reader) relation(s []token, i int, q *quantity) int {
	for ; i < len(s); i++ {
		switch {
		case r.cues.has("more", s[i].low):
			q.more = true
		case r.cues.has("fewer", s[i].low):
			q.fewer = true
		default:
			return i
		}
	}
	return i
}

// nounsAfter is where the noun that begins at i ends, with its adjectives.
func (r *Reader) nounsAfter(s []token, i int) int {
	for n := 0; i < len(s) && n < 4; n++ {
		t := s[i]
		f, verb := r.cues.forms[t.low]
		switch {
		case t.mark, t.number(), t.asked, t.capital && !t.first,
			r.cues.has("places", t.low), r.cues.has("joins", t.low), r.cues.has("adverbs", t.low), r.cues.has("than", t.low),
			r.cues.has("determiners", t.low), r.cues.has("she", t.low), r.cues.has("he", t.low), r.cues.has("they", t.low), r.cues.has("it", t.low), r.cues.has("me", t.low),
			verb && (!f.third || f.base == "be" || f.base == "have" || f.class == help || n > 0 && r.verbFollows(s, i)):
			return i
		}
		i++
	}
	return i
}

// verbFollows reports whether a form such as "lands" is a verb after a noun: one
// bird lands.
func (r *Reader) verbFollows(s []token, i int) bool {
	return i > 0 && !strings.HasSuffix(s[i-1].low, "s") && i >= 2 && s[i-2].text == "1"
}
