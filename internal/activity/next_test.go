package activity

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"homebuild/internal/documented"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// proposed is a school year of 36 weeks that a teacher takes as it is proposed,
// from the first target of a grade on.
func proposed(t *testing.T, grade problem.Grade) (plans []WeekPlan, whys []Suggestion) {
	t.Helper()
	targets := embedded(t)
	first := slices.IndexFunc(targets, func(t Target) bool { return t.Grade == grade })
	why := Suggestion{Target: targets[first]}
	var requests []Request
	p, past := newPlanner(), &Planner{}
	for i := range 36 {
		if i > 0 {
			why, _ = Next(grade, plans, targets)
		}
		r := Request{Week: monday(i), Key: "puddle", Target: why.Target, Stories: 4, Review: true}
		r.Focus, _, _ = past.BestFocus(requests, r)
		requests, whys = append(requests, r), append(whys, why)
		plans = append(plans, p.week(r))
	}
	return plans, whys
}

// A year of each grade, made by the proposals alone: every target has its week,
// every kind of the grade and every addition fact that the grade knows is met
// (CCSS-M 2010: within 10 in kindergarten, K.OA.A.2; all sums of two one-digit
// numbers by the end of grade 2, 2.OA.B.2), what grade 2 masters comes late in
// grade 1 and two steps last in grade 2 (Progressions for the CCSS-M, K-5
// Operations and Algebraic Thinking), and no reason is given that does not hold.
func TestProposedYears(t *testing.T) {
	var b strings.Builder
	for grade := problem.Grade(0); grade <= 3; grade++ {
		if testing.Short() && grade != 1 {
			continue
		}
		plans, whys := proposed(t, grade)
		checkWhys(t, plans, whys)
		checkYear(t, plans, grade)
		checkReturns(t, plans)
		if grade > 0 { // kindergarten has three ways in all
			checkShares(t, plans)
		}
		name := []string{"Kindergarten", "Grade 1", "Grade 2", "Grade 3"}[grade]
		fmt.Fprintf(&b, "### %s\n\n| week | target | focus | stories |\n| --- | --- | --- | --- |\n", name)
		for i, w := range plans {
			fmt.Fprintf(&b, "| %d | %s | %v | %s |\n", i+1, w.Request.Target.ID, w.Request.Focus, inEquations(w))
		}
		b.WriteString("\n")
	}
	if !testing.Short() {
		documented.Hold(t, mathematics, "years", b.String())
	}
}

// inEquations is a week's stories as equations.
func inEquations(w WeekPlan) string {
	var out []string
	for _, a := range w.All() {
		equation := a.Problem.Equation().String()
		if a.Returns {
			equation = "(" + equation + ")"
		}
		out = append(out, equation)
	}
	return strings.Join(out, ", ")
}

func checkYear(t *testing.T, plans []WeekPlan, grade problem.Grade) {
	t.Helper()
	first, last := map[string]int{}, map[string]int{}
	for i, w := range plans {
		id := w.Request.Target.ID
		if at, ok := last[id]; ok && i-at < rest {
			t.Errorf("grade %d: %s returns after %d weeks", grade, id, i-at)
		}
		if _, ok := first[id]; !ok {
			first[id] = i
		}
		last[id] = i
	}
	kinds, list := map[problem.Kind]bool{}, 0
	for _, target := range embedded(t) {
		if target.Grade != grade {
			continue
		}
		at, ok := first[target.ID]
		if !ok || at < list {
			t.Errorf("grade %d: %s has its week at %d, want it after those before it in the list", grade, target.ID, at)
		}
		list = at
		for _, k := range target.Kinds {
			kinds[k] = true
		}
		if late := slices.ContainsFunc(target.Kinds, problem.Kind.Difficult); grade == 1 && late && at < 18 {
			t.Errorf("%s, which grade 2 masters, comes in week %d of grade 1", target.ID, at+1)
		}
		if twoSteps(target) && grade == 2 && at < 18 {
			t.Errorf("%s comes in week %d of grade 2", target.ID, at+1)
		}
	}
	c := Cover(plans, grade)
	for _, row := range c.Kinds {
		if kinds[row.Kind] && row.Total == 0 {
			t.Errorf("grade %d: no week has a story of the kind %v", grade, row.Kind)
		}
	}
	for _, l := range c.Lacks {
		t.Errorf("grade %d lacks: %s", grade, l.Text)
	}
	if list+1 < len(plans) && sameList(plans[list+1:], plans[:len(plans)-list-1]) {
		t.Errorf("grade %d: after week %d the list comes again", grade, list+1)
	}
}

// checkReturns wants what comes back to be worth it: a story of an earlier week from
// the upper half of its range, and in the second half of the year no facts that
// everybody knows.
func checkReturns(t *testing.T, plans []WeekPlan) {
	t.Helper()
	for i, w := range plans {
		for _, a := range w.All() {
			most := 0
			for _, n := range a.Problem.Quantities() {
				most = max(most, n.Value)
			}
			if a.Returns && a.within > 10 && 2*most <= a.within {
				t.Errorf("week %d: %v comes back, of the lower half of %d", i+1, a.Problem.Equation(), a.within)
			}
			if late := i >= len(plans)/2; late && !a.Returns && w.Request.Target.aboutFacts() && (most < 8 || hasOne(a.Problem)) {
				t.Errorf("week %d is about %v, so late", i+1, a.Problem.Equation())
			}
		}
	}
}

// checkShares wants no way of working to lead more than four of any eighteen weeks.
func checkShares(t *testing.T, plans []WeekPlan) {
	t.Helper()
	for i := range plans[:len(plans)-17] {
		led := map[strategy.Name]int{}
		for _, w := range plans[i : i+18] {
			if led[w.Request.Focus]++; led[w.Request.Focus] > 4 {
				t.Errorf("weeks %d to %d: %v leads more than four of them", i+1, i+18, w.Request.Focus)
			}
		}
	}
}

// sameList reports whether weeks have the same targets in the same order.
func sameList(a, b []WeekPlan) bool {
	return slices.EqualFunc(a, b, func(a, b WeekPlan) bool { return a.Request.Target.ID == b.Request.Target.ID })
}

// checkWhys counts again what each reason says.
func checkWhys(t *testing.T, plans []WeekPlan, whys []Suggestion) {
	t.Helper()
	for i, s := range whys[1:] {
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
				t.Errorf("week %d, %s: kind %v met %v, and said to be new %v", i+2, s.Target.ID, k, met[k], s.New)
			}
		}
		if before != s.Before {
			t.Errorf("week %d, %s: had %d weeks, want %d said", i+2, s.Target.ID, before, s.Before)
		}
	}
}

func TestNextWithoutWeeks(t *testing.T) {
	if _, ok := Next(1, nil, []Target{named(t, "add-within-20")}); ok {
		t.Error("want no proposal without a week to go on from")
	}
	weeks := Year(weeksOf(named(t, "add-within-20"), 1, 4))
	if _, ok := Next(1, weeks, []Target{named(t, "add-within-5")}); ok {
		t.Error("want no proposal without a target of the grade")
	}
}

// The best focus is one of the target's own, and no other helps with more.
func TestBestFocusAndPicture(t *testing.T) {
	for _, target := range sample(t, 3) {
		r := Request{Week: monday(0), Key: "puddle", Target: target, Stories: 4}
		focus, helps, stories := new(Planner).BestFocus(nil, r)
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
		kind, shows, _ := new(Planner).BestPicture(nil, r)
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
