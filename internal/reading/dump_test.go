package reading

import (
	"fmt"
	"os"
	"testing"
)

func TestDump(t *testing.T) {
	out := os.Getenv("DUMP")
	if out == "" {
		t.Skip()
	}
	f, _ := os.Create(out)
	defer f.Close()
	r := NewReader("en", englishWords())
	for _, n := range []string{"en/stories.txt", "en/held-out.txt", "en/held-out-later.txt"} {
		for _, m := range stories(t, n) {
			x, _ := r.Mark(m.text)
			got := r.Read(x)
			line := "-"
			if got.Certainty != CannotTell {
				line = Line(got.Problem)
			}
			fmt.Fprintln(f, m.text, "|", got.Certainty, line, got.Why, got.Extra)
		}
	}
}
