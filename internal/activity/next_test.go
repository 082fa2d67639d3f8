package activity

import (
	"slices"
	"testing"

	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// year is a year of weeks that follow the proposals, from a first target on.
func yearFrom(t *testing.T, first string, weeks int) (plans []WeekPlan, whys []Suggestion) {
	t.Helper()
	targets, err := Targets()
	if err != nil {
		t.Fatal(err)
	}
	requests := []Request{{Week: monday(0), Key: "puddle", Target: named(t, first), Stories: 4}}
	for i := 1; i <= weeks; i++ {
		plans = Year(requests)
		s, ok := Next(plans, targets)
		if !ok {
			t.Fatalf("no proposal after %d weeks", i)
		}
		whys = append(whys, s)
		requests = append(requests, Request{Week: monday(i), Key: "puddle", Target: s.Target, Stories: 4})
	}
	return Year(requests), whys
}

// Following the proposals, a class meets every kind of its grade's targets, then
// every target, and no reason is given that does not hold.
func TestNextFillsTheYear(t *testing.T) {
	targets, err := Targets()
	if err != nil {
		t.Fatal(err)
	}
	for _, first := range []string{"add-within-5", "add-within-20", "add-within-100", "add-within-1000"} {
		t.Run(first, func(t *testing.T) {
			grade := named(t, first).Grade
			var of []string
			kinds := map[problem.Kind]bool{}
			for _, target := range targets {
				if target.Grade == grade {
					of = append(of, target.ID)
					for _, k := range target.Kinds {
						kinds[k] = true
					}
				}
			}
			plans, whys := yearFrom(t, first, len(of)+2)
			checkWhys(t, plans, whys)
			had := map[string]bool{}
			for _, w := range plans[:len(of)] {
				had[w.Request.Target.ID] = true
			}
			for _, id := range of {
				if !had[id] {
					t.Errorf("%s has no week among the first %d", id, len(of))
				}
			}
			for _, row := range Cover(plans, grade).Kinds {
				if kinds[row.Kind] && row.Total == 0 {
					t.Errorf("no week has a story of the kind %v", row.Kind)
				}
			}
			last := whys[len(whys)-1]
			if last.Before == 0 || len(last.New) > 0 {
				t.Errorf("after all targets: want one that had its week, got %+v", last)
			}
		})
	}
}

// checkWhys counts again what each reason says.
func checkWhys(t *testing.T, plans []WeekPlan, whys []Suggestion) {
	t.Helper()
	for i, s := range whys {
		met := map[problem.Kind]bool{}
		before := 0
		for _, w := range plans[:i+1] {
			for _, a := range w.All() {
				met[a.Problem.Kind()] = true
			}
			if w.Request.Target.ID == s.Target.ID {
				before++
			}
		}
		for _, k := range s.Target.Kinds {
			if slices.Contains(s.New, k) == met[k] {
				t.Errorf("week %d, %s: kind %v met %v, and said to be new %v", i+1, s.Target.ID, k, met[k], s.New)
			}
		}
		if before != s.Before {
			t.Errorf("week %d, %s: had %d weeks, want %d said", i+1, s.Target.ID, before, s.Before)
		}
	}
}

func TestNextWithoutWeeks(t *testing.T) {
	if _, ok := Next(nil, []Target{named(t, "add-within-20")}); ok {
		t.Error("want no proposal without a week to go on from")
	}
	weeks := Year(weeksOf(named(t, "add-within-20"), 1, 4))
	if _, ok := Next(weeks, []Target{named(t, "add-within-5")}); ok {
		t.Error("want no proposal without a target of the grade")
	}
}

// The best focus is one of the target's own, and no other helps with more.
func TestBestFocusAndPicture(t *testing.T) {
	targets, err := Targets()
	if err != nil {
		t.Fatal(err)
	}
	for _, target := range targets {
		r := Request{Week: monday(0), Key: "puddle", Target: target, Stories: 4}
		focus, helps, stories := BestFocus(nil, r)
		if !slices.Contains(target.Strategies, focus) || stories != 5 {
			t.Errorf("%s: focus %v for %d stories, want one of %v for 5", target.ID, focus, stories, target.Strategies)
		}
		r.Focus = focus
		fitting := 0
		for _, a := range Year([]Request{r})[0].All() {
			steps := a.Problem.Steps()
			if slices.ContainsFunc(steps, func(p problem.Problem) bool { return strategy.Fits(focus, p.Calculation()) }) {
				fitting++
			}
		}
		if fitting < helps {
			t.Errorf("%s: %v is said to help with %d stories and fits %d", target.ID, focus, helps, fitting)
		}
		kind, shows, _ := BestPicture(nil, r)
		fits := 0
		for _, a := range Year([]Request{r})[0].All() {
			if picture.Fits(kind, a.Problem) {
				fits++
			}
		}
		if fits != shows || !slices.Contains(target.Pictures, kind) {
			t.Errorf("%s: %v is said to show %d stories and shows %d", target.ID, kind, shows, fits)
		}
	}
}
