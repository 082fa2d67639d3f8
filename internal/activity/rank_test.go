package activity

import (
	"testing"

	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// evens are stories that bear even answers alone.
var evens = BearerFunc(func(p problem.Problem) bool { return p.Answer()%2 == 0 })

// What speaks against a set of numbers, whatever a class has met.
func TestJudge(t *testing.T) {
	within20, within10 := Target{Within: 20, Grade: 1}, Target{Within: 10}
	for _, row := range []struct {
		name    string
		request Request
		kind    problem.Kind
		numbers numbers
		want    rank
	}{
		{"nothing", Request{Target: within20, Focus: strategy.MakeTen}, problem.AddToResult, numbers{8, 6}, rank{}},
		{"plus one", Request{Target: within20}, problem.AddToResult, numbers{9, 1}, rank{flaws: withOne + belowRange}},
		{"one is left", Request{Target: within20}, problem.TakeFromResult, numbers{12, 11}, rank{flaws: withOne}},
		{"plus one where numbers are small", Request{Target: within10}, problem.AddToResult, numbers{4, 1}, rank{}},
		{"make ten without a ten to make", Request{Target: within20, Focus: strategy.MakeTen}, problem.AddToResult, numbers{12, 3}, rank{unfocused: 2}},
		{"make ten for a double", Request{Target: within20, Focus: strategy.MakeTen}, problem.AddToResult, numbers{6, 6}, rank{unfocused: 1}},
		{"the rest is what went", Request{Target: within20}, problem.TakeFromResult, numbers{16, 8}, rank{flaws: answerTold}},
		{"numbers to ten", Request{Target: within20}, problem.AddToResult, numbers{4, 5}, rank{flaws: belowRange}},
		{"amounts that no story bears", Request{Target: within20, Bears: evens}, problem.AddToResult, numbers{8, 7}, rank{untold: 1}},
	} {
		c := judge(row.request, row.kind, row.numbers)
		c.rank.unfocused = c.unfocusedBy(row.request.Focus)
		if !c.holds || c.rank != row.want {
			t.Errorf("%s: %v %v has %+v, want %+v", row.name, row.kind, row.numbers, c.rank, row.want)
		}
	}
	if c := judge(Request{Target: within20}, problem.AddToResult, numbers{15, 6}); c.holds {
		t.Error("15 + 6 was taken within 20")
	}
}

// The range that comes before one's own, as the grades have them: 10, 20, 100.
func TestEarlierRange(t *testing.T) {
	for within, want := range map[int]int{5: 0, 10: 0, 11: 10, 20: 10, 21: 20, 100: 20, 101: 100, 1000: 100} {
		if got := earlierRange(within); got != want {
			t.Errorf("before %d comes %d, want %d", within, got, want)
		}
	}
}

// A problem is hard for its target when it passes a ten, or where all or none of the
// target's do, when its numbers reach the last quarter of the range.
func TestHard(t *testing.T) {
	for _, row := range []struct {
		crossing Crossing
		a, b     int
		want     bool
	}{
		{CrossEither, 8, 6, true}, {CrossEither, 12, 7, false}, {CrossEither, 8, 2, false},
		{CrossAlways, 8, 6, false}, {CrossAlways, 8, 7, true}, {CrossAlways, 9, 9, true},
		{CrossNever, 10, 4, false}, {CrossNever, 11, 4, true},
	} {
		if got := (Target{Within: 20, Crossing: row.crossing}).hard(made(t, problem.AddToResult, row.a, row.b)); got != row.want {
			t.Errorf("%d + %d is hard where a ten is passed %v: %v, want %v", row.a, row.b, row.crossing, got, row.want)
		}
	}
}

// A weightier wish is never given up for lighter ones.
func TestRankOrder(t *testing.T) {
	inOrder := []rank{{}, {echo: 1}, {flaws: 1}, {flaws: 15, echo: 1}, {last: 1}, {last: 2, flaws: 1}, {met: 1}, {recent: 1},
		{unfocused: 1}, {unfocused: 2}, {again: 1}, {untold: 1}, {untold: 1, again: 1, unfocused: 2, recent: 1, met: 9, last: 9, flaws: 15, echo: 1}}
	for i := range inOrder[1:] {
		if inOrder[i].compare(inOrder[i+1]) >= 0 {
			t.Errorf("%+v does not come before %+v", inOrder[i], inOrder[i+1])
		}
	}
}
