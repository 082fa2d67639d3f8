package main

import (
	"testing"
	"testing/fstest"

	"homebuild/internal/recheck"
	"homebuild/internal/school"
)

// Every number on every page of the example year is read again and worked out
// again, by a checker that shares no code with what made it.
func TestEveryNumberIsRight(t *testing.T) {
	t.Parallel()
	report, problems := recheck.Site(publishedExample(t))
	for _, p := range problems {
		t.Error(p)
	}
	for name, got := range map[string]int{
		"equations": report.Equations, "stories": report.Stories, "choices": report.Choices,
		"pictures": report.Pictures, "dots": report.Dots, "estimates": report.Estimates, "links": report.Links,
	} {
		if got < 50 {
			t.Errorf("only %d %s were found to be rechecked", got, name)
		}
	}
	t.Logf("%d pages, %d stories, %d choices, %d equations, %d pictures, %d dots, %d estimates, %d links",
		report.Pages, report.Stories, report.Choices, report.Equations, report.Pictures, report.Dots, report.Estimates, report.Links)
}

// publishedExample builds the example school in memory.
func publishedExample(t *testing.T) fstest.MapFS {
	t.Helper()
	in, problems := school.Example().Load()
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return rendered(t, in)
}
