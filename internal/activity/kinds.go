package activity

import (
	"cmp"
	"slices"

	"homebuild/internal/problem"
)

// kindsFor decides which kind each of n stories is, the worked one first: every
// kind of the target comes before one comes again, those that the class has met
// least first. The worked story is not a difficult one if there is another.
func (p *planner) kindsFor(r Request, n int) []problem.Kind {
	order := slices.Clone(r.Target.Kinds)
	slices.SortStableFunc(order, func(a, b problem.Kind) int {
		return cmp.Or(
			cmp.Compare(p.memory.kinds[a], p.memory.kinds[b]),
			cmp.Compare(draw(r.Key, r.Week, a.String()), draw(r.Key, r.Week, b.String())),
		)
	})
	if i := slices.IndexFunc(order, func(k problem.Kind) bool { return !k.Difficult() }); i > 0 {
		first := order[i]
		order = slices.Insert(slices.Delete(order, i, i+1), 0, first)
	}
	out := make([]problem.Kind, n)
	for i := range out {
		out[i] = order[i%len(order)]
	}
	return out
}
