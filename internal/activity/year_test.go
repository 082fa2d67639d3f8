package activity

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"homebuild/internal/mistake"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// monday is the date of a school week, counted from 0.
func monday(i int) string {
	return time.Date(2026, 9, 7, 0, 0, 0, 0, time.UTC).AddDate(0, 0, 7*i).Format(time.DateOnly)
}

func weeksOf(target Target, weeks, stories int) []Request {
	var out []Request
	for i := range weeks {
		out = append(out, Request{Week: monday(i), Key: "puddle", Target: target, Stories: stories})
	}
	return out
}

// told writes down what a plan has, to compare two.
func told(plans []WeekPlan) string {
	var b strings.Builder
	for _, w := range plans {
		for _, a := range w.All() {
			fmt.Fprintln(&b, w.Request.Week, a.Problem.Kind(), a.Problem.Numbers(), a.ExtraNumber, a.Returns, len(a.Ways()), a.Estimate.Equation)
		}
		for _, x := range w.Warnings {
			if x.Setting != "picture" { // which is about what is asked for, not about what is planned
				fmt.Fprintln(&b, x)
			}
		}
	}
	return b.String()
}

// Every target serves four weeks of eight stories and the worked one: either no
// numbers come again within two weeks, or the week says how many do.
func TestFourWeeksOfEveryTarget(t *testing.T) {
	for _, target := range sample(t, 3) {
		met := map[string]int{}
		for i, w := range Year(weeksOf(target, 4, 8)) {
			if len(w.Stories) != 8 {
				t.Errorf("%s, %s: %d stories, want 8", target.ID, w.Request.Week, len(w.Stories))
			}
			repeats := 0
			for _, a := range w.All() {
				checkSet(t, target, a.Problem)
				key := shown(a.Problem)
				if last, ok := met[key]; ok && i-last <= 1 {
					repeats++
				}
				met[key] = i
			}
			said := 0
			for _, warning := range w.Warnings {
				if warning.Setting == "target" {
					said = warning.Count
				}
			}
			if said != repeats {
				t.Errorf("%s, %s: %d stories repeat numbers, and the week says %d", target.ID, w.Request.Week, repeats, said)
			}
		}
	}
}

// shown is what a child would call the same numbers again, written without the
// engine's own key: a sum in either order, a total to take apart.
func shown(p problem.Problem) string {
	n := p.Numbers()
	switch {
	case p.Kind() == problem.TogetherBoth:
		return fmt.Sprint("apart ", n[0]+n[1])
	case p.Kind().Steps() != nil:
		return fmt.Sprint(p.Kind(), n)
	case p.Calculation().Op == problem.Plus:
		sum := slices.Sorted(slices.Values(p.Calculation().Numbers))
		return fmt.Sprint("plus ", sum)
	}
	return fmt.Sprint("minus ", p.Calculation().Numbers)
}

func TestSameRequestsSamePlan(t *testing.T) {
	var requests []Request
	for i, target := range sample(t, 2) {
		requests = append(requests, Request{Week: monday(i), Key: "puddle", Target: target, Stories: 4, Extra: true, Review: true})
	}
	want := told(Year(requests))
	turned := slices.Clone(requests)
	slices.Reverse(turned)
	if got := told(Year(turned)); got != want {
		t.Error("the order in which weeks are given changes the plan")
	}
	for n := 0; n < len(requests); n += 7 {
		if got := told(Year(requests[:n])); !strings.HasPrefix(want, got) {
			t.Errorf("weeks after the first %d change what these have", n)
		}
	}
	for i := range requests {
		requests[i].NumberWords = true
		requests[i].Picture = requests[i].Target.Pictures[0]
	}
	if got := told(Year(requests)); got != want {
		t.Error("number words or the picture change the numbers")
	}
	for i := range requests {
		requests[i].Key = "pond"
	}
	if got := told(Year(requests)); got == want {
		t.Error("another key gives the same numbers")
	}
}

// Each kind of a target comes before one comes again, and over the weeks the
// kinds keep step.
func TestKindsAreSpread(t *testing.T) {
	for _, target := range sample(t, 4) {
		total := map[problem.Kind]int{}
		for _, w := range Year(weeksOf(target, 4, 8)) {
			here := map[problem.Kind]int{}
			for _, a := range w.All() {
				here[a.Problem.Kind()]++
				total[a.Problem.Kind()]++
			}
			even(t, target, w.Request.Week, here)
			if about := target.Kinds[0].Difficult(); w.Worked.Problem.Kind().Difficult() != about {
				t.Errorf("%s, %s: the worked story is a %v; is the target about difficult ones: %v", target.ID, w.Request.Week, w.Worked.Problem.Kind(), about)
			}
		}
		for _, k := range target.Kinds {
			if total[k] == 0 {
				t.Errorf("%s: four weeks never have %v", target.ID, k)
			}
		}
	}
}

func even(t *testing.T, target Target, week string, count map[problem.Kind]int) {
	t.Helper()
	most, least := 0, 9
	for _, k := range target.Kinds {
		most, least = max(most, count[k]), min(least, count[k])
	}
	if most-least > 1 {
		t.Errorf("%s, %s: kinds %v, want each before one comes again", target.ID, week, count)
	}
}

// Grade 2 chains no two of the four difficult subtypes (Progressions for the
// CCSS-M, K-5 Operations and Algebraic Thinking, grade 2).
func TestNoDifficultChains(t *testing.T) {
	for _, k := range problem.Kinds() {
		difficult := 0
		for _, step := range k.Steps() {
			if step.Difficult() {
				difficult++
			}
		}
		if difficult > 1 {
			t.Errorf("%v chains %d difficult kinds", k, difficult)
		}
	}
}

// Where a target has enough, no story has a 0 or a 1 or tells its answer, no
// answer comes twice, and the week's strategy always helps.
func TestWishesAreMet(t *testing.T) {
	for _, row := range []struct {
		id    string
		focus strategy.Name
	}{
		{"add-within-20", strategy.MakeTen},
		{"subtract-within-20", strategy.BridgeBack},
		{"find-the-change-within-20", strategy.ThinkAddition},
		{"add-three-within-20", strategy.FriendlyPair},
		{"add-within-100", strategy.SplitTens},
		{"subtract-within-100", strategy.JumpUp},
		{"add-within-1000", 0},
	} {
		requests := weeksOf(named(t, row.id), 1, 5)
		requests[0].Focus = row.focus
		w := Year(requests)[0]
		for _, warning := range w.Warnings {
			t.Errorf("%s: warned that %s", row.id, warning.Text)
		}
		answers := map[int]bool{}
		for _, a := range w.All() {
			if answers[a.Problem.Answer()] {
				t.Errorf("%s: two stories have the answer %d", row.id, a.Problem.Answer())
			}
			answers[a.Problem.Answer()] = true
			for _, q := range a.Problem.Quantities() {
				if q.Value <= 1 || !q.Unknown && q.Value == a.Problem.Answer() {
					t.Errorf("%s: %v %v is dull", row.id, a.Problem.Kind(), a.Problem.Numbers())
				}
			}
			if row.focus != 0 && a.Ways()[0].Name != row.focus {
				t.Errorf("%s: %v is worked by %v first, want %v", row.id, a.Problem.Calculation(), a.Ways()[0].Name, row.focus)
			}
		}
	}
}

func TestEveryActivityIsComplete(t *testing.T) {
	for _, target := range sample(t, 3) {
		for _, w := range Year(weeksOf(target, 1, 8)) {
			for _, a := range w.All() {
				chain := a.Problem.Kind().Steps() != nil
				if len(a.Ways()) == 0 || len(a.Ways()) > 2 || (len(a.FirstWays()) > 0) != chain {
					t.Errorf("%s: %v has %d ways and %d for a first step", target.ID, a.Problem.Kind(), len(a.Ways()), len(a.FirstWays()))
				}
				if a.Picture != target.Pictures[0] || a.Grade != target.Grade {
					t.Errorf("%s: picture %v and grade %d, want %v and %d", target.ID, a.Picture, a.Grade, target.Pictures[0], target.Grade)
				}
				if a.HasEstimate && !a.Estimate.Near(a.Problem.Answer()) {
					t.Errorf("%s: %v is not near its estimate %v", target.ID, a.Problem.Calculation(), a.Estimate.Equation)
				}
			}
		}
	}
}

// One story is asked to have a number that is not needed. Numbers that keep apart
// give a wrong number of their own when they are used, and never the right one.
func TestExtraNumber(t *testing.T) {
	for _, target := range sample(t, 3) {
		requests := weeksOf(target, 3/sparse(3), 4)
		for i := range requests {
			requests[i].Extra = true
		}
		for _, w := range Year(requests) {
			checkExtra(t, w)
		}
	}
}

func checkExtra(t *testing.T, w WeekPlan) {
	t.Helper()
	id, extras := w.Request.Target.ID, 0
	if w.Worked.WantsExtra {
		t.Errorf("%s: the worked story has an extra number", id)
	}
	for _, a := range w.Stories {
		if !a.WantsExtra {
			continue
		}
		extras++
		for n := 2; n <= 60; n += sparse(3) {
			if Apart(a.Problem, n) {
				checkApart(t, a.With(n))
			}
		}
	}
	warned := slices.ContainsFunc(w.Warnings, func(x Warning) bool { return x.Setting == "extra-sentence" })
	if extras > 1 || (extras == 0) != warned {
		t.Errorf("%s: %d extra numbers, warned %v; want one or a warning", id, extras, warned)
	}
}

func checkApart(t *testing.T, a Activity) {
	t.Helper()
	name := fmt.Sprintf("%v %v with extra %d", a.Problem.Kind(), a.Problem.Numbers(), a.ExtraNumber)
	for _, q := range a.Problem.Quantities() {
		if q.Value == a.ExtraNumber {
			t.Errorf("%s: it is also the %v", name, q.Role)
		}
	}
	used := 0
	for _, m := range mistake.Of(a.Problem, a.ExtraNumber) {
		if m.Cause == mistake.UsedExtra {
			used++
		}
		if m.Cause == mistake.UsedExtra && !m.Only || m.Answer == a.Problem.Answer() {
			t.Errorf("%s: %d is no sign of the extra number", name, m.Answer)
		}
	}
	if used == 0 {
		t.Errorf("%s cannot be worked with it", name)
	}
}

// What one week was about returns after two, four and eight weeks, in a story of
// its own kind and range, and then every eight; what every week has does not.
func TestReview(t *testing.T) {
	requests := weeksOf(named(t, "find-the-part-within-20"), 1, 4)
	requests = append(requests, weeksOf(named(t, "add-within-100"), 24, 4)[1:]...)
	var returns []int
	for i := range requests {
		requests[i].Review = true
	}
	for i, w := range Year(requests) {
		for _, a := range w.All() {
			if !a.Returns {
				continue
			}
			returns = append(returns, i)
			checkSet(t, requests[0].Target, a.Problem)
			if a.Problem.Kind() != problem.TogetherAddend {
				t.Errorf("week %d: %v returns, want the part of week 0", i, a.Problem.Kind())
			}
		}
	}
	if want := []int{2, 6, 14, 22}; !slices.Equal(returns, want) {
		t.Errorf("stories return in weeks %v, want %v", returns, want)
	}
	for i := range requests {
		requests[i].Review = false
	}
	for _, w := range Year(requests) {
		for _, a := range w.All() {
			if a.Returns {
				t.Errorf("%s: a story returns though it was turned off", w.Request.Week)
			}
		}
	}
}

func TestWarnings(t *testing.T) {
	for _, row := range []struct {
		name    string
		request Request
		setting string
		count   int
		want    string
	}{
		{"strategy that never fits", Request{Target: named(t, "subtract-within-20"), Focus: strategy.MakeTen, Stories: 3}, "focus", 4, "make-ten does not help with 4 of the 4"},
		{"picture that does not suit", Request{Target: named(t, "compare-within-20"), Picture: picture.TenFrame, Stories: 3}, "picture", 4, "ten-frame does not show 4 of the 4 stories"},
		{"too few numbers", Request{Target: named(t, "add-within-5"), Stories: 8}, "target", 3, "of the 9 stories 3 repeat numbers"},
	} {
		row.request.Week, row.request.Key = monday(0), "puddle"
		w := Year([]Request{row.request})[0]
		i := slices.IndexFunc(w.Warnings, func(x Warning) bool { return x.Setting == row.setting })
		if i < 0 || w.Warnings[i].Count != row.count || !strings.Contains(w.Warnings[i].Text, row.want) || w.Warnings[i].Hint == "" {
			t.Errorf("%s: got %+v, want one on %q with count %d and %q", row.name, w.Warnings, row.setting, row.count, row.want)
		}
	}
}

func TestStoriesAreBounded(t *testing.T) {
	for asked, want := range map[int]int{-3: 1, 0: 1, 1: 1, 8: 8, 90: 8} {
		if got := len(Year(weeksOf(named(t, "add-within-20"), 1, asked))[0].Stories); got != want {
			t.Errorf("%d stories asked: got %d, want %d", asked, got, want)
		}
	}
}

// A page begins with the easiest story, and words that mislead stand side by side
// only where there are more of them than of others.
func TestPagesGoFromEasyToHard(t *testing.T) {
	for _, target := range sample(t, 3) {
		for _, w := range Year(weeksOf(target, 4, 4)) {
			easiest, traps, together := stage(w.Stories[0].Problem.Kind()), 0, 0
			for i, a := range w.Stories {
				if stage(a.Problem.Kind()) < easiest {
					t.Errorf("%s, %s: %v comes after %v", target.ID, w.Request.Week, a.Problem.Kind(), w.Stories[0].Problem.Kind())
				}
				if a.Problem.Kind().Misleads() {
					traps++
					if i > 0 && w.Stories[i-1].Problem.Kind().Misleads() {
						together++
					}
				}
			}
			if together > max(0, 2*traps-len(w.Stories)) {
				t.Errorf("%s, %s: of %d words that mislead, %d follow another", target.ID, w.Request.Week, traps, together)
			}
		}
	}
}
