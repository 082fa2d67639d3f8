package site

import (
	"reflect"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"homebuild/internal/activity"
)

// What is kept is told as it was chosen: the weeks of the example, kept, are the
// same to the last number, whatever the key, and so are they when the teacher
// changes her mind about an earlier one.
func TestKeptStoriesStand(t *testing.T) {
	in := exampleInput(t, "en")
	chosen, _, problems := Plan(in)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	for i := range in.Site.Weeks {
		in.Site.Weeks[i].Kept = chosen.Choices(in.Site.Weeks[i].Date)
	}
	in.Site.Key = "another key"
	in.Site.Weeks[0].Kept = nil
	in.Site.Weeks[0].Target = "subtract-within-20"
	kept, _, problems := Plan(in)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	was, changed := renderedPages(t, chosen), 0
	for path, html := range renderedPages(t, kept) {
		switch {
		case was[path] == html:
		case strings.Contains(path, in.Site.Weeks[0].Date) || strings.HasSuffix(path, "index.html"), strings.HasSuffix(path, "feed.xml"):
			changed++
		default:
			t.Errorf("%s differs, although its week is kept", path)
		}
	}
	if changed == 0 {
		t.Error("the week that was changed is the same")
	}
}

// To keep the stories of a week makes none of its pages anew.
func TestKeepingChangesNoKey(t *testing.T) {
	in := exampleInput(t, "en")
	in.Program = "1"
	keys := func() map[string]string {
		p, _, problems := Plan(in)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		out := map[string]string{}
		for _, f := range append(p.Pages(), p.Desk()...) {
			out[f.Path] = f.Key
		}
		for i, w := range in.Site.Weeks {
			in.Site.Weeks[i].Kept = p.Choices(w.Date)
		}
		return out
	}
	if diff := cmp.Diff(keys(), keys()); diff != "" {
		t.Errorf("keys of weeks (-chosen +kept):\n%s", diff)
	}
}

// What a week keeps costs as much among many weeks as alone: a build asks it of all of
// them.
func TestChoicesOfOneWeek(t *testing.T) {
	in := exampleInput(t, "en")
	all, _, problems := Plan(in)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	i := len(all.lessons) / 2
	date := all.lessons[i].date
	alone := newPlanned(in, all.lessons[i:i+1], nil)
	if want, got := alone.Choices(date), all.Choices(date); !reflect.DeepEqual(want, got) || len(want) == 0 {
		t.Errorf("%s has the choices %v alone, and %v among all", date, want, got)
	}
	cost := func(p *Planned) float64 { return testing.AllocsPerRun(10, func() { p.Choices(date) }) }
	if want, got := cost(alone), cost(all); got != want {
		t.Errorf("%v allocations among %d weeks, %v alone", got, len(all.lessons), want)
	}
	if got := all.Choices("1999-01-04"); got != nil {
		t.Errorf("a week that is not there has the choices %v", got)
	}
}

// Other numbers are others, easier ones ask for less and harder ones for more.
func TestAnother(t *testing.T) {
	in := exampleInput(t, "en")
	in.Site.Weeks = in.Site.Weeks[:6]
	p, _, problems := Plan(in)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	find := func(id string) (activity.Target, bool) {
		for _, target := range in.Targets {
			if target.ID == id {
				return target, true
			}
		}
		return activity.Target{}, false
	}
	found := map[activity.Change]int{}
	for i, l := range p.lessons {
		now := l.worked.Problem
		for _, change := range []activity.Change{activity.OtherNumbers, activity.EasierNumbers, activity.HarderNumbers} {
			other, ok := activity.Another(p.Request(i), now, now.Kind(), change, nil, find)
			if !ok {
				continue
			}
			found[change]++
			if other.Kind() != now.Kind() || change == activity.HarderNumbers && other.Calculation().Largest() < now.Calculation().Largest()/10 {
				t.Errorf("%s: %v for %v, which is no such story", l.date, other, now)
			}
		}
	}
	for change, least := range map[activity.Change]int{activity.OtherNumbers: len(p.lessons), activity.EasierNumbers: len(p.lessons) / 2, activity.HarderNumbers: len(p.lessons) / 2} {
		if found[change] < least {
			t.Errorf("change %d was found for %d of %d stories", change, found[change], len(p.lessons))
		}
	}
}

// rendered are the pages by their paths.
func renderedPages(t *testing.T, p *Planned) map[string]string {
	t.Helper()
	out := map[string]string{}
	for _, f := range p.Pages() {
		data, err := f.Render()
		if err != nil {
			t.Fatal(err)
		}
		out[f.Path] = string(data)
	}
	return out
}
