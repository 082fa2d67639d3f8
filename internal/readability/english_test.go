package readability

import (
	"os"
	"strconv"
	"strings"
	"testing"
)

// mended are counts of the list that a dictionary does not bear out (the
// syllables as a dictionary parts them, from memory).
var mended = map[string]int{
	"checked": 1, "equation": 3, "forest": 2, "going": 2, "helped": 1, // e-qua-tion, for-est, go-ing
}

// The rule agrees with another program on the words of our own pages. Source:
// npm package "syllable" 5.0.1, see testdata/syllables.txt.
func TestEnglishSyllables(t *testing.T) {
	list, err := os.ReadFile("testdata/syllables.txt")
	if err != nil {
		t.Fatal(err)
	}
	words := 0
	for line := range strings.Lines(string(list)) {
		word, count, found := strings.Cut(strings.TrimSpace(line), " ")
		if !found || word == "#" {
			continue
		}
		want, err := strconv.Atoi(count)
		if err != nil {
			t.Fatalf("%q: %v", line, err)
		}
		words++
		if mended, ok := mended[word]; ok {
			want = mended
		}
		if got := EnglishSyllables(word); got != want {
			t.Errorf("%s: want %d syllables, got %d", word, want, got)
		}
	}
	if words < 500 {
		t.Errorf("only %d words were held against the list", words)
	}
}
