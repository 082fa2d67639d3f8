package activity

import (
	"reflect"
	"slices"

	"homebuild/internal/problem"
)

// Planner plans years, one after the other. Weeks that are asked for as in the year
// before, and that nothing else comes before, are not planned again. It is not for
// several callers at a time; the zero value has planned nothing.
type Planner struct {
	had []hadWeek // of the last year
}

// hadWeek is a week with all that planning it came to.
type hadWeek struct {
	request Request
	plan    WeekPlan
	after   *memory // what the class has met then; nil for a week long ago
}

// remembered is for how many weeks a planner keeps what the class had met: a school
// year's, with some to spare.
const remembered = 60

// Bearer reports whether a story can be told with a problem's amounts.
type Bearer interface {
	Bears(p problem.Problem) bool
}

// BearerFunc is a function that is a [Bearer].
type BearerFunc func(p problem.Problem) bool

// Bears calls the function.
func (f BearerFunc) Bears(p problem.Problem) bool { return f(p) }

// Year is [Year] for somebody who plans often.
func (p *Planner) Year(requests []Request) []WeekPlan {
	p.after(requests)
	plans := make([]WeekPlan, len(requests))
	for i := range plans {
		plans[i] = p.had[i].plan
	}
	return plans
}

// after has planned weeks.
func (p *Planner) after(requests []Request) *planner {
	requests = inOrder(requests)
	known := p.known(requests)
	now := newPlanner()
	if known > 0 {
		now.memory = p.had[known-1].after.clone()
	}
	if known == len(requests) {
		return now
	}
	p.had = p.had[:known:known]
	for _, r := range requests[known:] {
		plan := now.week(r)
		p.had = append(p.had, hadWeek{r, plan, now.memory.clone()})
		if old := len(p.had) - remembered; old > 0 {
			p.had[old-1].after = nil
		}
	}
	return now
}

// known is how many of the first weeks need not be planned again.
func (p *Planner) known(requests []Request) int {
	known := 0
	for i, r := range requests[:min(len(requests), len(p.had))] {
		if !reflect.DeepEqual(p.had[i].request, r) {
			break
		}
		if p.had[i].after != nil {
			known = i + 1
		}
	}
	return known
}

// weeksBefore are those of a year that come before r, in order.
func weeksBefore(year []Request, r Request) []Request {
	return slices.DeleteFunc(inOrder(year), func(e Request) bool { return e.Week >= r.Week })
}
