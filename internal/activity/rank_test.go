package activity

import (
	"testing"

	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// What speaks against a set of numbers. An answer that the story tells, and a
// wrong number with two causes, are what an answer check cannot use.
func TestJudge(t *testing.T) {
	within20 := Target{Within: 20, Grade: 1}
	for _, row := range []struct {
		name    string
		target  Target
		focus   strategy.Name
		kind    problem.Kind
		numbers numbers
		want    rank
	}{
		{"nothing", within20, strategy.MakeTen, problem.AddToResult, numbers{8, 6}, rank{}},
		{"plus one", within20, 0, problem.AddToResult, numbers{9, 1}, rank{trivial: 1}},
		{"one is left", within20, 0, problem.TakeFromResult, numbers{9, 8}, rank{trivial: 1}},
		{"make ten without a ten to make", within20, strategy.MakeTen, problem.AddToResult, numbers{6, 3}, rank{unfocused: 1}},
		{"the rest is what went", within20, 0, problem.TakeFromResult, numbers{16, 8}, rank{flaws: answerTold}},
		{"8 - 4 is also told", within20, 0, problem.AddToResult, numbers{4, 8}, rank{flaws: ambiguous}},
		{"numbers to ten", within20, 0, problem.AddToResult, numbers{4, 5}, rank{flaws: belowRange}},
	} {
		c := judge(Request{Target: row.target, Focus: row.focus}, row.kind, row.numbers)
		if !c.holds || c.rank != row.want {
			t.Errorf("%s: %v %v has %+v, want %+v", row.name, row.kind, row.numbers, c.rank, row.want)
		}
	}
	if c := judge(Request{Target: within20}, problem.AddToResult, numbers{15, 6}); c.holds {
		t.Error("15 + 6 was taken within 20")
	}
}

// A weightier wish is never given up for lighter ones.
func TestRankOrder(t *testing.T) {
	inOrder := []rank{{}, {echo: 1}, {flaws: 1}, {flaws: 15, echo: 1}, {repeated: 1}, {repeated: 2},
		{unfocused: 1}, {trivial: 1}, {again: 1}, {again: 1, trivial: 1, unfocused: 1, repeated: 9, flaws: 15, echo: 1}}
	for i := range inOrder[1:] {
		if inOrder[i].compare(inOrder[i+1]) >= 0 {
			t.Errorf("%+v does not come before %+v", inOrder[i], inOrder[i+1])
		}
	}
}
