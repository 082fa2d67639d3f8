package reading

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
		if r.cues.has("remaining", tokens[i].low) && n > 0 && !r.joined(tokens, at[n-1], i) {
			continue
		}
		if r.cues.is("get", f) && n > 0 && r.cues.is("have", verbs[at[n-1]]) && !r.joined(tokens, at[n-1], i) {
			continue // has she got
		}
		if r.helps(f) && n+1 < len(at) && r.adverbsBetween(tokens, i, at[n+1]) && !r.cues.has("remaining", tokens[at[n+1]].low) {
			continue
		}
		out = append(out, i)
	}
	return out
}

// adverbsBetween reports whether nothing of weight stands between two verbs.
func (r *Reader) adverbsBetween(tokens []token, from, to int) bool {
	for _, t := range tokens[from+1 : to] {
		if !r.cues.has("adverbs", t.low) && !r.cues.has("not", t.low) && !r.cues.has("beside-verbs", t.low) {
			return false
		}
	}
	return true
}

// joined reports whether a word or comma parts two verbs.
func (r *Reader) joined(tokens []token, from, to int) bool {
	for i := from + 1; i < to; i++ {
		names := r.cues.has("and", tokens[i].low) && tokens[i-1].capital && tokens[i+1].capital // Omar and Mei
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
			if r.cues.has("and", tokens[i].low) && i > from+1 && tokens[i-1].capital && tokens[i+1].capital && r.joined(tokens, from, i) {
				continue // while Omar and Mei
			}
			return i
		}
	}
	return to
}
