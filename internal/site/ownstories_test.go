package site

import (
	"fmt"
	"io/fs"
	"slices"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"homebuild/internal/ownstory"
	"homebuild/internal/problem"
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

// Nothing is published of which the teacher has not said what it tells: the build
// stops with the lines to choose from.
func TestNothingUnchosenIsPublished(t *testing.T) {
	tests := []struct{ text, want, hint string }{
		{"Lina has 8 shells. She finds 6 more.", "waits for you to say what happens; numbers that count: 8 shells, 6 more", `happens = "joins" `},
		{"[Each of 3 boys] has [four kites] in 2026.", "numbers that count: Each of 3 boys, four kites; left out: 2026", `happens = "compared" `},
		{"Lina has ten kites.", "waits for you to say what it asks; numbers that count: ten kites", "Any pair is right."},
		{"1, 2, 3, 4 and 5.", "no kind of story fits", "mark the one to four numbers"},
		{"One day.", "numbers that count: none", "mark"},
		{"Nothing to count.", "no numbers to count with", "[a dozen = 12]"},
	}
	for _, test := range tests {
		files, _, problems := Assemble(ownInput(t, []week.OwnStory{{Text: test.text}}, "en"))
		if len(files) > 0 || len(problems) != 1 || !strings.Contains(problems[0].Text, test.want) || !strings.Contains(problems[0].Hint, test.hint) {
			t.Errorf("%s: want a problem %q with %q, got %d files, problems: %v", test.text, test.want, test.hint, len(files), problems)
		}
	}
}

// What contradicts the text stops the build, all of it at once.
func TestContradictions(t *testing.T) {
	const text, good = "Lina has 8 shells. She finds 6 more. How many shells does she have now?", "add-to-result 8 + 6 = ?"
	tests := []struct {
		name  string
		story week.OwnStory
		want  string
	}{
		{"text", week.OwnStory{Text: "Lina has [8 shells.", Kind: good}, "stands alone"},
		{"equation", week.OwnStory{Text: text, Kind: "add-to-result", Equation: "8 + 7 = ?"}, "does not tell what the equation needs: 7"},
		{"choice", week.OwnStory{Text: text, Kind: "add-to-result", Choice: 2}, "choice 2 is add-to-change"},
		{"answer", week.OwnStory{Text: text, Kind: good, Answer: "She has 15 shells."}, "the answer is 14"},
		{"mark in an answer", week.OwnStory{Text: text, Kind: good, Answer: "She has [14."}, "stands alone"},
		{"translation", week.OwnStory{Text: text, Kind: good, In: map[string]string{"es": "Lina tiene 8 conchas."}}, "does not tell 6"},
		{"mark in a translation", week.OwnStory{Text: text, Kind: good, In: map[string]string{"es": "Lina tiene 8] conchas."}}, "stands alone"},
		{"translation into the same", week.OwnStory{Text: text, Kind: good, In: map[string]string{"en": text}}, "language of the story itself"},
	}
	for _, test := range tests {
		files, _, problems := Assemble(ownInput(t, []week.OwnStory{test.story}, "en", "es"))
		if len(files) > 0 || len(problems) != 1 || !strings.Contains(problems[0].Text, test.want) {
			t.Errorf("%s: want a problem %q, got %d files and %v", test.name, test.want, len(files), problems)
		}
	}
	_, _, problems := Assemble(ownInput(t, []week.OwnStory{{Text: text, Kind: good, Answer: "15", In: map[string]string{"es": "8 y 7"}}}, "en", "es"))
	if len(problems) != 2 {
		t.Errorf("two things are wrong: want both told, got %v", problems)
	}
}

// What is published of a teacher's story: her words without marks, in every
// language, with everything that belongs to a story; and a stranger who works
// the pages out again finds nothing wrong.
func TestOwnStoryOnThePages(t *testing.T) {
	pages := allPages(t, ownInput(t, []week.OwnStory{
		{
			Text: "Lina has [8 shells]. She is 7. She finds [six more]. How many <shells> does she have now?", Kind: "add-to-result 8 + 6 = ?",
			Answer: "She has 14 shells now.", In: map[string]string{"es": "Lina tiene 8 conchas. Tiene 7 años. Encuentra seis más. ¿Cuántas tiene ahora?"},
		},
		{Text: "Omar has ten kites. How many could be red and how many blue?", Kind: "together-both 10 = ? + ?", Answer: "6 could be red and 4 blue."},
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
		{"en/%s-try.html", `<p class="say">Lina has <b class=n>8 shells</b>. She is <b class=n>7</b>. She finds <b class=n>six more</b>. How many &lt;shells&gt; does she have now?</p>`},
		{"en/%s-try.html", "She has <b class=n>14</b> shells now."},
		{"en/%s-try.html", "She has <span class=gap><span class=hide>blank</span></span> shells now."},
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
	in := ownInput(t, nil, "en")
	monday := time.Date(2026, 9, 14, 0, 0, 0, 0, time.UTC)
	plain := in.Site.Weeks[0]
	in.Site.Weeks = nil
	for _, size := range [][]int{{5, 4, 3}, {40, 20, 10}, {13, 13, 0}, {347, 158, 104}, {500, 500, 0}} {
		for stories := range slices.Chunk(storiesOfEveryKind(t, size), week.MaxStories) {
			w := plain
			w.Date, w.OwnStories = monday.AddDate(0, 0, 7*len(in.Site.Weeks)).Format(time.DateOnly), stories
			in.Site.Weeks = append(in.Site.Weeks, w)
		}
	}
	report, problems := recheck.Site(allPages(t, in))
	if len(problems) > 0 {
		t.Errorf("read again by a stranger:\n%v", problems)
	}
	if len(in.Site.Weeks) < 10 || report.Stories < 8*len(in.Site.Weeks) {
		t.Errorf("the stranger found %d stories in %d weeks", report.Stories, len(in.Site.Weeks))
	}
}

// storiesOfEveryKind are a teacher's stories with numbers of a size, one of each kind
// that bears them.
func storiesOfEveryKind(t *testing.T, size []int) (stories []week.OwnStory) {
	t.Helper()
	for _, k := range problem.Kinds() {
		p, err := problem.New(k, size[:2]...)
		if err != nil {
			p, err = problem.New(k, size...)
		}
		if err != nil || k.Steps() != nil && size[0] > 100 {
			continue
		}
		words := "A story tells"
		for _, q := range p.Given() {
			words += fmt.Sprintf(" %d shells and", q.Value)
		}
		line := ownstory.Choice{Problem: p}.Line()
		text, err := ownstory.NewLanguage("en", nil).Read(words + " asks.")
		if err != nil {
			t.Fatal(err)
		}
		if _, err := text.Choose(ownstory.Wish{Kind: line}); err != nil { // cannot be shown
			continue
		}
		stories = append(stories, week.OwnStory{Text: text.Plain, Kind: line})
	}
	return stories
}
