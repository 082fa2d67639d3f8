package picture

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// Steps is two pictures, one below the other: the two steps of a story, or a
// sum before and after it was made easier.
type Steps struct {
	First  Picture // a Bar or a Comparison
	Second Bar
}

// stepsOf shows a chain. What the first step finds goes into the second. Its
// place stays empty in both until the chain is solved, so that one "?" is
// left: the one that the story asks for.
func stepsOf(p problem.Problem, stage Stage) Picture {
	steps := p.Steps()
	told := firstTold(p)
	first := shown(steps[0].Fact(), func(q problem.Quantity) State {
		if q.Unknown && stage == Open {
			return Empty
		}
		return stateAt(q, told, stage)
	})
	var picture Picture = Bar{Parts: first.parts, Whole: first.whole}
	if p.Kind() == problem.BiggerThenTogether {
		picture = comparison(first)
	}
	if stage == FirstPart {
		return picture
	}
	carried := carriedRole(p.Kind())
	second := shown(steps[1].Fact(), func(q problem.Quantity) State {
		if q.Role == carried && stage != Solved {
			return Empty
		}
		return stateAt(q, told, stage)
	})
	return Steps{First: picture, Second: Bar{Parts: second.parts, Whole: second.whole}}
}

// carriedRole is the part that the first step's answer plays in the second.
func carriedRole(k problem.Kind) problem.Role {
	if k == problem.BiggerThenTogether {
		return problem.RoleSecond
	}
	return problem.RoleStart
}

// WithNames names the bars of a first step that compares.
func (s Steps) WithNames(bigger, smaller phrase.Value) Steps {
	if c, ok := s.First.(Comparison); ok {
		s.First = c.WithNames(bigger, smaller)
	}
	return s
}

// Describe says both pictures.
func (s Steps) Describe() phrase.Line {
	next := s.Second.shown().values()
	for i := range next {
		next[i].Name = "Next" + next[i].Name
	}
	switch first := s.First.(type) {
	case Comparison:
		line := first.Describe()
		return phrase.Say("picture.bar-model.steps-"+first.variant(), append(line.Values, next...)...)
	case Bar:
		return phrase.Say("picture.bar-model.steps", append(first.shown().values(), next...)...)
	}
	return s.Second.Describe()
}
