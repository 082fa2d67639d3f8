package site

import "testing"

// The pages of a week are told by their names, and no others are.
func TestDateOf(t *testing.T) {
	const tag, date = "zh-Hans", "2026-09-14"
	for _, name := range []string{
		weeklyPath(date), learnPath(tag, date), tryPath(tag, date), inventPath(tag, date), printPath(tag, date), weekCheckPath(tag, date),
	} {
		if got := DateOf(name); got != date {
			t.Errorf("%s: got %q", name, got)
		}
	}
	for _, name := range []string{"index.html", "404.html", "es/index.html", "es/check/7.html", "es/feed.xml"} {
		if got := DateOf(name); got != "" {
			t.Errorf("%s: got %q", name, got)
		}
	}
}
