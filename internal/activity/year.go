package activity

import (
	"cmp"
	"slices"

	"homebuild/internal/estimate"
	"homebuild/internal/mistake"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// Stories bound how many stories to try a week has.
const (
	FewestStories = 1
	MostStories   = 8
)

// Year plans the weeks in the order of their dates. What a week has is decided
// by its own request and by the weeks before it, never by those after. A number
// of stories out of bounds is brought into them.
func Year(requests []Request) []WeekPlan {
	inOrder := slices.Clone(requests)
	slices.SortStableFunc(inOrder, func(a, b Request) int { return cmp.Compare(a.Week, b.Week) })
	p := newPlanner()
	plans := make([]WeekPlan, len(inOrder))
	for i, r := range inOrder {
		plans[i] = p.week(r)
	}
	return plans
}

// week plans one week and remembers it.
func (p *planner) week(r Request) WeekPlan {
	r.Stories = min(max(r.Stories, FewestStories), MostStories)
	p.memory.week++
	plan := WeekPlan{Request: r}
	var ranks []rank
	// The teacher's own come first, and the others fill up. They are those that
	// the week would have anyway: a story of her own reshuffles nothing.
	kinds := p.kindsFor(r, r.Stories+1)
	kinds = kinds[:max(1, len(kinds)-len(r.Given))]
	for _, given := range r.Given {
		p.memory.meet(given.Problem)
		plan.Stories = append(plan.Stories, Activity{Problem: given.Problem, ExtraNumber: given.extra(), Given: true})
	}
	for place, kind := range kinds {
		if r.Review && place == len(kinds)-1 && place > 1 {
			if earlier, ok := p.memory.due(); ok {
				p.memory.meet(earlier)
				plan.Stories = append(plan.Stories, Activity{Problem: earlier, Returns: true})
				continue
			}
		}
		chosen, rank := p.choose(r, kind, place)
		p.memory.meet(chosen)
		ranks = append(ranks, rank)
		if place == 0 {
			plan.Worked = Activity{Problem: chosen}
			continue
		}
		plan.Stories = append(plan.Stories, Activity{Problem: chosen})
	}
	ours := plan.Stories[len(r.Given):]
	extra := len(ours) == 0 || r.Extra && placeExtra(r, ours)
	plan.Worked.complete(r)
	for i := range plan.Stories {
		plan.Stories[i].complete(r)
	}
	plan.Warnings = p.warnings(plan, ranks, r.Extra && !extra)
	return plan
}

// complete works out all that belongs to the activity's numbers.
func (a *Activity) complete(r Request) {
	a.Grade = r.Target.Grade
	a.Picture = r.picture()
	a.focus, a.good = r.Focus, r.Target.Strategies
	a.Estimate, a.HasEstimate = estimated(a.Problem, a.ExtraNumber, a.Grade)
}

func (r Request) picture() picture.Kind {
	if r.Picture.Valid() || len(r.Target.Pictures) == 0 {
		return r.Picture
	}
	return r.Target.Pictures[0]
}

// estimated is the estimate for the working that finds the answer, where one is of
// use. A question with many right answers needs none.
func estimated(p problem.Problem, extra int, grade problem.Grade) (estimate.Estimate, bool) {
	if p.Kind() == problem.TogetherBoth {
		return estimate.Estimate{}, false
	}
	return estimate.For(p.Calculation(), mistake.Likely(p, extra), grade)
}
