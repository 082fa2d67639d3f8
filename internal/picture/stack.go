package picture

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// stack is two pictures, one below the other: the two steps of a story, or a
// sum before and after it was made easier.
type stack struct {
	first  stackable
	second bar
}

// Bars shows a sum before and after it was made easier.
func Bars(before, after []int) Picture {
	return stack{bar{joined(before...)}, bar{joined(after...)}}
}

// stackable is a bar or a comparison.
type stackable interface {
	Picture
	// inStack says what a description of the stack has of it: the end of its
	// message id, and its places.
	inStack() (id string, values []phrase.Value)
}

// chainOf shows a chain. What the first step finds goes into the second. Its
// place stays empty in both until the chain is solved, so that one "?" is
// left: the one that the story asks for.
func chainOf(p problem.Problem, stage Stage) Picture {
	steps := p.Steps()
	told := firstTold(p)
	amounts := shown(steps[0].Fact(), func(q problem.Quantity) state {
		if q.Unknown && stage == Open {
			return empty
		}
		return stateAt(q, told, stage)
	})
	var first stackable = bar{amounts}
	carried := problem.RoleStart // the part that the first answer plays in the second step
	if p.Kind() == problem.BiggerThenTogether {
		first, carried = comparisonOf(amounts), problem.RoleSecond
	}
	if stage == FirstPart {
		return first
	}
	second := shown(steps[1].Fact(), func(q problem.Quantity) state {
		if q.Role == carried && stage != Solved {
			return empty
		}
		return stateAt(q, told, stage)
	})
	return stack{first, bar{second}}
}

// named names the bars of a first step that compares.
func (s stack) named(names []phrase.Value) Picture {
	if c, ok := s.first.(comparison); ok {
		c.names = names
		s.first = c
	}
	return s
}

// Figure draws one picture below the other.
func (s stack) Figure() Figure {
	first, second := s.first.Figure(), s.second.Figure()
	const gap = 14
	return Figure{"stacked", first.Height + gap + second.Height, func(d *Pen) {
		d.group(first.Class, func() { first.Paint(d) })
		d.Group(second.Class, 0, first.Height+gap, func() { second.Paint(d) })
	}}
}

// Describe says both pictures.
func (s stack) Describe() phrase.Line {
	id, values := s.first.inStack()
	if id != "" {
		id = "-" + id
	}
	for _, next := range s.second.values() {
		next.Name = "Next" + next.Name
		values = append(values, next)
	}
	return phrase.Say("picture.bar-model.steps"+id, values...)
}
