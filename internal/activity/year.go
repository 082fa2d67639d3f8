package activity

import (
	"cmp"
	"slices"

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
	p := newPlanner()
	plans := make([]WeekPlan, len(requests))
	for i, r := range inOrder(requests) {
		plans[i] = p.week(r)
	}
	return plans
}

// inOrder gives requests in the order of their dates.
func inOrder(requests []Request) []Request {
	return slices.SortedStableFunc(slices.Values(requests), func(a, b Request) int { return cmp.Compare(a.Week, b.Week) })
}

// week plans one week and remembers it.
func (p *planner) week(r Request) WeekPlan {
	r.Stories = min(max(r.Stories, FewestStories), MostStories)
	m := p.memory
	m.week++
	plan := WeekPlan{Request: r}
	var spots []spot
	if len(r.Kept) == 0 {
		// The teacher's own come first, and the others fill up. They are those that
		// the week would have anyway: a story of her own reshuffles nothing.
		kinds := p.kindsFor(r, r.Stories+1)
		spots = p.spotsFor(r, kinds[:max(1, len(kinds)-len(r.Given))])
	}
	for _, given := range r.Given {
		m.meet(given.Problem)
		a := newActivity(given.Problem, r)
		a.ExtraNumber, a.Given = given.extra(), true
		plan.Stories = append(plan.Stories, a)
	}
	var chosen []choice
	worked := max(0, slices.IndexFunc(spots, func(s spot) bool { return s.duty == explains }))
	for place, s := range spots {
		c := p.pick(r, s, place, r.mayReturn(place, len(spots)))
		chosen = append(chosen, c)
		m.meet(c.problem)
		if r.Held == nil || !r.Held(c.problem.Kind()) {
			m.practice(c.problem.Kind(), c.of.Target)
		}
		a := newActivity(c.problem, c.of)
		a.Returns = c.returns
		if place == worked {
			plan.Worked = a
			continue
		}
		plan.Stories = append(plan.Stories, a)
	}
	p.keep(r, &plan)
	m.targets[r.Target.ID]++
	extra := true // where it is not wished for, and where it is kept
	if ours := plan.Stories[len(r.Given):]; len(r.Kept) == 0 {
		arrange(ours)
		extra = len(ours) == 0 || r.Extra && wantExtra(r, ours)
	}
	plan.Worked.estimate()
	for i := range plan.Stories {
		plan.Stories[i].estimate()
	}
	ladder, missing := p.ladder(r, plan.All())
	plan.Ladder = ladder
	plan.Warnings = append(warnings(plan, chosen, r.Extra && !extra), missing...)
	return plan
}

// choice is a problem chosen for a story.
type choice struct {
	problem problem.Problem
	rank    rank
	soon    bool    // the same numbers were there this week or the week before
	returns bool    // it is of a skill of an earlier week
	of      Request // what it was chosen for
}

// mayReturn reports whether the story at a place, of so many, may bring an earlier
// week's skill back: the last one, where there are two to try.
func (r Request) mayReturn(place, of int) bool { return r.Review && place == of-1 && place > 1 }

// pick chooses a problem for a spot, or, where that is allowed, one of a skill
// that is due to come back.
func (p *planner) pick(r Request, s spot, place int, mayReturn bool) choice {
	r.duty = s.duty
	c, kind := choice{of: r}, s.kind
	if mayReturn {
		if s, earlier, ok := p.memory.due(); ok {
			kind, c.of, c.returns = s.kind, r.returning(earlier), true
			c.of.review = true
		}
	}
	best, rank, ok := p.choose(c.of, kind, place)
	if !ok {
		panic("activity: a target with a kind that no numbers fit") // made by neither ParseTargets nor Spec
	}
	met, known := p.memory.tasks[best.task]
	c.problem, c.rank = best.problem, rank
	c.soon = known && p.memory.week-met.week <= soon
	return c
}

// soon is after how many weeks the same numbers come too soon.
const soon = 1

// newActivity is a problem with what its week decides about it.
func newActivity(p problem.Problem, r Request) Activity {
	return Activity{
		Problem: p, Grade: r.Target.Grade, Picture: r.picture(),
		Of: r.Target.ID, within: r.Target.Within, focus: r.Focus, good: r.Target.Strategies,
	}
}

// picture is the one asked for; for a story that comes back only where it suits,
// and where none is asked for, the target's usual one.
func (r Request) picture() picture.Kind {
	if r.Picture.Valid() || len(r.Target.Pictures) == 0 {
		return r.Picture
	}
	return r.Target.Pictures[0]
}
