package reading

import (
	"slices"

	"homebuild/internal/problem"
)

// Tells matches the numbers that a problem tells with those of a text, and lists
// those that the text does not have. Used are the places of the others; every
// number of the text serves once, marked ones first.
func (t Text) Tells(p problem.Problem) (used []int, missing []int) {
	for _, q := range p.Told() {
		at := -1
		for i, n := range t.Numerals {
			better := at < 0 || n.Marked && !t.Numerals[at].Marked
			if n.Value == q.Value && !slices.Contains(used, i) && better {
				at = i
			}
		}
		if at < 0 {
			missing = append(missing, q.Value)
			continue
		}
		used = append(used, at)
	}
	slices.Sort(used)
	return used, missing
}

// Values are the numbers of a text, in order.
func (t Text) Values() []int {
	out := make([]int, len(t.Numerals))
	for i, n := range t.Numerals {
		out[i] = n.Value
	}
	return out
}
