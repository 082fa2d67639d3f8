package site

import (
	"homebuild/internal/activity"
	"homebuild/internal/diag"
)

// Year plans every week's problems, oldest first: the mathematics of Assemble
// alone, for a teacher's plan and for choosing the next week.
func Year(in Input) ([]activity.WeekPlan, diag.Problems) {
	requests, _, problems := requests(in)
	if len(problems) > 0 {
		return nil, problems
	}
	return activity.Year(requests), nil
}
