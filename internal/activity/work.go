package activity

import "homebuild/internal/problem"

// Work is what a step of a story asks of a child: to add or to subtract, with
// numbers to 10, 20, 100 or 1000, past a ten (or a hundred) or not.
type Work struct {
	Within int
	Op     problem.Op
	Passes bool
}

// WorkRow is a sort of work over the weeks.
type WorkRow struct {
	Work   Work
	ByWeek []int // steps of stories in each week
}

// workBy counts the work of the weeks, from small numbers to large ones; what
// was not met has no row.
func workBy(weeks []WeekPlan) []WorkRow {
	counts := map[Work][]int{}
	for i, w := range weeks {
		for _, a := range w.All() {
			for _, work := range WorksOf(a.Problem) {
				if counts[work] == nil {
					counts[work] = make([]int, len(weeks))
				}
				counts[work][i]++
			}
		}
	}
	var rows []WorkRow
	for _, within := range []int{10, 20, 100, problem.Largest} {
		for _, op := range []problem.Op{problem.Plus, problem.Minus} {
			for _, passes := range []bool{false, true} {
				work := Work{within, op, passes}
				if counts[work] != nil {
					rows = append(rows, WorkRow{work, counts[work]})
				}
			}
		}
	}
	return rows
}

// WorksOf is the work of a problem's steps. A number to take apart asks for none:
// any parts are right.
func WorksOf(p problem.Problem) []Work {
	if p.Kind() == problem.TogetherBoth {
		return nil
	}
	var out []Work
	for _, step := range p.Steps() {
		c := step.Calculation()
		w := Work{Within: problem.Largest, Op: c.Op}
		for _, within := range []int{100, 20, 10} {
			if c.Largest() <= within {
				w.Within = within
			}
		}
		w.Passes, _ = crossing(c)
		out = append(out, w)
	}
	return out
}
