package week

import (
	"strings"
	"testing"
	"unicode/utf8"
)

// Whatever a week file holds, reading ends, every problem names its place, and
// a week that passes holds only words that are allowed.
func FuzzRead(f *testing.F) {
	for _, seed := range []string{goodWeek, weekWith(`focus = “make-ten”`), weekWith("allow = [[[["), "+++\n[own-target]\nkinds = [1]\n+++\n[a](b)", "\xff\xfe"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		allowed := someAllowed()
		site, problems := Read(folder(SiteFile, goodSite, "weeks/2026-09-14.md", text), allowed)
		for _, p := range problems {
			if p.File != "weeks/2026-09-14.md" || p.Text == "" || p.Line > 1+strings.Count(text, "\n")+strings.Count(text, "\r") {
				t.Errorf("problem without a true place: %+v", p)
			}
		}
		if len(problems) > 0 {
			return
		}
		w := site.Weeks[0]
		if (w.Own == nil) == (w.Target == "") || w.Stories < 1 || w.Stories > MaxStories || !utf8.ValidString(w.Notes["en"]) {
			t.Errorf("passed: %+v", w)
		}
	})
}
