package i18n

import "strings"

// NumberWords are the number words of the language's file with what they mean,
// in small letters, in every form that the file has; none where it has no
// table. Who reads a text of that language finds its numbers by them.
func (l *Language) NumberWords() map[string]int {
	out := map[string]int{}
	for _, table := range l.words {
		for n, word := range table {
			out[strings.ToLower(word)] = n
		}
	}
	return out
}
