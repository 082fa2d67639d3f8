package preview

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

func TestList(t *testing.T) {
	var pages []Page
	for _, path := range []string{
		"en/2026-09-14.html", "en/2026-09-14-try.html", "es/2026-09-21-story.html", "es/2026-09-21-print.html", "en/check/index.html",
		"en/check/7.html", "2026-09-21.html", "en/index.html", "index.html", "404.html", "en/feed.xml",
	} {
		pages = append(pages, Page{Path: path})
	}
	want := []group{
		{"week of 2026-09-21", []listed{{"es/2026-09-21-story.html", "es own story"}, {"es/2026-09-21-print.html", "es paper"}, {"2026-09-21.html", "the link to share"}}, true},
		{"week of 2026-09-14", []listed{{"en/2026-09-14.html", "en learn"}, {"en/2026-09-14-try.html", "en try"}}, false},
		{"all year", []listed{{"en/check/index.html", "en check"}, {"en/index.html", "en"}, {"index.html", "front page"}, {"404.html", "no such page"}}, true},
	}
	if diff := cmp.Diff(want, list(pages)); diff != "" {
		t.Errorf("list mismatch (-want +got):\n%s", diff)
	}
}
