package site

import (
	"testing"

	"homebuild/internal/problem"
)

// What goes away, and how many more or fewer there are, is nothing that can be laid
// out (CCSS-M 2010, Glossary, Table 1: take from; the difference of compare).
func TestWhatCanBeLaidOut(t *testing.T) {
	for _, tt := range []struct {
		kind    problem.Kind
		numbers []int
		outline []problem.Role
	}{
		{problem.AddToResult, []int{8, 6}, nil},
		{problem.TakeFromResult, []int{14, 6}, []problem.Role{problem.RoleChange}},
		{problem.TakeFromStart, []int{14, 6}, []problem.Role{problem.RoleChange}},
		{problem.TogetherAddend, []int{8, 6}, nil},
		{problem.SmallerFewer, []int{14, 6}, []problem.Role{problem.RoleDifference}},
		{problem.DifferenceMore, []int{14, 6}, nil},
		{problem.AddThenTake, []int{8, 6, 4}, []problem.Role{problem.RoleLater}},
		{problem.TakeThenAdd, []int{14, 6, 4}, []problem.Role{problem.RoleChange}},
		{problem.TogetherThenTake, []int{8, 6, 4}, []problem.Role{problem.RoleLater}},
		{problem.BiggerThenTogether, []int{8, 5}, []problem.Role{problem.RoleDifference}},
	} {
		p, err := problem.New(tt.kind, tt.numbers...)
		if err != nil {
			t.Fatal(err)
		}
		var got []problem.Role
		for _, q := range p.Given() {
			if !isThere(p, q.Role) {
				got = append(got, q.Role)
			}
		}
		if len(got) != len(tt.outline) || len(got) == 1 && got[0] != tt.outline[0] {
			t.Errorf("%v: %v are drawn in outline, want %v", tt.kind, got, tt.outline)
		}
	}
}
