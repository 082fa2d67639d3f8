package site

import (
	"homebuild/internal/estimate"
	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// sense shows that the answer of a story can be right: friendly numbers first,
// where they help, then the part-whole test, then going back.
func sense(e exercise) []page.Sense {
	c := e.Problem.Calculation()
	if e.Problem.Pairs() != nil { // the total is told: a part is looked at, and put back
		return partsAndBack(problem.Calculation{Op: problem.Minus, Numbers: []int{c.Value(), c.Numbers[1]}})
	}
	var out []page.Sense
	if e.HasEstimate {
		out = append(out, friendly(e.Estimate))
	}
	return append(out, partsAndBack(c)...)
}

// friendly says what the answer must be near; an estimate that would also pass
// the likely mistake says so.
func friendly(e estimate.Estimate) page.Sense {
	s := page.Sense{
		Name:  phrase.Say("sense.estimate.name"),
		Lines: []phrase.Line{e.Say(), e.Close(), e.Fits()}, Equation: e.Equation,
	}
	if !e.Catches {
		s.Lines = append(s.Lines, e.Honest())
	}
	return s
}

func partsAndBack(c problem.Calculation) []page.Sense {
	out := []page.Sense{{
		Name:  phrase.Say("sense.part-whole.name"),
		Lines: []phrase.Line{estimate.PartWhole(c), estimate.PartWholeFits(c)},
	}}
	if line, ok := estimate.Inverse(c); ok {
		out = append(out, page.Sense{Name: phrase.Say("sense.inverse.name"), Lines: []phrase.Line{line}})
	}
	return out
}

// checkSense is the friendly check of two bare numbers: what it must be near,
// or the part-whole test where nothing is near enough to help.
func checkSense(p problem.Problem) []page.Sense {
	c := p.Calculation()
	const grade = 1 // the check pages are within 20
	if e, ok := estimate.For(c, nil, grade); ok {
		s := friendly(e)
		s.Lines = s.Lines[:2]
		return []page.Sense{s}
	}
	return partsAndBack(c)[:1]
}
