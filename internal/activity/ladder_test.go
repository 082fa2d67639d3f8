package activity

import (
	"slices"
	"strings"
	"testing"

	"homebuild/internal/problem"
)

// withLadder asks for stories beside a target's own.
func withLadder(t testing.TB, target Target) Request {
	t.Helper()
	r := Request{Week: "2026-09-14", Key: "puddle", Target: target, Stories: 4}
	for _, rung := range Rungs() {
		b := Beside{Rung: rung}
		for id := target.Neighbor(rung); id != ""; id = b.Targets[len(b.Targets)-1].Neighbor(rung) {
			b.Targets = append(b.Targets, named(t, id))
		}
		r.Ladder = append(r.Ladder, b)
	}
	return r
}

// Every target has two easier and two harder stories with numbers that the week has
// not, but for those where the list begins and ends, which say so. No easier one is
// in a larger range than the week's, and no harder one in a smaller.
func TestEveryTargetHasALadder(t *testing.T) {
	for _, target := range sample(t, 3) {
		plan := Year([]Request{withLadder(t, target)})[0]
		on := map[Rung][]Activity{}
		met := map[task]bool{}
		for _, a := range append(plan.All(), plan.Ladder...) {
			if met[taskOf(a.Problem)] && target.Within > 10 {
				t.Errorf("%s: %v comes twice", target.ID, a.Problem.Equation())
			}
			met[taskOf(a.Problem)] = true
			on[a.Rung] = append(on[a.Rung], a)
		}
		for _, rung := range Rungs() {
			said := slices.ContainsFunc(plan.Warnings, func(w Warning) bool {
				return w.Setting == "ladder" && strings.Contains(w.Text, rung.String())
			})
			end := target.Neighbor(rung) == ""
			if want := map[bool]int{false: OnRung}[end]; len(on[rung]) != want || said != end {
				t.Errorf("%s has %d %s stories, want %d; it is told: %t", target.ID, len(on[rung]), rung, want, said)
			}
		}
		ranges := func(all []Activity) (out []int) {
			for _, a := range all {
				out = append(out, slices.IndexFunc([]int{5, 10, 20, 100, 1000}, func(most int) bool { return largest(a.Problem) <= most }))
			}
			return out
		}
		own := ranges(on[WeeksOwn])
		for _, r := range ranges(on[Easier]) {
			if r > slices.Max(own) {
				t.Errorf("%s: an easier story is in a range that the week has not", target.ID)
			}
		}
		for _, r := range ranges(on[Harder]) {
			if r < slices.Min(own) {
				t.Errorf("%s: a harder story is in a range that the week is beyond", target.ID)
			}
		}
	}
}

// The ladder changes nothing else, in its own week or in a later one, and what is
// kept stays.
func TestLadderStandsAside(t *testing.T) {
	first, next := withLadder(t, named(t, "add-within-20")), Request{Week: "2026-09-21", Key: "puddle", Target: named(t, "subtract-within-20"), Stories: 4}
	with := Year([]Request{first, next})
	kept := first
	kept.Ladder = slices.Clone(first.Ladder)
	p, err := problem.New(problem.AddToResult, 3, 2)
	if err != nil {
		t.Fatal(err)
	}
	kept.Ladder[0].Kept = []Kept{{Problem: p}}
	again := Year([]Request{kept})[0].Ladder
	if again[0].Problem != p || again[0].Rung != Easier || len(again) != 1+OnRung {
		t.Errorf("kept 3 + 2, got %v", again)
	}
	first.Ladder = nil
	for i, plain := range Year([]Request{first, next}) {
		for j, a := range plain.All() {
			if got := with[i].All()[j].Problem; got != a.Problem {
				t.Errorf("week %d, story %d: %v with a ladder, %v without", i, j, got, a.Problem)
			}
		}
	}
}

// A target that a teacher spelled out has no place in the list, and this is told
// once.
func TestNoLadderForATargetOfOnesOwn(t *testing.T) {
	target, err := Spec{Largest: 30}.Target()
	if err != nil {
		t.Fatal(err)
	}
	plan := Year([]Request{withLadder(t, target)})[0]
	if len(plan.Ladder) > 0 || len(plan.Warnings) != 1 || plan.Warnings[0].Setting != "ladder" {
		t.Errorf("ladder %v, warnings %v", plan.Ladder, plan.Warnings)
	}
}

// What asks for more and what for less (common practice, no published source).
func TestEffort(t *testing.T) {
	type numbers = []int
	rows := []struct {
		kind       problem.Kind
		less, more numbers
		why        string
	}{
		{problem.AddToResult, numbers{2, 2}, numbers{5, 3}, "numbers to five"},
		{problem.AddToResult, numbers{5, 4}, numbers{12, 4}, "numbers to ten"},
		{problem.AddToResult, numbers{12, 4}, numbers{9, 5}, "no ten to pass"},
		{problem.AddToResult, numbers{66, 2}, numbers{9, 5}, "a fact to ten, whatever the tens"},
		{problem.AddToResult, numbers{9, 5}, numbers{34, 13}, "tens and ones on one side only"},
		{problem.AddToResult, numbers{34, 13}, numbers{34, 8}, "no ten to pass"},
		{problem.TakeFromResult, numbers{34, 8}, numbers{34, 18}, "ones only are taken"},
		{problem.TogetherBoth, numbers{3, 2}, numbers{5, 4}, "a smaller whole"},
	}
	for _, row := range rows {
		less, err := problem.New(row.kind, row.less...)
		if err != nil {
			t.Fatal(err)
		}
		more, err := problem.New(row.kind, row.more...)
		if err != nil {
			t.Fatal(err)
		}
		if a, b := effort(less), effort(more); a >= b {
			t.Errorf("%v asks for %d, %v for %d: %s", row.less, a, row.more, b, row.why)
		}
	}
}
