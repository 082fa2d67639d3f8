package site

import (
	"strings"
	"testing"

	"homebuild/internal/activity"
	"homebuild/internal/estimate"
	"homebuild/internal/i18n"
	"homebuild/internal/mistake"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/strategy"
)

// Every sentence that the mathematics can say has its message, with the places
// that are filled, in every language that is there.
func TestEverySentenceCanBeSaid(t *testing.T) {
	targets, err := activity.Targets()
	if err != nil {
		t.Fatal(err)
	}
	var lines []phrase.Line
	for _, more := range [][]phrase.Line{
		strategy.Lines(), estimate.Lines(), mistake.Lines(), picture.Lines(), activity.Lines(targets),
	} {
		if len(more) < 10 {
			t.Fatalf("only %d sentences listed by one room", len(more))
		}
		lines = append(lines, more...)
	}
	for _, lang := range catalogOf(t, allTags()...).Languages() {
		tag := lang.Tag()
		for _, line := range lines {
			if text, fault := said(lang, line); fault != "" || strings.TrimSpace(text) == "" {
				t.Errorf("%s: %s: said %q, %s", tag, line.ID, text, fault)
			}
		}
	}
}

// said says a line; a line that cannot be said is a bug and panics.
func said(lang *i18n.Language, line phrase.Line) (text, fault string) {
	defer func() {
		if r := recover(); r != nil {
			fault, _ = r.(string)
		}
	}()
	return lang.Plain(line), ""
}
