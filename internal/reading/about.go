package reading

import "homebuild/internal/problem"

var situations = map[problem.Situation]string{
	problem.AddTo: "add to", problem.TakeFrom: "take from", problem.PutTogether: "put together", problem.Compare: "compare",
}

var unknowns = map[problem.Unknown]string{
	problem.Result: "result unknown", problem.Change: "change unknown", problem.Start: "start unknown",
	problem.Total: "total unknown", problem.Addend: "one part unknown", problem.BothAddends: "both parts unknown",
	problem.DifferenceUnknown: "difference unknown", problem.Bigger: "bigger amount unknown", problem.Smaller: "smaller amount unknown",
}

// About names a kind for a teacher in the words of the published table: "add to,
// change unknown" (CCSS-M 2010, Glossary, Table 1).
func About(k problem.Kind) string {
	name := situations[k.Situation()]
	if steps := k.Steps(); steps != nil {
		second := situations[steps[1].Situation()]
		return "two steps: " + situations[steps[0].Situation()] + ", then " + second
	}
	switch k.Wording() {
	case problem.More:
		name += " with more"
	case problem.Fewer:
		name += " with fewer"
	}
	if k == problem.TogetherThree {
		name += " three"
	}
	return name + ", " + unknowns[k.Unknown()]
}
