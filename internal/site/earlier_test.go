package site

import (
	"slices"
	"testing"
)

// What a week and a language lose with their files is told by the names alone.
func TestBelongs(t *testing.T) {
	for name, want := range map[string][2]string{
		"2026-09-14.html":            {"", "2026-09-14"},
		"es/2026-09-14-try.html":     {"es", "2026-09-14"},
		"es/check/2026-09-14.html":   {"es", "2026-09-14"},
		"zh-Hans/check/7.html":       {"zh-Hans", ""},
		"es/index.html":              {"es", ""},
		"index.html":                 {"", ""},
		"404.html":                   {"", ""},
		weeklyPath("2026-09-14"):     {"", "2026-09-14"},
		printPath("ht", "2026-9-14"): {"ht", ""},
	} {
		if tag, date := Belongs(name); tag != want[0] || date != want[1] {
			t.Errorf("%s: want %q, got %q, %q", name, want, tag, date)
		}
	}
	tag, date := "es", "2026-09-14"
	for _, name := range []string{learnPath(tag, date), tryPath(tag, date), inventPath(tag, date), printPath(tag, date), weekCheckPath(tag, date)} {
		if ofTag, ofDate := Belongs(name); !slices.Equal([]string{tag, date}, []string{ofTag, ofDate}) {
			t.Errorf("%s: got %q, %q", name, ofTag, ofDate)
		}
	}
}
