package site

import (
	"strings"
	"testing"

	"homebuild/internal/readability"
)

// textsOf are every message to families and every story of the example year in
// a language.
func textsOf(t *testing.T, tag string) (texts []readability.Text, names []string) {
	t.Helper()
	p, _, problems := Plan(exampleInput(t, tag))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return p.Texts(tag)
}

// knownLong are wordings of stories with a sentence of more than ten words, and
// why it stays.
var knownLong = map[string]string{
	"compare-difference-more.2": "a comparison names both sides, and every shorter question is stilted or leaves one out",
}

// What families read is easy enough, in the languages that have a formula.
func TestReadability(t *testing.T) {
	met := map[string]bool{}
	for _, tag := range []string{"en", "es"} {
		texts, names := textsOf(t, tag)
		r := readability.Texts(tag, texts, names...)
		t.Logf("%s: family %+v", tag, r.Family)
		t.Logf("%s: stories %+v", tag, r.Stories)
		if r.Family.Words < 1000 || r.Stories.Words < 1000 {
			t.Errorf("%s: only %d words to families and %d words of stories were read", tag, r.Family.Words, r.Stories.Words)
		}
		for _, m := range r.Misses {
			_, frame, _ := strings.Cut(m.Name, " ")
			if knownLong[frame] == "" {
				t.Errorf("%s: %s: %s", tag, m.Name, m.Why)
			}
			met[frame] = true
		}
	}
	for frame := range knownLong {
		if !met[frame] {
			t.Errorf("%s is on the list of long ones, and is not long", frame)
		}
	}
}
