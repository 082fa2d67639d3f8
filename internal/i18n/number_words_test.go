package i18n

import "testing"

// The words are those of the files; Spanish counts things of both genders with
// words of their own.
func TestNumberWords(t *testing.T) {
	c := fixtures(t)
	tests := []struct {
		tag, word string
		want      int
	}{{"en", "eight", 8}, {"en", "twenty-one", 21}, {"es", "dieciséis", 16}, {"es", "una", 1}}
	for _, test := range tests {
		l, _ := c.Language(test.tag)
		if got, ok := l.NumberWords()[test.word]; !ok || got != test.want {
			t.Errorf("%s: the word %q: want %d, got %d (%t)", test.tag, test.word, test.want, got, ok)
		}
	}
}
