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
		{problem.AddToResult, numbers{34, 5}, numbers{34, 10}, "tens on one side only"},
		{problem.AddToResult, numbers{3, 2}, numbers{3, 3}, "numbers to five"},
		{problem.AddToResult, numbers{6, 4}, numbers{11, 2}, "numbers to ten"},
		{problem.AddToResult, numbers{15, 5}, numbers{22, 2}, "numbers to twenty"},
		{problem.AddToResult, numbers{60, 30}, numbers{100, 30}, "numbers to a hundred"},
		{problem.TogetherTotal, numbers{8, 6}, numbers{30, 40}, "numbers to twenty, though past a ten"},
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

// A rung asks for less, or for more, than the middle one of the week's stories; or for as
// much, in a kind of story that comes before, or after, all of the target's.
func TestStepFrom(t *testing.T) {
	const before, own, after = problem.TogetherTotal, problem.AddToChange, problem.AddToStart
	target := Target{Kinds: []problem.Kind{own, problem.TakeFromResult}} // the second is the easier kind
	var week []Activity
	for _, sum := range [][2]int{{2, 2}, {12, 4}, {60, 14}} { // to 5, to 20 and to 100, none past a ten
		week = append(week, Activity{Problem: made(t, own, sum[0], sum[1])})
	}
	for _, row := range []struct {
		problem        problem.Problem
		easier, harder bool
		why            string
	}{
		{made(t, own, 5, 4), true, false, "numbers to ten"},
		{made(t, own, 13, 5), false, false, "as much"},
		{made(t, problem.TakeFromResult, 16, 12), false, false, "as much, in the other kind"},
		{made(t, own, 50, 14), false, true, "numbers to a hundred"},
		{made(t, after, 5, 4), true, false, "a harder kind, but numbers to ten"},
		{made(t, before, 50, 14), false, true, "an easier kind, but numbers to a hundred"},
		{made(t, before, 10, 10), true, false, "as much, in an easier kind"},
		{made(t, after, 5, 13), false, true, "as much, in a harder kind: 18 - 13"},
	} {
		if easier, harder := target.stepFrom(Easier, week)(row.problem), target.stepFrom(Harder, week)(row.problem); easier != row.easier || harder != row.harder {
			t.Errorf("%v of %v is easier: %v, harder: %v; want %v, %v: %s", row.problem.Kind(), row.problem.Numbers(), easier, harder, row.easier, row.harder, row.why)
		}
	}
}

// A rung that lacks stories is told with how many it has; one that has two is not. Of
// neighbors that have as few the nearest lends its own.
func TestLacking(t *testing.T) {
	target := named(t, "add-within-20")
	only := func(id string, first int) Target { // has one set of numbers: first and 2
		return Target{ID: id, Grade: 2, Within: first + 2, Kinds: []problem.Kind{problem.AddToResult}, Limits: Limits{FirstLeast: first, SecondLeast: 2, SecondMost: 2}}
	}
	for _, row := range []struct {
		neighbors []Target
		want      int
		said      string
	}{
		{nil, 0, "the ladder has no harder stories"},
		{[]Target{only("near", 98)}, 1, "the ladder has 1 harder stories instead of 2"},
		{[]Target{only("near", 98), only("far", 88)}, 1, "the ladder has 1 harder stories instead of 2"},
	} {
		b := Beside{Rung: Harder, Targets: row.neighbors}
		plan := Year([]Request{{Week: monday(0), Key: "puddle", Target: target, Stories: 4, Ladder: []Beside{b}}})[0]
		said := ""
		for _, w := range plan.Warnings {
			if w.Setting == "ladder" {
				said = w.Text
				if w.Count != OnRung-row.want {
					t.Errorf("%d stories are said to be missing, want %d", w.Count, OnRung-row.want)
				}
			}
		}
		if len(plan.Ladder) != row.want || !strings.HasPrefix(said, row.said) || row.want > 0 && plan.Ladder[0].Of != "near" {
			t.Errorf("%v, told %q; want %d, of the near one, and %q", plan.Ladder, said, row.want, row.said)
		}
	}
	whole := Year([]Request{withLadder(t, target)})[0]
	if len(whole.Ladder) != 2*OnRung || len(whole.Warnings) > 0 {
		t.Errorf("%d stories and %v, want %d and nothing to tell", len(whole.Ladder), whole.Warnings, 2*OnRung)
	}
}
