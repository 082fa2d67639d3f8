package readability

import (
	"strings"

	"homebuild/internal/pattern"
)

// EnglishSyllables counts the syllables of an English word by its spelling:
// groups of vowels, less the silent ones. Words that the rule gets wrong and our
// pages use are listed. Common practice, no published source; held against a
// list made by another program.
func EnglishSyllables(word string) int {
	word = strings.ToLower(word)
	if isNumber(word) {
		return 1
	}
	n := 0
	for part := range strings.SplitSeq(word, "-") {
		part, _, _ = strings.Cut(part, "'")
		n += syllables(part)
	}
	return max(n, 1)
}

var (
	vowels = pattern.Of(`[aeiouy]+`)
	// silent are endings that look like a syllable and are none.
	silent = pattern.Of(`([^aeiouylr]|[aeiouy]l|[aeiouy]r)e$|([^aeiouytdr]|[aeiouy][^aeiouytd])ed$|([^aeiouyscgzhxl]|[aeiouy]l)es$|[^aeiouy]ely$`)
	// apart are neighbouring vowels that are two syllables.
	apart = pattern.Of(`[aeiou]ing|[^tscgx]i[aou]|[^aeiouy]ier$|[^q]ua[lt]|eo$`)
)

// exceptions are words that the rule counts wrong.
var exceptions = map[string]int{
	"every": 2, "everybody": 4, "everyone": 3, "everything": 3, "february": 4, "fluent": 2, "january": 4,
	"pieces": 2, "quiet": 2, "quietly": 3, "something": 2, "sometimes": 2, "wednesday": 2,
}

func syllables(word string) int {
	if n, ok := exceptions[word]; ok {
		return n
	}
	n := len(vowels().FindAllString(word, -1))
	if silent().MatchString(word) {
		n--
	}
	return n + len(apart().FindAllString(word, -1))
}
