package reading

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// token is a word, a number or a mark of a sentence.
type token struct {
	text, low string
	numeral   int  // place in Text.Numerals; -1 for another word
	asked     bool // the teacher's [?]
	mark      bool // punctuation
	capital   bool
	first     bool // begins its sentence
}

func (t token) number() bool { return t.numeral >= 0 }

// sentences cuts a text into sentences of tokens.
func (r *Reader) sentences(t Text) [][]token {
	var out [][]token
	var now []token
	end := func() {
		if len(now) > 0 {
			if now = r.cues.rewrite(now); len(now) > 0 {
				now[0].first = true
				out = append(out, now)
			}
		}
		now = nil
	}
	asked := false
	next := 0 // numeral
	for at := 0; at < len(t.Plain); {
		if !asked && t.Asked >= 0 && at >= t.Asked {
			now, asked = append(now, token{text: "?", numeral: -1, asked: true}), true
		}
		for next < len(t.Numerals) && t.Numerals[next].Start < at {
			next++
		}
		if next < len(t.Numerals) && t.Numerals[next].Start == at && r.counts(t, next) {
			tokens := r.numeralTokens(t, next)
			now = append(now, tokens...)
			at = t.Numerals[next].End
			next++
			continue
		}
		c, size := utf8.DecodeRuneInString(t.Plain[at:])
		switch {
		case inWord(c) || unicode.IsDigit(c):
			stop := endOf(t.Plain, at, func(c rune) bool { return inWord(c) || unicode.IsDigit(c) })
			now = append(now, r.cues.word(t.Plain[at:stop])...)
			at = stop
			continue
		case strings.ContainsRune("¿¡", c):
		case c == '.' && len(now) > 0 && r.cues.has("abbreviations", now[len(now)-1].low):
		case strings.ContainsRune(".!?\n", c):
			if c == '?' && len(now) > 0 {
				now = append(now, token{text: "?", low: "?", numeral: -1, mark: true})
			}
			end()
		case !unicode.IsSpace(c):
			now = append(now, token{text: string(c), low: string(c), numeral: -1, mark: true})
		}
		at += size
	}
	end()
	return out
}

// counts reports whether a numeral may be one to count with: where some are
// marked, only these.
func (r *Reader) counts(t Text, i int) bool {
	n := t.Numerals[i]
	if t.Marked() {
		return n.Marked
	}
	if !n.Word {
		return true
	}
	return !r.noCount(t, n)
}

// noCount reports whether a number word does not count here: "one day", "los
// dos". Where a language has one word for "a" and "one", that counts only before
// "more".
func (r *Reader) noCount(t Text, n Numeral) bool {
	word, rest, before := lower(t.Plain[n.Start:n.End]), lower(t.Plain[n.Start:]), lower(t.Plain[:n.Start])
	for _, p := range r.cues.Grammar["no-count"] {
		head, tail, ok := strings.Cut(" "+p+" ", " "+word+" ")
		if ok && strings.HasSuffix(" "+before, head+" ") && strings.HasPrefix(rest, strings.TrimSpace(word+" "+tail)) {
			return true
		}
	}
	next, _, _ := strings.Cut(strings.TrimSpace(rest[len(word):]), " ")
	return r.cues.has("determiners", word) && !r.cues.has("more", strings.Trim(next, ".,"))
}

// numeralTokens are a number and, of a marked one, the words beside it.
func (r *Reader) numeralTokens(t Text, i int) []token {
	n := t.Numerals[i]
	out := []token{{text: t.Plain[n.Start:n.End], numeral: i}}
	if !n.Marked {
		return out
	}
	inner := r.says.numerals(t.Plain[n.Start:n.End])
	if len(inner) != 1 {
		return out
	}
	for _, word := range strings.Fields(t.Plain[n.Start+inner[0].End : n.End]) {
		out = append(out, token{text: word, low: lower(word), numeral: -1})
	}
	return out
}
