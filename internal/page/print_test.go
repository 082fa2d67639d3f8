package page

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"homebuild/internal/problem"
)

// TestSigns: the sheet has a box for each number that the story adds or takes.
// The equations are those of CCSS-M 2010, Glossary, Table 1, of 1.OA.A.2 (three
// addends) and of 2.OA.A.1 (two steps).
func TestSigns(t *testing.T) {
	plus, minus := problem.Plus, problem.Minus
	for _, tt := range []struct {
		name    string
		kind    problem.Kind
		numbers []int
		want    []problem.Op
	}{
		{"8 + 6 = ?", problem.AddToResult, []int{8, 6}, []problem.Op{plus}},
		{"8 + ? = 14 is worked out as 14 − 8", problem.AddToChange, []int{8, 6}, []problem.Op{minus}},
		{"2 + 9 + 8 = ?", problem.TogetherThree, []int{2, 9, 8}, []problem.Op{plus, plus}},
		{"9 − 3 + 4 = ?", problem.TakeThenAdd, []int{9, 3, 4}, []problem.Op{minus, plus}},
		{"9 − 3 − 4 = ?", problem.TakeThenTake, []int{9, 3, 4}, []problem.Op{minus, minus}},
	} {
		p, err := problem.New(tt.kind, tt.numbers...)
		if err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(tt.want, signs(p)); diff != "" {
			t.Errorf("%s (-want +got):\n%s", tt.name, diff)
		}
	}
}
