package readability

import (
	_ "embed"
	"strings"
)

//go:embed spache.txt
var spacheFile string

// list is the easy words of a measurement.
type list map[string]bool

// easyWords are the words of the formula, and the names given.
func easyWords(names []string) list {
	easy := list{}
	for line := range strings.Lines(spacheFile) {
		if word := strings.TrimSpace(line); word != "" && !strings.HasPrefix(word, "#") {
			easy[strings.ToLower(word)] = true
		}
	}
	for _, name := range names {
		for _, word := range Words(name) {
			easy[strings.ToLower(word)] = true
		}
	}
	return easy
}

// endings are those that leave an easy word easy, with what stands in the word
// itself instead. From memory: the instructions of Spache and of Dale and Chall.
var endings = []struct{ ending, word string }{
	{"'s", ""}, {"s'", ""}, {"ies", "y"}, {"ied", "y"}, {"ier", "y"}, {"iest", "y"},
	{"es", ""}, {"s", ""}, {"ed", ""}, {"ed", "e"}, {"ing", ""}, {"ing", "e"},
	{"er", ""}, {"er", "e"}, {"est", ""}, {"est", "e"},
}

// has reports whether a word is easy.
func (l list) has(word string) bool {
	word = strings.ToLower(word)
	if isNumber(word) || l[word] {
		return true
	}
	for _, e := range endings {
		stem, ok := strings.CutSuffix(word, e.ending)
		if ok && (l[stem+e.word] || l[single(stem)]) {
			return true
		}
	}
	return false
}

// single takes one of two equal letters at the end away: "stopp" is of "stop".
func single(stem string) string {
	if n := len(stem); n > 2 && stem[n-1] == stem[n-2] {
		return stem[:n-1]
	}
	return stem
}
