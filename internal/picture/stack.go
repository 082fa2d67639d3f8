package picture

import "homebuild/internal/phrase"

// stack is a sum before and after it was made easier: two bars of the same
// whole, one below the other.
type stack struct{ before, after bar }

// Bars shows a sum before and after it was made easier. Both come to the same.
func Bars(before, after []int) Picture {
	return stack{bar{joined(before...)}, bar{joined(after...)}}
}

// Figure draws one bar below the other.
func (s stack) Figure() Figure {
	first, second := s.before.Figure(), s.after.Figure()
	const gap = 14
	return Figure{"stacked", first.Height + gap + second.Height, func(d *Pen) {
		d.group(first.Class, func() { first.Paint(d) })
		d.Group(second.Class, 0, first.Height+gap, func() { second.Paint(d) })
	}}
}

// Describe says both bars.
func (s stack) Describe() phrase.Line {
	values := s.before.values()
	for _, next := range s.after.values() {
		next.Name = "Next" + next.Name
		values = append(values, next)
	}
	return phrase.Say("picture.bar-model.steps", values...)
}
