package site

import (
	"strings"
	"testing"
)

// What the class calls a way and a picture stands beside our words: in the column of the
// class in every other language, and in the class's own language only where it differs;
// on paper, too.
func TestOwnClassWords(t *testing.T) {
	in := exampleInput(t, "en", "es")
	in.Site.School = "en"
	in.Site.Words = map[string]string{"bar-model": "<long> bars"}
	planned, _, problems := Plan(in)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	bars, others := 0, 0
	for _, l := range planned.lessons {
		for _, tag := range in.Site.Languages {
			for _, f := range planned.WeekPages(l.date, tag) {
				if !isLearn(f.Path, tag) && !strings.HasSuffix(f.Path, "-print.html") {
					continue
				}
				html, err := f.Render()
				if err != nil {
					t.Fatal(err)
				}
				says := strings.Contains(string(html), "&lt;long&gt; bars")
				if says != (l.picture.String() == "bar-model") {
					t.Errorf("%s, drawn as %v, says the class's word: %v", f.Path, l.picture, says)
				}
				if rows := len(elements(parsed(t, f), "table")) > 0; tag == "en" && isLearn(f.Path, tag) && rows != says {
					t.Errorf("%s has a table of words: %v", f.Path, rows)
				}
				if says {
					bars++
				} else {
					others++
				}
			}
		}
	}
	if bars == 0 || others == 0 {
		t.Errorf("%d pages with the word, %d without", bars, others)
	}
}
