package site

import (
	"fmt"
	"strings"
	"testing"
)

func TestLink(t *testing.T) {
	for _, row := range []struct{ from, to, want string }{
		{"index.html", "es/index.html", "es/index.html"},
		{"es/index.html", "index.html", "../index.html"},
		{"es/2026-09-14.html", "es/2026-09-14-try.html", "2026-09-14-try.html"},
		{"es/2026-09-14.html", "ar/2026-09-14.html", "../ar/2026-09-14.html"},
		{"es/check/7.html", "es/check/index.html", "index.html"},
		{"es/check/7.html", "ar/check/7.html", "../../ar/check/7.html"},
		{"es/check/7.html", "es/index.html", "../index.html"},
		{"es/2026-09-14-story.html", "es/check/7.html", "check/7.html"},
		{"es/check/7.html", "2026-09-14.html", "../../2026-09-14.html"},
	} {
		if got := link(row.from, row.to); got != row.want {
			t.Errorf("link(%q, %q): want %q, got %q", row.from, row.to, row.want, got)
		}
	}
}

// A long week has its stories on more than one page, the pages of nearly the
// same length, and each leads to the next.
func TestTryPages(t *testing.T) {
	for _, row := range []struct {
		stories int
		want    []int // stories on each page
	}{{1, []int{1}}, {4, []int{4}}, {5, []int{2, 3}}, {8, []int{4, 4}}} {
		in := exampleInput(t, "en")
		in.Site.Weeks = in.Site.Weeks[:1]
		in.Site.Weeks[0].Stories = row.stories
		files, _, problems := Assemble(in)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		at := 0
		for _, f := range files {
			if f.Path != tryPagePath("en", "2026-09-14", at) {
				continue
			}
			raw, err := f.Render()
			if err != nil || at == len(row.want) {
				t.Fatalf("%d stories: a page %d of stories, error %v", row.stories, at+1, err)
			}
			if got := strings.Count(string(raw), `class="story"`); got != row.want[at] {
				t.Errorf("%d stories: page %d has %d, want %d", row.stories, at+1, got, row.want[at])
			}
			at++
			if more := strings.Contains(string(raw), fmt.Sprintf("-try-%d.html#story-", at+1)); more != (at < len(row.want)) {
				t.Errorf("%d stories: page %d leads to a next page: %t", row.stories, at, more)
			}
		}
		if at != len(row.want) {
			t.Errorf("%d stories: %d pages, want %d", row.stories, at, len(row.want))
		}
	}
}
