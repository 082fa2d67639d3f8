package i18n

import (
	"slices"
	"unicode"
)

// Two sentences are about the same when they share words. Endings bend, so a word is
// known by its first letters; scripts that write no spaces between words, or put them
// together from syllables, are known by two signs side by side.

// stemLetters are the letters by which a word is known.
const stemLetters = 5

// stems are words, or the beginnings of words, as numbers (FNV-1a of their letters); each
// once.
type stems []uint64

// syllabic are the scripts of which two signs side by side are a stem.
var syllabic = []*unicode.RangeTable{unicode.Han, unicode.Hangul, unicode.Hiragana, unicode.Katakana}

// stemsOf are those of a sentence without what its places hold, each word cut after so
// many letters; 0 keeps whole words.
func stemsOf(t template, letters int) stems {
	out := make(stems, 0, 16)
	word := make([]rune, 0, 32)
	end := func() {
		switch {
		case len(word) == 0:
			return
		case letters > 0 && unicode.In(word[0], syllabic...):
			for i := range len(word) - 1 {
				out = out.with(word[i : i+2])
			}
		case letters == 0 && unicode.Is(unicode.Han, word[0]):
			for _, sign := range word {
				out = out.with([]rune{sign})
			}
		default:
			out = out.with(word)
		}
		word = word[:0]
	}
	for _, s := range t {
		for _, c := range s.text {
			switch {
			case !inWord(c):
				end()
			case letters == 0 || len(word) < letters || unicode.In(word[0], syllabic...): // else its end is cut
				word = append(word, unicode.ToLower(c))
			}
		}
		end()
	}
	return out
}

// with are the stems and one more.
func (s stems) with(stem []rune) stems {
	n := uint64(14695981039346656037)
	for _, c := range stem {
		n = (n ^ uint64(c)) * 1099511628211
	}
	if slices.Contains(s, n) {
		return s
	}
	return append(s, n)
}

// nearer tells by how many stems that the other question does not have a question is
// nearer to the other's answer than to its own.
func (s stems) nearer(other, own, others stems) int {
	by := 0
	for _, n := range s {
		inOwn, inOthers := slices.Contains(own, n), slices.Contains(others, n)
		if inOwn == inOthers || slices.Contains(other, n) {
			continue
		}
		if inOthers {
			by++
		} else {
			by--
		}
	}
	return by
}

// shared counts the stems that others have, too.
func (s stems) shared(others stems) int {
	count := 0
	for _, n := range s {
		if slices.Contains(others, n) {
			count++
		}
	}
	return count
}
