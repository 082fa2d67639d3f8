package site

import (
	"slices"
	"strings"
	"testing"
	"time"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/problem"
	"homebuild/internal/week"
	"homebuild/locales"
)

// The worked story of every week of the example is solved by the week's way, told in
// the events that the languages share.
func TestTheExampleIsLedByItsFocus(t *testing.T) {
	p, _, problems := Plan(exampleInput(t, "en"))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	for _, l := range p.lessons {
		if !l.worked.ByFocus() {
			t.Errorf("%s: %v is solved by %v, and the week is about %v", l.date, l.worked.Problem.Equation(), l.worked.Ways()[0].Name, l.worked.Focus())
		}
	}
}

// Told in the events that all languages share, too, every target is led by each of the
// ways that it is good for.
func TestEveryTargetIsLedByItsWays(t *testing.T) {
	in := exampleInput(t, i18n.Tags(locales.Files)...)
	events := in.SharedEvents()
	for _, target := range in.Targets {
		var asked []activity.Request
		for i, name := range target.Strategies {
			day := time.Date(2026, 9, 7, 0, 0, 0, 0, time.UTC).AddDate(0, 0, 7*i)
			asked = append(asked, activity.Request{
				Week: day.Format(time.DateOnly), Key: "kite", Target: target, Focus: name, Stories: 4, Review: true, Bears: events,
			})
		}
		for _, w := range activity.Year(asked) {
			if p := w.Worked.Problem; !w.Worked.ByFocus() || !events.Bears(p) {
				t.Errorf("%s by %v: the worked story is %v; it can be told: %t", target.ID, w.Request.Focus, p.Equation(), events.Bears(p))
			}
		}
	}
}

// A teacher who keeps a worked story that her way does not solve is told at the line of
// the way, with what to write; not of a week that is over.
func TestAKeptStoryThatTheFocusDoesNotSolve(t *testing.T) {
	in := exampleInput(t, "en")
	at := slices.IndexFunc(in.Site.Weeks, func(w week.Week) bool { return w.Date == "2026-09-28" })
	p, _, problems := Plan(in)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	kept := p.Choices("2026-09-28")
	var err error
	if kept[0].Problem, err = problem.New(problem.TakeFromResult, 7, 1); err != nil {
		t.Fatal(err)
	}
	kept[0].Event = "playground.chalk"
	in.Site.Weeks[at].Kept = kept
	for on, want := range map[string]bool{"2026-09-25": true, "2026-10-01": true, "2026-10-02": false} {
		in.On = on
		_, notices, problems := Plan(in)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		told := slices.IndexFunc(notices, func(d diag.Diagnostic) bool { return d.Value == "focus" })
		if told >= 0 != want {
			t.Errorf("on %s she is told: %t, want %t", on, told >= 0, want)
		}
		if told < 0 {
			continue
		}
		d := notices[told]
		for _, part := range []string{"7 - 1 = ?", "count-on", `focus = "count-all"`, "homebuild swap 2026-09-28 0 --kind add-to-result"} {
			if !strings.Contains(d.Text+d.Hint, part) {
				t.Errorf("%q is not in %q, %q", part, d.Text, d.Hint)
			}
		}
		if d.File != "weeks/2026-09-28.toml" || d.Line != 2 {
			t.Errorf("it points to %s:%d", d.File, d.Line)
		}
	}
}
