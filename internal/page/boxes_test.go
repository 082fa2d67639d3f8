package page

import (
	"testing"

	"homebuild/internal/problem"
)

// The sheet has the places of the equation that the pages show, and tells no
// sign. The equations are those of CCSS-M 2010, Glossary, Table 1, of 1.OA.A.2
// (three addends) and of 2.OA.A.1 (two steps).
func TestEquationSlots(t *testing.T) {
	marks := map[slot]string{numberSlot: "□", signSlot: "○", equalsSlot: "="}
	for _, tt := range []struct {
		name    string
		kind    problem.Kind
		numbers []int
		want    string
	}{
		{"8 + 6 = ?", problem.AddToResult, []int{8, 6}, "□○□=□"},
		{"8 + ? = 14, whose sign is not that of 14 − 8", problem.AddToChange, []int{8, 6}, "□○□=□"},
		{"? − 9 = 7", problem.TakeFromStart, []int{16, 9}, "□○□=□"},
		{"7 = ? + ?", problem.TogetherBoth, []int{3, 4}, "□=□○□"},
		{"2 + 9 + 8 = ?", problem.TogetherThree, []int{2, 9, 8}, "□○□○□=□"},
		{"9 − 3 + 4 = ?", problem.TakeThenAdd, []int{9, 3, 4}, "□○□○□=□"},
	} {
		p, err := problem.New(tt.kind, tt.numbers...)
		if err != nil {
			t.Fatal(err)
		}
		got := ""
		for _, s := range equationSlots(p.Equation()) {
			got += marks[s]
		}
		if got != tt.want {
			t.Errorf("%s: want %s, got %s", tt.name, tt.want, got)
		}
	}
}
