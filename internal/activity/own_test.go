package activity

import (
	"slices"
	"strings"
	"testing"

	"homebuild/internal/problem"
)

func TestSpec(t *testing.T) {
	for _, row := range []struct {
		name  string
		spec  Spec
		kinds []problem.Kind // some that it must have
		not   []problem.Kind // some that it must not have
		grade problem.Grade
	}{
		{"addition", Spec{Operation: "addition", Largest: 20}, []problem.Kind{problem.AddToResult, problem.TakeFromStart},
			[]problem.Kind{problem.TakeFromResult, problem.TogetherThree, problem.AddThenAdd}, 1},
		{"subtraction", Spec{Operation: "subtraction", Largest: 100}, []problem.Kind{problem.TakeFromResult, problem.AddToChange},
			[]problem.Kind{problem.AddToResult}, 2},
		{"three addends", Spec{Largest: 30, Parts: 3}, []problem.Kind{problem.TogetherThree}, []problem.Kind{problem.AddToResult}, 2},
		{"four addends", Spec{Largest: 100, Parts: 4}, []problem.Kind{problem.TogetherFour}, []problem.Kind{problem.TogetherThree}, 2},
		{"two steps", Spec{Largest: 50, Steps: 2}, []problem.Kind{problem.AddThenTake}, []problem.Kind{problem.AddToResult}, 2},
		{"named kinds", Spec{Largest: 8, Kinds: []string{"together-total"}}, []problem.Kind{problem.TogetherTotal}, []problem.Kind{problem.AddToResult}, 0},
	} {
		target, err := row.spec.Target()
		if err != nil {
			t.Errorf("%s: %v", row.name, err)
			continue
		}
		for _, k := range row.kinds {
			if !slices.Contains(target.Kinds, k) {
				t.Errorf("%s: kinds %v lack %v", row.name, target.Kinds, k)
			}
		}
		for _, k := range row.not {
			if slices.Contains(target.Kinds, k) {
				t.Errorf("%s: kinds %v have %v", row.name, target.Kinds, k)
			}
		}
		if target.Grade != row.grade || target.Within != row.spec.Largest {
			t.Errorf("%s: grade %d within %d, want %d and %d", row.name, target.Grade, target.Within, row.grade, row.spec.Largest)
		}
		plan := Year([]Request{{Week: "2026-09-14", Key: "k", Target: target, Stories: 8}})[0]
		for _, a := range plan.All() {
			checkSet(t, target, a.Problem)
		}
	}
}

func TestSpecProblems(t *testing.T) {
	for _, row := range []struct {
		name string
		spec Spec
		want string
	}{
		{"too small", Spec{Largest: 2}, "from 5 to 1000"},
		{"too large", Spec{Largest: 2000}, "from 5 to 1000"},
		{"crossing", Spec{Largest: 20, Crossing: "maybe"}, "always, never or either"},
		{"kind", Spec{Largest: 20, Kinds: []string{"sharing"}}, `"sharing"`},
		{"kind against operation", Spec{Largest: 20, Operation: "addition", Kinds: []string{"take-from-result"}}, "leave one of them out"},
		{"nothing left", Spec{Largest: 9, Crossing: "always", Kinds: []string{"add-to-result"}}, "raise the largest number"},
		{"nothing fits", Spec{Largest: 20, Operation: "subtraction", Parts: 3}, "3 parts"},
	} {
		if _, err := row.spec.Target(); err == nil || !strings.Contains(err.Error(), row.want) {
			t.Errorf("%s: got %v, want an error with %q", row.name, err, row.want)
		}
	}
}
