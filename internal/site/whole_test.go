package site

import (
	"regexp"
	"strings"
	"testing"

	"homebuild/internal/page"
	"homebuild/internal/weight"
)

// maxToSend is what a file to send may weigh, compressed.
const maxToSend = 60_000

// A week in one file: light enough, every id once, every link within it leading
// somewhere, nothing outside it asked for, all parts there.
func TestWhole(t *testing.T) {
	in := exampleInput(t, "en")
	in.Site.Address = ""
	p, _, problems := Plan(in)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	l, heaviest := p.lister(), 0
	ids, links := regexp.MustCompile(` id="([^"]*)"`), regexp.MustCompile(`(?:href|src)="([^"]*)"`)
	for i, lesson := range p.lessons {
		file := p.whole(l, l.languages[0], lesson, in.Site.Weeks[i])
		var b strings.Builder
		if err := page.Render(&b, file.view(l.common)); err != nil {
			t.Fatal(err)
		}
		html, known := b.String(), map[string]bool{}
		heaviest = max(heaviest, weight.Of([]byte(html)))
		for _, m := range ids.FindAllStringSubmatch(html, -1) {
			if known[m[1]] {
				t.Errorf("%s: the id %q is there twice", file.path(), m[1])
			}
			known[m[1]] = true
		}
		for _, m := range links.FindAllStringSubmatch(html, -1) {
			if target, inside := strings.CutPrefix(m[1], "#"); !inside || !known[target] {
				t.Errorf("%s: the link %q leads nowhere", file.path(), m[1])
			}
		}
		for _, part := range []string{"learn", "try", "own", "paper", "tell", "story-1"} {
			if !known[part] {
				t.Errorf("%s has no part %q", file.path(), part)
			}
		}
	}
	if heaviest > maxToSend {
		t.Errorf("the heaviest file has %d bytes compressed, the limit is %d", heaviest, maxToSend)
	}
	t.Logf("the heaviest file to send: %d bytes compressed", heaviest)
}
