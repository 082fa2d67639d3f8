package site

import (
	"strings"
	"testing"

	"homebuild/internal/weight"
)

// With stories beside every week's own, no page of the longest words weighs more than
// what comes with the first answer of a fresh connection (RFC 6928, section 2).
func TestEveryPageIsLight(t *testing.T) {
	in := exampleInput(t, allTags()...)
	for i := range in.Site.Weeks {
		in.Site.Weeks[i].Ladder = true
	}
	p, _, problems := Plan(in)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	heaviest, name, steps := 0, "", 0
	for _, f := range p.Pages() {
		if !strings.HasPrefix(f.Path, "uk/") {
			continue
		}
		html, err := f.Render()
		if err != nil {
			t.Fatal(err)
		}
		if strings.Contains(f.Path, "-steps") {
			steps++
		}
		if n := weight.Of(html); n > heaviest {
			heaviest, name = n, f.Path
		}
	}
	if heaviest > weight.Page || steps < len(in.Site.Weeks)/2 {
		t.Errorf("%s weighs %d bytes, want at most %d; %d pages of steps", name, heaviest, weight.Page, steps)
	}
	t.Logf("heaviest: %s, %d bytes", name, heaviest)
}
