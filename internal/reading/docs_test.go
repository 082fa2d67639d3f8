package reading

import (
	"os"
	"strings"
	"testing"

	"homebuild/internal/problem"
)

// The guide lists every kind with an equation and a story, and the story is read
// as what the guide says.
func TestGuide(t *testing.T) {
	data, err := os.ReadFile("../../docs/own-stories.md")
	if err != nil {
		t.Fatal(err)
	}
	r := NewReader("en", englishWords())
	seen := map[string]bool{}
	for line := range strings.SplitSeq(string(data), "\n") {
		cells := strings.Split(line, "|")
		if len(cells) != 5 || !strings.Contains(cells[2], "?") || !strings.Contains(cells[2], "=") {
			continue
		}
		want := strings.Trim(strings.TrimSpace(cells[1]), "`") + " " + strings.TrimSpace(cells[2])
		p, err := ParseLine(want)
		if err != nil {
			t.Errorf("%s: %v", want, err)
			continue
		}
		seen[p.Kind().String()] = true
		text, err := r.Mark(strings.TrimSpace(cells[3]))
		if err != nil {
			t.Fatal(err)
		}
		if got := r.Read(text); got.Certainty == CannotTell || Line(got.Problem) != want {
			t.Errorf("%s: want %s, got %s %s (%s)", text.Plain, want, got.Certainty, Line(got.Problem), got.Why)
		}
	}
	for _, k := range problem.Kinds() {
		if !seen[k.String()] {
			t.Errorf("the guide has no line for %s", k)
		}
	}
}
