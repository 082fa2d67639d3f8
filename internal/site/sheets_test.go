package site

import (
	"regexp"
	"strings"
	"testing"

	"homebuild/internal/page"
)

// The sheets of all languages are those that families print, one after the other,
// each once; their drawings and style are there once, and nothing leads away.
func TestSheets(t *testing.T) {
	in := exampleInput(t, "en", "ar", "zh-Hans")
	in.Site.Weeks[0].Ladder = true
	p, _, problems := Plan(in)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	l, lesson := p.lister(), p.lessons[0]
	stack := sheetsPage{Date: lesson.date}
	for _, lang := range l.languages {
		stack.Sheets = append(stack.Sheets, p.whole(l, lang, lesson, in.Site.Weeks[0]).Print)
	}
	html := written(t, stack.view(l.common))
	if n := strings.Count(html, "<style"); n != 1 {
		t.Errorf("%d styles, want 1", n)
	}
	if strings.Contains(html, "<script") || regexp.MustCompile(`(?:href|src)="[^#]`).MatchString(html) {
		t.Error("it leads away or has a script")
	}
	chapters := strings.Split(html, `<section class="chapter `)[1:]
	if len(chapters) != len(l.languages) {
		t.Fatalf("%d sheets, want %d", len(chapters), len(l.languages))
	}
	for i, lang := range l.languages {
		if !strings.Contains(chapters[i], ` lang="`+lang.Tag()+`"`) {
			t.Errorf("sheet %d is not in %s: %.100s", i, lang.Tag(), chapters[i])
		}
		// Two sides each, or the next language would begin on the back of this one.
		if n := strings.Count(chapters[i], `<section class="side`); n != 2 {
			t.Errorf("%s: %d sides, want 2", lang.Tag(), n)
		}
		families := stack.Sheets[i].view(l.common).(*page.Print)
		if len(families.Ladder) == 0 {
			t.Errorf("%s: the families' sheet has no stories beside the week's", lang.Tag())
		}
		families.Ladder = nil
		alone, inStack := sides(written(t, families)), sides(chapters[i])
		if !strings.HasPrefix(inStack, alone) || len(alone) < 5_000 {
			t.Errorf("%s: the sheet among the others is not the one that families print:\n%s\n%s", lang.Tag(), alone, inStack)
		}
	}
}

func written(t *testing.T, v page.View) string {
	t.Helper()
	var b strings.Builder
	if err := page.Render(&b, v); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

var pictureID = regexp.MustCompile(`picture-\d+`)

// sides are the two sides of a sheet, its pictures without their numbers.
func sides(html string) string {
	from := strings.Index(html, `<section class="side`)
	to := strings.LastIndex(html, `<ul class="more">`)
	if to < 0 {
		to = strings.Index(html, `</main>`)
	}
	if to < 0 {
		to = len(html)
	}
	return pictureID.ReplaceAllString(html[from:to], "picture")
}
