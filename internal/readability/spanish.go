package readability

import "strings"

// SpanishSyllables counts the syllables of a Spanish word: every group of vowels
// is one, but two strong vowels (a, e, o) part, and so does a stressed í or ú
// beside another vowel. The u of que, gue and the like is silent.
// Source of the rules: Real Academia Española, Ortografía de la lengua
// española, 2010, chapter on accents, from memory.
func SpanishSyllables(word string) int {
	if isNumber(word) {
		return 1
	}
	runes := []rune(strings.ToLower(word))
	n := 0
	var before rune // the vowel just before, if any
	for i, r := range runes {
		if !spanishVowel(runes, i) {
			before = 0
			continue
		}
		if before == 0 || parts(before, r) {
			n++
		}
		before = r
	}
	return max(n, 1)
}

const (
	strong   = "aeoáéó"
	stressed = "íú"
)

// parts reports whether two neighbouring vowels are in two syllables.
func parts(a, b rune) bool {
	open := func(r rune) bool { return strings.ContainsRune(strong+stressed, r) }
	return open(a) && open(b)
}

func spanishVowel(runes []rune, i int) bool {
	next := rune(0)
	if i+1 < len(runes) {
		next = runes[i+1]
	}
	switch r := runes[i]; {
	case r == 'y':
		return !strings.ContainsRune(strong+stressed+"iuü", next) || next == 0
	case r == 'u' && i > 0 && runes[i-1] == 'q':
		return false
	case r == 'u' && i > 0 && runes[i-1] == 'g' && strings.ContainsRune("eiéí", next):
		return false
	default:
		return strings.ContainsRune(strong+stressed+"iuü", r)
	}
}
