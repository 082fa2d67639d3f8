package activity

import (
	"cmp"
	"slices"

	"homebuild/internal/problem"
)

// fromEasyToHard lists the kinds of stories by how hard they are for children.
// The stages are published: what kindergarten, grade 1 and grade 2 work with,
// the four that are mastered a grade later, and two steps last (Progressions for
// the CCSS-M, K-5 Operations and Algebraic Thinking, Table 2 and grade 2). Within
// a stage the order is that of children's success (Riley, Greeno and Heller 1983,
// from memory; for more addends and the chains: common practice, no published
// source).
var fromEasyToHard = []problem.Kind{
	problem.TogetherTotal, problem.TakeFromResult, problem.AddToResult, problem.TogetherBoth,
	problem.TogetherThree, problem.TakeFromChange, problem.AddToChange, problem.TogetherAddend,
	problem.DifferenceMore, problem.SmallerFewer, problem.BiggerMore, problem.DifferenceFewer,
	problem.AddToStart, problem.TakeFromStart, problem.SmallerMore, problem.BiggerFewer,
	problem.TogetherFour, problem.AddThenAdd, problem.TakeThenTake, problem.TogetherThenTake, problem.AddThenTake, problem.TakeThenAdd,
	problem.BiggerThenTogether,
}

// stage is the place of a kind in the published order, a larger one is harder.
func stage(k problem.Kind) int { return slices.Index(fromEasyToHard, k) }

// kindsFor decides which kind each of n stories is, the worked one first: every
// kind of the target comes before one comes again, those that the class has met
// least first. The worked story is not a difficult one if there is another,
// unless the target is about difficult ones: then its list begins with one.
func (p *planner) kindsFor(r Request, n int) []problem.Kind {
	order := slices.Clone(r.Target.Kinds)
	slices.SortStableFunc(order, func(a, b problem.Kind) int {
		return cmp.Or(
			cmp.Compare(p.memory.kinds[a], p.memory.kinds[b]),
			cmp.Compare(draw(r.Key, r.Week, a.String()), draw(r.Key, r.Week, b.String())),
		)
	})
	about := r.Target.Kinds[0].Difficult()
	if i := slices.IndexFunc(order, func(k problem.Kind) bool { return k.Difficult() == about }); i > 0 {
		first := order[i]
		order = slices.Insert(slices.Delete(order, i, i+1), 0, first)
	}
	out := make([]problem.Kind, n)
	for i := range out {
		out[i] = order[i%len(order)]
	}
	return out
}

// arrange puts the stories of a page in order: from easy to hard, and where some
// have a word that misleads, these in turn with the others, so that no child
// learns to turn every word round.
func arrange(stories []Activity) {
	slices.SortStableFunc(stories, func(a, b Activity) int {
		return cmp.Or(
			cmp.Compare(stage(a.Problem.Kind()), stage(b.Problem.Kind())),
			cmp.Compare(largest(a.Problem), largest(b.Problem)),
		)
	})
	var plain, traps []Activity
	for _, a := range stories {
		if a.Problem.Kind().Misleads() {
			traps = append(traps, a)
		} else {
			plain = append(plain, a)
		}
	}
	for i := range stories {
		from := &plain
		if len(plain) == 0 || i%2 == 1 && len(traps) > 0 {
			from = &traps
		}
		stories[i], *from = (*from)[0], (*from)[1:]
	}
}
