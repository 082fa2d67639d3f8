package activity

import (
	"slices"
	"strings"
	"testing"

	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
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

// The grade of a range is the one that first works in it: to 10, 20, 100 and beyond for
// kindergarten and grades 1 to 3 (CCSS-M 2010: K.OA.A.2, 1.OA.A.1, 2.OA.A.1, 3.NBT.A.2).
// Pictures of single things end at 20, those of tens and ones at 100.
func TestSpecRanges(t *testing.T) {
	for _, row := range []struct {
		largest int
		grade   problem.Grade
		shows   picture.Kind
		not     picture.Kind
	}{
		{5, 0, picture.Drawing, picture.BaseTen}, {10, 0, picture.Drawing, picture.BaseTen},
		{11, 1, picture.Drawing, picture.BaseTen}, {20, 1, picture.Drawing, picture.BaseTen},
		{21, 2, picture.BaseTen, picture.Drawing}, {100, 2, picture.BaseTen, picture.Drawing},
		{101, 3, picture.NumberLine, picture.BaseTen}, {1000, 3, picture.NumberLine, picture.BaseTen},
	} {
		target, err := Spec{Operation: "addition", Kinds: []string{"together-total"}, Largest: row.largest}.Target()
		if err != nil {
			t.Errorf("to %d: %v", row.largest, err)
			continue
		}
		if target.Grade != row.grade || !slices.Contains(target.Pictures, row.shows) || slices.Contains(target.Pictures, row.not) {
			t.Errorf("to %d: grade %d with %v, want grade %d with %v and without %v", row.largest, target.Grade, target.Pictures, row.grade, row.shows, row.not)
		}
		for _, name := range target.Strategies {
			if name.FirstGrade() > row.grade {
				t.Errorf("to %d: %v is learned later than grade %d", row.largest, name, row.grade)
			}
		}
		if row.grade < 3 && !slices.ContainsFunc(target.Strategies, func(n strategy.Name) bool { return n.FirstGrade() == row.grade }) {
			t.Errorf("to %d: no way of working is of grade %d", row.largest, row.grade)
		}
	}
}

func TestSpecProblems(t *testing.T) {
	for _, row := range []struct {
		name string
		spec Spec
		want string
	}{
		{"too small", Spec{Largest: 4}, "from 5 to 1000"},
		{"too large", Spec{Largest: 1001}, "from 5 to 1000"},
		{"two steps and three parts", Spec{Largest: 20, Steps: 2, Kinds: []string{"together-three"}}, "leave one of them out"},
		{"one step", Spec{Largest: 20, Kinds: []string{"add-then-add"}}, "leave one of them out"},
		{"four parts of two", Spec{Largest: 20, Kinds: []string{"together-four"}}, "leave one of them out"},
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
