package mistake

import (
	"slices"
	"strings"
	"testing"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// every calls f for every problem whose numbers stay within top, with parts
// from low up; a third number goes up to third only, to keep the walk short.
func every(low, top, third int, f func(p problem.Problem)) {
	for _, kind := range problem.Kinds() {
		for x := low; x <= top; x++ {
			for y := low; y <= top; y++ {
				if p, err := problem.New(kind, x, y); err == nil && largest(p, 0) <= top {
					f(p)
				}
				for z := low; z <= third; z++ {
					if p, err := problem.New(kind, x, y, z); err == nil && largest(p, 0) <= top {
						f(p)
					}
				}
			}
		}
	}
}

// count finds the answer without the engine: by the story, one by one.
func count(p problem.Problem) int {
	n := p.Numbers()
	have := 0
	come := func(k int) {
		for range k {
			have++
		}
	}
	leave := func(k int) {
		for range k {
			have--
		}
	}
	come(n[0])
	switch p.Kind() {
	case problem.AddToResult, problem.TogetherTotal, problem.BiggerMore, problem.BiggerFewer:
		come(n[1])
	case problem.TakeFromResult, problem.DifferenceMore, problem.DifferenceFewer, problem.SmallerMore, problem.SmallerFewer:
		leave(n[1])
	case problem.AddToChange, problem.TakeFromChange, problem.TogetherAddend:
		have = 0
		come(n[1])
	case problem.TogetherThree, problem.AddThenAdd:
		come(n[1])
		come(n[2])
	case problem.AddThenTake, problem.TogetherThenTake:
		come(n[1])
		leave(n[2])
	case problem.TakeThenAdd:
		leave(n[1])
		come(n[2])
	case problem.TakeThenTake:
		leave(n[1])
		leave(n[2])
	case problem.BiggerThenTogether:
		come(n[0])
		come(n[1])
	}
	return have
}

func TestRightAnswerIsNeverDiagnosed(t *testing.T) {
	problems := 0
	every(0, 100, 4, func(p problem.Problem) {
		problems++
		want := count(p)
		for _, m := range Of(p, 0) {
			if m.Answer == want || m.Answer < 0 {
				t.Errorf("%v %v: %v gives %d; the right answer is %d", p.Kind(), p.Numbers(), m.Cause, m.Answer, want)
			}
		}
	})
	if problems < 15*5000 {
		t.Errorf("walked %d problems, want all of them", problems)
	}
}

// Every number of the range gets a reply that is true, whatever the extra
// number is, and only the right number is told to be right.
func TestEveryNumberGetsAReply(t *testing.T) {
	every(0, 20, 6, func(p problem.Problem) {
		for _, extra := range []int{0, 3} {
			r := newReplies(p, extra)
			for n := range 21 {
				checkReply(t, p, n, r.to(n))
			}
		}
	})
	for _, kind := range problem.Kinds() {
		for _, numbers := range [][]int{{28, 17}, {73, 46}, {90, 47}, {30, 20}, {28, 17, 9}, {60, 30, 25}} {
			p, err := problem.New(kind, numbers...)
			if err != nil {
				continue
			}
			r := newReplies(p, 0)
			for n := range 2000 {
				checkReply(t, p, n, r.to(n))
			}
		}
	}
}

func checkReply(t *testing.T, p problem.Problem, n int, r Reply) {
	t.Helper()
	want := count(p)
	correct := n == want
	if p.Kind() == problem.TogetherBoth {
		correct = n <= p.Numbers()[0]+p.Numbers()[1]
	}
	if (r.Verdict == Right) != correct || len(r.Lines) == 0 {
		t.Errorf("%v %v, reply to %d: verdict %d, %d lines; right is %d", p.Kind(), p.Numbers(), n, r.Verdict, len(r.Lines), want)
	}
	if r.Verdict == TooSmall && n >= want || r.Verdict == TooBig && n <= want {
		t.Errorf("%v %v, reply to %d: verdict %d points the wrong way; right is %d", p.Kind(), p.Numbers(), n, r.Verdict, want)
	}
	if r.Verdict != Right {
		for _, line := range r.Lines {
			checkLine(t, p, n, line)
		}
	}
}

// checkLine sees that a line to a child who is not there yet does not show the
// answer, except as a number that the story itself tells.
func checkLine(t *testing.T, p problem.Problem, n int, line phrase.Line) {
	t.Helper()
	answer := count(p)
	told := slices.ContainsFunc(p.Told(), func(q problem.Quantity) bool { return q.Value == answer })
	if told || p.Kind() == problem.TogetherBoth {
		return
	}
	for _, v := range line.Values {
		if v.Kind == phrase.KindNumber && v.N == answer {
			t.Errorf("%v %v, reply to %d: %s shows the answer %d", p.Kind(), p.Numbers(), n, line.ID, answer)
		}
		if v.Kind != phrase.KindEquation || v.Equation.Asks() {
			continue
		}
		if sides := v.Equation.Sides(); sides[len(sides)-1].Value() == answer {
			t.Errorf("%v %v, reply to %d: %s shows the answer in %v", p.Kind(), p.Numbers(), n, line.ID, v.Equation)
		}
	}
}

// A check must really show what it claims: tens that are less or more.
func TestChecksShowIt(t *testing.T) {
	for _, row := range []struct {
		kind    problem.Kind
		numbers []int
		n       int
		verdict Verdict
		check   Check
		id      string
	}{
		{problem.AddToResult, []int{8, 6}, 5, TooSmall, PartWhole, "reply.check.not-below-part"},
		{problem.AddToResult, []int{8, 6}, 12, TooSmall, Count, "reply.check.count-on"},
		{problem.AddToResult, []int{8, 6}, 19, TooBig, Count, "reply.check.count-on"},
		{problem.TogetherTotal, []int{28, 17}, 29, TooSmall, Tens, "reply.check.tens-below"},
		{problem.TogetherTotal, []int{28, 17}, 51, TooBig, Tens, "reply.check.tens-above"},
		{problem.TogetherTotal, []int{28, 17}, 47, TooBig, Count, "reply.check.jump-on"},
		{problem.TogetherTotal, []int{30, 20}, 60, TooBig, Count, "reply.check.jump-on"},
		{problem.TakeFromResult, []int{13, 4}, 15, TooBig, PartWhole, "reply.check.not-above-whole"},
		{problem.TakeFromResult, []int{13, 4}, 6, TooSmall, PutBack, "reply.check.put-back"},
		{problem.BiggerFewer, []int{8, 5}, 6, TooSmall, PartWhole, "reply.check.not-below-part-compare"},
		{problem.SmallerMore, []int{12, 3}, 14, TooBig, PartWhole, "reply.check.not-above-whole-compare"},
		{problem.TogetherBoth, []int{4, 6}, 11, TooBig, PartWhole, "reply.check.not-above-whole"},
		{problem.TogetherThree, []int{5, 4, 6}, 12, TooSmall, Count, "reply.check.two-first"},
		{problem.AddThenTake, []int{8, 5, 4}, 2, TooSmall, StepWise, "reply.check.first-step"},
	} {
		r := ReplyTo(mustNew(t, row.kind, row.numbers...), 0, row.n)
		if r.Verdict != row.verdict || r.Check != row.check || r.Lines[len(r.Lines)-1].ID != row.id {
			t.Errorf("%v %v, reply to %d: got verdict %d check %d %s; want %d %d %s", row.kind, row.numbers, row.n,
				r.Verdict, r.Check, r.Lines[len(r.Lines)-1].ID, row.verdict, row.check, row.id)
		}
	}
	every(1, 30, 0, func(p problem.Problem) {
		r := newReplies(p, 0)
		for n := range 90 {
			if reply := r.to(n); reply.Check == Tens {
				tens := r.tens(0).Value()
				if reply.Verdict == TooBig {
					tens = r.tens(9).Value()
				}
				if reply.Verdict == TooSmall && n >= tens || reply.Verdict == TooBig && n <= tens {
					t.Errorf("%v %v: tens come to %d and do not show that %d is off", p.Kind(), p.Numbers(), tens, n)
				}
			}
		}
	})
}

func TestGroupsAndChoices(t *testing.T) {
	for _, row := range []struct {
		name    string
		kind    problem.Kind
		numbers []int
		holds   []int
		most    int
	}{
		{"to 10", problem.AddToResult, []int{5, 3}, []int{0, 8, 10, 53}, 53},
		{"to 20, added instead beyond the grid", problem.TakeFromResult, []int{13, 9}, []int{0, 4, 20, 22}, 22},
		{"to 100", problem.TogetherTotal, []int{28, 17}, []int{0, 45, 100, 315, 2817}, 2817},
		{"to 1000", problem.TakeFromResult, []int{500, 283}, []int{117, 127, 207, 216, 217, 218, 227, 317, 383, 783}, 783},
	} {
		p := mustNew(t, row.kind, row.numbers...)
		choices := Choices(p, 0)
		if !slices.IsSorted(choices) || choices[len(choices)-1] != row.most {
			t.Errorf("%s: choices %v, want sorted and up to %d", row.name, choices, row.most)
		}
		for _, n := range row.holds {
			if !slices.Contains(choices, n) {
				t.Errorf("%s: choices %v lack %d", row.name, choices, n)
			}
		}
		var back []int
		for _, g := range Groups(p, 0, choices) {
			for _, n := range g.Numbers {
				if !same(g.Reply, ReplyTo(p, 0, n)) {
					t.Errorf("%s: %d stands in a group with another reply", row.name, n)
				}
			}
			back = append(back, g.Numbers...)
		}
		if back = sorted(back); !slices.Equal(back, choices) {
			t.Errorf("%s: groups hold %v, want each of %v once", row.name, back, choices)
		}
	}
}

func TestCauseIDs(t *testing.T) {
	seen := map[string]bool{}
	for _, c := range Causes() {
		id := c.String()
		if id == "" || seen[id] || strings.ToLower(id) != id {
			t.Errorf("cause %d has id %q, want its own in lower case", c, id)
		}
		seen[id] = true
	}
	if len(seen) != 22 {
		t.Errorf("%d causes, want 22", len(seen))
	}
}
