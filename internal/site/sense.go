package site

import (
	"homebuild/internal/estimate"
	"homebuild/internal/mistake"
	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// sense shows that the answer of a story can be right: friendly numbers first,
// where they help, then the part-whole test, then going back into the story.
func sense(e exercise) []page.Sense {
	var out []page.Sense
	if e.HasEstimate {
		out = append(out, friendly(e.Estimate))
	}
	out = append(out, partWhole(e.Problem)...)
	return append(out, page.Sense{
		Name: phrase.Say("sense.inverse.name"), Lines: []phrase.Line{estimate.GoingBack(e.Problem)},
	})
}

// friendly says what the answer must be near, and which likely slip the estimate
// would pass.
func friendly(e estimate.Estimate) page.Sense {
	s := page.Sense{
		Name:  phrase.Say("sense.estimate.name"),
		Lines: []phrase.Line{e.Say(), e.Close(), e.Judge()}, Equation: e.Equation,
	}
	if blind, ok := e.Honest(); ok {
		s.Lines = append(s.Lines, blind)
	}
	return s
}

// partWhole is the part-whole test where the story has one.
func partWhole(p problem.Problem) []page.Sense {
	lines, ok := estimate.PartWhole(p)
	if !ok {
		return nil
	}
	name := "sense.part-whole.name"
	if p.Kind().Situation() == problem.Compare {
		name = "sense.compare.name"
	}
	return []page.Sense{{Name: phrase.Say(name), Lines: lines}}
}

// checkSense is the friendly check of two bare numbers: what it must be near,
// or the part-whole test where nothing is near enough to help.
func checkSense(p problem.Problem, grade problem.Grade) []page.Sense {
	if e, ok := estimate.For(p.Calculation(), mistake.Likely(p, 0), grade); ok {
		return []page.Sense{friendly(e)}
	}
	return partWhole(p)
}
