package site

import (
	"fmt"
	"io/fs"
	"strings"
	"testing"
	"testing/fstest"

	"homebuild/internal/problem"
	"homebuild/internal/reading"
	"homebuild/internal/recheck"
	"homebuild/internal/week"
)

// ownInput is a site of one week with stories of the teacher's own.
func ownInput(t testing.TB, stories []week.OwnStory, tags ...string) Input {
	t.Helper()
	in := exampleInput(t, tags...)
	in.Site.Weeks = in.Site.Weeks[:1]
	in.Site.Weeks[0].OwnStories = stories
	return in
}

// allPages makes every page of a site.
func allPages(t testing.TB, in Input) fs.FS {
	t.Helper()
	files, _, problems := Assemble(in)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	out := fstest.MapFS{}
	for _, f := range files {
		data, err := f.Render()
		if err != nil {
			t.Fatal(err)
		}
		out[f.Path] = &fstest.MapFile{Data: data}
	}
	return out
}

// Nothing is published that the teacher has not confirmed, however sure the
// reader is: the build stops with the proposal.
func TestNothingUnconfirmedIsPublished(t *testing.T) {
	texts := []string{
		"Lina has 8 shells. She finds 6 more. How many shells does she have now?",
		"Omar has 9 shells. He has 5 fewer shells than Lina. How many shells does Lina have?",
		"Each of 3 boys has 4 kites. How many kites do they have in all?",
		"Nothing to count.",
	}
	for _, text := range texts {
		files, _, problems := Assemble(ownInput(t, []week.OwnStory{{Text: text}}, "en"))
		if len(files) > 0 || len(problems) != 1 {
			t.Errorf("%s: %d files, problems: %v", text, len(files), problems)
		}
	}
	_, _, problems := Assemble(ownInput(t, []week.OwnStory{{Text: texts[0]}}, "en"))
	if want := `reading = "add-to-result 8 + 6 = ?"`; !strings.Contains(problems[0].Hint, want) {
		t.Errorf("the hint holds no line to paste: want %s in %q", want, problems[0].Hint)
	}
}

// A reading, an answer or a translation that contradicts the text stops the
// build, at its own line.
func TestContradictions(t *testing.T) {
	const text, good = "Lina has 8 shells. She finds 6 more. How many shells does she have now?", "add-to-result 8 + 6 = ?"
	tests := []struct {
		name  string
		story week.OwnStory
		want  string
	}{
		{"other number", week.OwnStory{Text: text, Reading: "add-to-result 8 + 7 = ?"}, "does not tell 7"},
		{"number told once", week.OwnStory{Text: text, Reading: "add-to-result 8 + 8 = ?"}, "does not tell 8"},
		{"true numbers of another kind", week.OwnStory{Text: text, Reading: "add-to-change 8 6"}, "does not tell 14"},
		{"equation of another kind", week.OwnStory{Text: text, Reading: "take-from-start 8 + 6 = ?"}, "does not fit the kind take-from-start"},
		{"no kind", week.OwnStory{Text: text, Reading: "add-to-reslt 8 + 6 = ?"}, `"add-to-reslt" is not a kind`},
		{"part bigger than whole", week.OwnStory{Text: text, Reading: "take-from-result 6 - 8 = ?"}, "does not fit"},
		{"words", week.OwnStory{Text: text, Reading: "add-to-result eight and six"}, "is not a whole number"},
		{"answer", week.OwnStory{Text: text, Reading: good, Answer: "She has 15 shells."}, "does not say 14"},
		{"translation without a number", week.OwnStory{Text: text, Reading: good, In: map[string]string{"es": "Lina tiene 8 conchas."}}, "does not tell 6"},
		{"translation with another", week.OwnStory{Text: text, Reading: good, In: map[string]string{"es": "Lina tiene 8 conchas. Encuentra 6 de 7."}}, "tells 7"},
		{"translation into the same", week.OwnStory{Text: text, Reading: good, In: map[string]string{"en": text}}, "language of the story itself"},
		{"open mark", week.OwnStory{Text: "Lina has [8 shells.", Reading: good}, "is not closed"},
		{"mark without number", week.OwnStory{Text: "Lina has [shells]. " + text, Reading: good}, "does not hold one number"},
		{"mark not used", week.OwnStory{Text: "[3] days ago. " + text, Reading: good}, "is marked as a number that counts"},
		{"no difference", week.OwnStory{Text: "Lina has 8 and Omar 8.", Reading: "compare-difference-more 8 + ? = 8"}, "both amounts are the same"},
		{"too many pairs", week.OwnStory{Text: "Lina has 300.", Reading: "together-both 300 = ? + ?"}, "too many ways"},
		{"too large", week.OwnStory{Text: "Lina has 900 and 800.", Reading: "add-to-result 900 + 800 = ?"}, "1700 is larger than 1000"},
	}
	for _, test := range tests {
		files, _, problems := Assemble(ownInput(t, []week.OwnStory{test.story}, "en", "es"))
		if len(files) > 0 || len(problems) != 1 || !strings.Contains(problems[0].Text, test.want) {
			t.Errorf("%s: want a problem %q, got %d files and %v", test.name, test.want, len(files), problems)
		}
	}
	_, notices, problems := Assemble(ownInput(t, []week.OwnStory{{Text: text, Reading: "compare-bigger-more 8 + 6 = ?"}}, "en"))
	if len(problems) > 0 || len(notices) == 0 || !strings.Contains(notices[0].Text, good) {
		t.Errorf("another reading than ours: want it built with a note, got %v and %v", notices, problems)
	}
}

// What is published of a teacher's story: her words without marks, in every
// language, with everything that belongs to a story; and a stranger who works
// the pages out again finds nothing wrong.
func TestOwnStoryOnThePages(t *testing.T) {
	pages := allPages(t, ownInput(t, []week.OwnStory{
		{
			Text: "Lina has [8 shells]. She is 7. She finds [six more]. How many <shells> does she have now [?]", Reading: "add-to-result 8 + 6 = ?",
			Answer: "She has 14 shells now.", In: map[string]string{"es": "Lina tiene 8 conchas. Tiene 7 años. Encuentra seis más. ¿Cuántas tiene ahora?"},
		},
		{Text: "Omar has ten kites. How many could be red and how many blue?", Reading: "together-both 10 = ? + ?", Answer: "6 could be red and 4 blue."},
	}, "en", "es", "ar"))
	read := func(path string) string {
		data, err := fs.ReadFile(pages, path)
		if err != nil {
			t.Fatal(err)
		}
		return string(data)
	}
	date := "2026-09-07"
	if entries, _ := fs.Glob(pages, "en/*-try.html"); len(entries) == 1 {
		date = strings.TrimSuffix(strings.TrimPrefix(entries[0], "en/"), "-try.html")
	}
	tests := []struct{ page, want string }{
		{"en/%s-try.html", `<p class="say">Lina has <b class=n>8 shells</b>. She is <b class=n>7</b>. She finds <b class=n>six more</b>. How many &lt;shells&gt; does she have now </p>`},
		{"en/%s-try.html", "She has <b class=n>14</b> shells now."},
		{"en/%s-try.html", "She has <span class=gap><span class=hide>____</span></span> shells now."},
		{"es/%s-try.html", `<p class="say">Lina tiene <b class=n>8</b> conchas. Tiene <b class=n>7</b> años. Encuentra <b class=n>seis</b> más.`},
		{"ar/%s-try.html", `<p class="say" dir="ltr" lang="en">Lina has`},
		{"es/%s-try.html", `<p class="say" dir="ltr" lang="en">Omar has`},
		{"en/%s-print.html", `Lina has <b class=n>8 shells</b>`},
		{"es/%s-print.html", `La respuesta es <b class=n>14</b>.`},
	}
	for _, test := range tests {
		path := fmt.Sprintf(test.page, date)
		if !strings.Contains(strings.Join(strings.Fields(read(path)), " "), strings.TrimSpace(test.want)) && !strings.Contains(read(path), test.want) {
			t.Errorf("%s: want %s", path, test.want)
		}
	}
	report, problems := recheck.Site(pages)
	if len(problems) > 0 {
		t.Errorf("read again by a stranger:\n%v", problems)
	}
	if report.Stories == 0 {
		t.Error("the stranger found no stories")
	}
}

// Every kind can be told by a teacher, with small, round and large numbers, and
// with nothing left; chains are met within 100 (CCSS-M 2010, 2.OA.A.1).
func TestOwnStoriesOfEveryKind(t *testing.T) {
	for _, size := range [][]int{{5, 4, 3}, {40, 20, 10}, {13, 13, 0}, {347, 158, 104}, {500, 500, 0}} {
		var stories []week.OwnStory
		for _, k := range problem.Kinds() {
			p, err := problem.New(k, size[:2]...)
			if err != nil {
				p, err = problem.New(k, size...)
			}
			if text, _ := notShown(p); err != nil || text != "" || k.Steps() != nil && size[0] > 100 {
				continue
			}
			text := "A story tells"
			for _, q := range p.Told() {
				text += fmt.Sprintf(" %d shells and", q.Value)
			}
			stories = append(stories, week.OwnStory{Text: text + " asks.", Reading: reading.Line(p)})
		}
		for len(stories) > 0 {
			n := min(week.MaxStories, len(stories))
			if _, problems := recheck.Site(allPages(t, ownInput(t, stories[:n], "en"))); len(problems) > 0 {
				t.Errorf("%v: read again by a stranger:\n%v", size, problems)
			}
			stories = stories[n:]
		}
	}
}
