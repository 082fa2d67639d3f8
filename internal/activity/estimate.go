package activity

import (
	"homebuild/internal/estimate"
	"homebuild/internal/mistake"
	"homebuild/internal/problem"
)

// estimate works the estimate out, once all numbers of the story are known.
func (a *Activity) estimate() {
	a.Estimate, a.HasEstimate = estimated(a.Problem, a.ExtraNumber, a.Grade)
}

// estimated is the estimate for the working that finds the answer, where it is
// of use. A question with many right answers needs none.
func estimated(p problem.Problem, extra int, grade problem.Grade) (estimate.Estimate, bool) {
	if p.Kind() == problem.TogetherBoth {
		return estimate.Estimate{}, false
	}
	return estimate.For(p.Calculation(), mistake.Likely(p, extra), grade)
}
