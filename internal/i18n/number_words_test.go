package i18n

import (
	"testing"

	"homebuild/locales"
)

// The words are those of the files; Spanish counts things of both genders with
// words of their own.
func TestNumberWords(t *testing.T) {
	c, problems := Load([]string{"en", "es"}, locales.Files)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	tests := []struct {
		tag, word string
		want      int
	}{{"en", "seven", 7}, {"en", "twenty", 20}, {"es", "siete", 7}, {"es", "una", 1}}
	for _, test := range tests {
		l, _ := c.Language(test.tag)
		if got, ok := l.NumberWords()[test.word]; !ok || got != test.want {
			t.Errorf("%s: the word %q: want %d, got %d (%t)", test.tag, test.word, test.want, got, ok)
		}
	}
}
