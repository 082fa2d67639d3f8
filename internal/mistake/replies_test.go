package mistake

import (
	"slices"
	"strings"
	"testing"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// upTo lists the numbers from low to top. A quick run (-short) takes those where ones,
// tens and hundreds begin and end, and some between.
func upTo(low, top int) (out []int) {
	spread := []int{0, 1, 2, 5, 8, 9, 10, 11, 13, 19, 20, 21, 46, 50, 83, 99, 100}
	for n := low; n <= top; n++ {
		if !testing.Short() || slices.Contains(spread, n) {
			out = append(out, n)
		}
	}
	return out
}

// every calls f for every problem whose numbers stay within top, with parts
// from low up; a third number goes up to third only, to keep the walk short.
func every(low, top, third int, f func(p problem.Problem)) {
	within := func(p problem.Problem) bool { return Question{Problem: p}.largest() <= top }
	for _, kind := range problem.Kinds() {
		for _, x := range upTo(low, top) {
			for _, y := range upTo(low, top) {
				if p, err := problem.New(kind, x, y); err == nil && within(p) {
					f(p)
				}
				for _, z := range upTo(low, third) {
					if p, err := problem.New(kind, x, y, z); err == nil && within(p) {
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
	case problem.AddToResult, problem.TogetherTotal, problem.BiggerMore, problem.BiggerFewer, problem.TogetherBoth:
		come(n[1])
	case problem.TakeFromResult, problem.DifferenceMore, problem.DifferenceFewer, problem.SmallerMore, problem.SmallerFewer:
		leave(n[1])
	case problem.AddToChange, problem.TakeFromChange, problem.TogetherAddend:
		have = 0
		come(n[1])
	case problem.TogetherThree, problem.TogetherFour, problem.AddThenAdd:
		for _, more := range n[1:] {
			come(more)
		}
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
	if problems < 15*5000 && !testing.Short() {
		t.Errorf("walked %d problems, want all of them", problems)
	}
}

// questions calls f with every question about p: by each way that fits it, once
// in a class that writes columns and once in another.
func questions(p problem.Problem, f func(q Question)) {
	steps := p.Steps()
	c := steps[len(steps)-1].Calculation()
	for _, n := range append(strategy.Names(), 0) {
		if n != 0 && !strategy.Fits(n, c) {
			continue
		}
		ways := strategy.Ways(c, 3, n)
		if n == strategy.CountAll { // a way of kindergarten
			ways = strategy.Ways(c, 0, n)
		}
		f(Question{Problem: p, Ways: ways[:min(2, len(ways))], Columns: n == strategy.Expanded})
	}
}

// Every number that a child can pick has one reply, and it is true: of every problem
// within 20 and a spread to 1000, by every way.
func TestEveryNumberHasOneReply(t *testing.T) {
	most, asked := 0, 0
	check := func(q Question) {
		if asked++; asked%sparse(1, 5) > 0 {
			return
		}
		within := problem.RangeOf(q.largest())
		help := q.Help(within, asked)
		most = max(most, len(help.All()))
		checkHelp(t, q, help, within)
	}
	every(0, 20, 3, func(p problem.Problem) { questions(p, check) })
	for _, kind := range problem.Kinds() {
		for a := 23; a <= 100; a += sparse(11, 19) {
			for b := 6; b < a; b += sparse(13, 29) {
				spread(t, kind, a, b, 17, func(p problem.Problem) { questions(p, check) })
			}
		}
		for a := 123; a <= 1000; a += sparse(119, 281) {
			for b := 46; b < a; b += sparse(131, 331) {
				spread(t, kind, a, b, 98, func(p problem.Problem) { questions(p, check) })
			}
		}
	}
	t.Logf("%d questions, at most %d replies", asked, most)
	if most > mostReplies {
		t.Errorf("a story has %d replies, want at most %d", most, mostReplies)
	}
}

// sparse is the step of a walk: quick in a quick run.
func sparse(step, quick int) int {
	if testing.Short() {
		return quick
	}
	return step
}

func spread(t *testing.T, kind problem.Kind, a, b, third int, f func(p problem.Problem)) {
	t.Helper()
	for _, numbers := range [][]int{{a, b}, {a, b, third}} {
		if p, err := problem.New(kind, numbers...); err == nil && (Question{Problem: p}).largest() <= 1000 {
			f(p)
		}
	}
}

func checkHelp(t *testing.T, q Question, help Help, within int) {
	t.Helper()
	var seen []int
	asked, answer := newReading(q), count(q.Problem)
	for i, r := range help.All() {
		for _, n := range r.Numbers {
			checkSort(t, q, r, n, answer, asked.most)
		}
		for _, line := range r.Lines {
			if r.Sort != Right { // of a reply to many numbers, the outermost show a fault
				checkLine(t, asked, r.Numbers[0], line)
				checkLine(t, asked, r.Numbers[len(r.Numbers)-1], line)
			}
		}
		for _, earlier := range help.All()[:i] {
			if same(r.Lines, earlier.Lines) {
				t.Errorf("%v: two replies say the same, to %v and to %v", q.Problem.Equation(), earlier.Numbers, r.Numbers)
			}
		}
		seen = append(seen, r.Numbers...)
	}
	slices.Sort(seen)
	if len(seen) != within+1 || len(slices.Compact(seen)) != within+1 {
		t.Errorf("%v: %d numbers have a reply, want each of %d once", q.Problem.Equation(), len(seen), within+1)
	}
	if q.Problem.Kind() == problem.TogetherBoth { // nothing is worked out
		return
	}
	for _, w := range q.Ways[:min(1, len(q.Ways))] {
		for _, s := range w.Slips {
			if r, ok := help.To(s.Answer); ok && !slices.Contains(r.Causes, Cause(s.Name)) && s.Answer != count(q.Problem) && !asked.tells(s.Ask) {
				t.Errorf("%v by %v: the slip %s is not known in %d", q.Problem.Equation(), w.Name, s.Name, s.Answer)
			}
		}
	}
}

// checkSort wants the reply to n to be of a sort that is true of n, where the largest
// number on the way to the answer is most.
func checkSort(t *testing.T, q Question, r Reply, n, answer, most int) {
	off := max(n-answer, answer-n)
	near := 10
	if most <= 20 || answer < 10 {
		near = 2
	} else if most <= 100 {
		near = 5
	}
	fits := false
	switch r.Sort {
	case Right:
		fits = off == 0
	case Known, OutOfReach:
		fits = off > 0
	case Away:
		fits = off == 1 || off == 10 || off == 100
	case Close:
		fits = off > 0 && off <= near
	case TooSmall: // nothing is never close to something
		fits = n < answer && (off > near || n == 0)
	case TooBig:
		fits = n > answer && off > near
	}
	if !fits || len(r.Lines) == 0 {
		t.Errorf("%v: the reply to %d is of the sort %d", q.Problem.Equation(), n, r.Sort)
	}
}

// columnIDs are hints in the language of columns.
var columnIDs = []string{
	"borrow-no-decrement", "hundred-no-decrement", "both-digits-written", "ones-with-tens", "borrow-from-zero", "borrow-across-zero",
	"stops-borrow-at-zero", "zero-minus", "zero-result", "zero-instead-of-borrow", "smaller-from-larger.hint",
}

// checkLine wants a line to be true of n, of the size of the numbers and of the kind
// of story.
func checkLine(t *testing.T, r reading, n int, line phrase.Line) {
	q, p := r.Question, r.Problem
	says := func(ids ...string) bool {
		return slices.ContainsFunc(ids, func(id string) bool { return strings.Contains(line.ID, id) })
	}
	chain, situation, most := p.Kind().Steps() != nil, p.Kind().Situation(), r.calc.Largest()
	counts := slices.ContainsFunc(q.Ways, func(w strategy.Way) bool {
		return slices.ContainsFunc(w.Slips, func(s strategy.Slip) bool { return s.Name == strategy.OneTooFar })
	})
	fault := func(is bool, why string) {
		if is {
			t.Errorf("%v by %v, reply to %d: %s %s", p.Equation(), q.Ways[0].Name, n, line.ID, why)
		}
	}
	fault(r.tells(line), "tells the answer")
	fault(says(columnIDs...) && !q.Columns, "speaks of columns")
	fault(says("each-once", "boxes-again", "count-all") && most > 10, "counts dots or boxes above ten")
	fault(says("mistake.counted-start", "mistake.one-too-far") && most > 20 && !counts, "counts by ones above twenty")
	fault(says("reply.away") && most <= 20, "is away below twenty")
	fault(says("wrong-operation.parts", "reach.part") && situation != problem.PutTogether, "asks for part and whole without them")
	fault(says("first-step-only.hint", "second-turned", "steps-turned") && (!chain || situation == problem.Compare), "asks what happens where nothing does")
	fault(says("reply.first-step", "reply.in-turn") && !chain, "asks for the first step of one")
	fault(says("reversed-comparison", "reach.bigger", "reach.smaller", "wrong-operation.difference") && situation != problem.Compare, "compares where nothing is compared")
	fault(says("reach.whole") && situation != problem.PutTogether && (situation != problem.AddTo || r.told[0] == slices.Max(r.told)), "speaks of a whole without parts")
	fault(says("reach.grows") && (situation != problem.AddTo || r.told[0] < slices.Max(r.told)), "says that it grows, and it does not")
	fault(says("reach.shrinks") && situation != problem.TakeFrom, "says that it shrinks, and it does not")
	fault(says("reach.whole", "reach.grows", "reach.bigger", "reach.shrinks") && n >= slices.Max(r.told), "says of a part that it is not the sum")
	fault(says("reach.part", "reach.ends", "reach.begins", "reach.smaller") && n <= slices.Max(r.told), "says of less than the whole it is more")
	for _, v := range line.Values {
		if sides := v.Equation.Sides(); v.Name == "Equation" && line.ID != "mistake.tens-counted.hint" && strings.HasPrefix(line.ID, "mistake.") && len(sides) > 1 && sides[1].Value() != n {
			t.Errorf("%v, reply to %d: %s shows %v", p.Equation(), n, line.ID, v.Equation)
		}
	}
}

// The openers take turns: on a page of stories none begins as its neighbor does.
func TestOpenersTakeTurns(t *testing.T) {
	p := mustNew(t, problem.TogetherTotal, 38, 25)
	seen := map[string]bool{}
	for story := range 6 {
		first := map[Sort]string{}
		for _, r := range (Question{Problem: p}).Help(100, story).General {
			if r.Sort != Close {
				first[r.Sort] = r.Lines[0].ID
				seen[r.Lines[0].ID] = true
			}
		}
		if first[OutOfReach] == first[TooSmall] || first[TooSmall] == first[TooBig] || len(first) != 3 {
			t.Errorf("story %d begins its replies with %v", story, first)
		}
	}
	if len(seen) != openers {
		t.Errorf("%d openers are used, want %d", len(seen), openers)
	}
}

// Which reply a number has, of each sort, and in the class's way first.
func TestReplies(t *testing.T) {
	for _, row := range []struct {
		kind    problem.Kind
		numbers []int
		by      strategy.Name
		n       int
		sort    Sort
		want    string // ids of the lines
	}{
		{problem.AddToResult, []int{8, 6}, strategy.MakeTen, 16, Known, "mistake.whole-used.hint"},
		{problem.AddToResult, []int{1, 12}, strategy.SplitTens, 11, Known, "mistake.wrong-operation.result"}, // and not that a part was lost
		{problem.AddToResult, []int{8, 6}, strategy.MakeTen, 2, Known, "mistake.wrong-operation.result"},
		{problem.AddToResult, []int{8, 6}, strategy.MakeTen, 5, OutOfReach, "reply.opener.1 reply.reach.grows"},
		{problem.AddToResult, []int{6, 8}, strategy.MakeTen, 5, OutOfReach, "reply.opener.1 reply.reach.whole"},
		{problem.AddToResult, []int{8, 6}, strategy.MakeTen, 11, TooSmall, "reply.opener.2 reply.too-small strategy.make-ten.hint"},
		{problem.AddToResult, []int{8, 6}, strategy.MakeTen, 19, TooBig, "reply.opener.3 reply.too-big strategy.make-ten.hint"},
		{problem.AddToResult, []int{9, 4}, strategy.MakeTen, 11, Close, "reply.close strategy.make-ten.hint"},
		{problem.TogetherTotal, []int{6, 7}, strategy.NearDoubles, 12, Known, "reply.several mistake.not-mended.hint mistake.counted-start.hint"},
		{problem.TogetherTotal, []int{6, 7}, strategy.CountOn, 12, Known, "mistake.counted-start.hint"},
		{problem.TogetherTotal, []int{6, 7}, strategy.CountOn, 10, TooSmall, "reply.opener.2 reply.too-small reply.steps.on"},
		{problem.TogetherAddend, []int{6, 8}, strategy.MakeTen, 5, TooSmall, "reply.opener.2 reply.too-small reply.steps.up"},
		{problem.AddToResult, []int{8, 7}, strategy.MakeTen, 14, Known, "reply.several mistake.step-off.hint mistake.counted-start.hint"},
		{problem.TakeFromResult, []int{85, 58}, strategy.JumpOnLine, 25, Known, "mistake.not-mended.hint"},
		{problem.TakeFromResult, []int{85, 58}, strategy.JumpOnLine, 23, Known, "mistake.mended-wrong.hint"},
		{problem.TakeFromStart, []int{14, 2}, strategy.JumpOnLine, 12, Known, "mistake.part-only.hint"},
		{problem.AddToResult, []int{76, 9}, strategy.JumpToTen, 86, Known, "reply.several mistake.step-off.hint mistake.not-mended.hint"},
		{problem.TakeFromChange, []int{9, 2}, strategy.ThinkAddition, 0, TooSmall, "reply.opener.2 reply.too-small strategy.think-addition.hint"},
		{problem.AddToResult, []int{500, 300}, strategy.SplitTens, 8, Known, "mistake.all-digits-added.hundreds"},
		{problem.AddToResult, []int{774, 218}, strategy.SplitTens, 982, Known, "mistake.carry-dropped.hint"},
		{problem.AddToResult, []int{774, 283}, strategy.SplitTens, 957, Known, "mistake.carry-dropped.hundred"},
		{problem.TogetherThree, []int{388, 80, 342}, strategy.TwoParts, 610, Known, "mistake.carry-dropped.hundreds"},
		{problem.TogetherFour, []int{24, 17, 36, 13}, strategy.Pairs, 70, Known, "mistake.carry-dropped.tens"},
		{problem.TogetherThree, []int{28, 37, 19}, strategy.SplitTens, 64, Known, "mistake.carry-dropped.tens"},
		{problem.TogetherTotal, []int{45, 39}, strategy.FriendlyJump, 86, Known, "mistake.mended-wrong.hint"},
		{problem.TogetherTotal, []int{45, 39}, strategy.FriendlyJump, 83, Away, "reply.away.one"},
		{problem.TakeFromResult, []int{62, 24}, strategy.JumpUp, 39, Away, "reply.away.one"},
		{problem.TakeFromResult, []int{65, 49}, strategy.JumpOnLine, 26, Known, "mistake.landing.hint"},
		{problem.TakeFromResult, []int{65, 49}, strategy.Expanded, 26, Known, "mistake.borrow-no-decrement.hint"},
		{problem.TakeFromResult, []int{907, 876}, strategy.Expanded, 131, Known, "mistake.hundred-no-decrement.hint"},
		{problem.TakeFromResult, []int{857, 167}, strategy.Expanded, 790, Known, "mistake.hundred-no-decrement.hint"},
		{problem.TakeFromResult, []int{857, 169}, strategy.Expanded, 788, Known, "mistake.hundred-no-decrement.hint"},
		{problem.TakeFromResult, []int{857, 167}, strategy.Expanded, 590, Away, "reply.away.hundred"},
		{problem.TakeFromResult, []int{65, 47}, strategy.JumpUp, 22, Known, "mistake.smaller-from-larger.ones-turned"},
		{problem.TakeFromResult, []int{44, 37}, strategy.JumpUp, 13, Known, "mistake.smaller-from-larger.ones-turned"},
		{problem.TakeFromResult, []int{13, 9}, strategy.BridgeBack, 6, Known, "mistake.smaller-from-larger.ones-turned"},
		{problem.TakeFromResult, []int{325, 175}, strategy.JumpUp, 250, Known, "mistake.smaller-from-larger.tens-turned"},
		{problem.TakeFromResult, []int{732, 654}, strategy.Expanded, 88, Known, "mistake.borrow-no-decrement.hint"},
		{problem.AddThenAdd, []int{34, 27, 20}, 0, 71, Known, "reply.several mistake.carry-dropped.hint mistake.landing.hint"},
		{problem.AddThenTake, []int{34, 19, 14}, 0, 29, Known, "reply.several mistake.carry-dropped.hint mistake.landing.hint"},
		{problem.AddThenTake, []int{34, 19, 14}, 0, 67, Known, "mistake.second-turned.hint"},
		{problem.TogetherTotal, []int{163, 109}, strategy.SplitTens, 273, Known, "reply.several reply.away.one mistake.not-mended.hint"},
		{problem.AddToChange, []int{56, 4}, strategy.JumpUp, 9, TooBig, "reply.opener.3 reply.too-big strategy.jump-on-line.hint-first-back"},
		{problem.TogetherTotal, []int{9, 10}, strategy.NearDoubles, 18, Known, "mistake.counted-start.hint"},
		{problem.DifferenceMore, []int{14, 9}, strategy.ThinkAddition, 16, OutOfReach, "reply.opener.1 reply.reach.smaller"},
		{problem.AddThenTake, []int{8, 5, 4}, 0, 17, Known, "mistake.second-turned.hint"},
		{problem.AddThenTake, []int{8, 5, 4}, 0, 1, TooSmall, "reply.opener.2 reply.too-small reply.in-turn.take"},
		{problem.AddThenTake, []int{8, 5, 4}, 0, 15, TooBig, "reply.opener.3 reply.too-big reply.first-step"},
		{problem.TakeThenAdd, []int{85, 58, 11}, 0, 48, Away, "reply.away.ten reply.first-step"},
		{problem.TakeThenAdd, []int{85, 58, 11}, strategy.Expanded, 48, Known, "mistake.borrow-no-decrement.hint"},
		{problem.TakeThenAdd, []int{85, 58, 11}, 0, 39, Away, "reply.away.one reply.in-turn.add"},
		{problem.BiggerThenTogether, []int{8, 5}, 0, 15, TooSmall, "reply.opener.2 reply.too-small reply.in-turn.compare"},
		{problem.BiggerThenTogether, []int{8, 5}, 0, 13, Known, "mistake.first-step-only.compare"},
		{problem.TogetherBoth, []int{4, 6}, 0, 7, TooSmall, "reply.opener.2 reply.parts-too-small"},
		{problem.TogetherBoth, []int{4, 6}, 0, 10, Right, "reply.right-parts"},
	} {
		p := mustNew(t, row.kind, row.numbers...)
		ways := strategy.Ways(p.Calculation(), 2, row.by)
		q := Question{Problem: p, Focus: row.by, Ways: ways[:min(2, len(ways))], Columns: row.by == strategy.Expanded}
		r, _ := q.Help(problem.RangeOf(q.largest()), 0).To(row.n)
		var ids []string
		for _, line := range r.Lines {
			ids = append(ids, line.ID)
		}
		if got := strings.Join(ids, " "); got != row.want || r.Sort != row.sort {
			t.Errorf("%v, reply to %d: %d %s\nwant %d %s", p.Equation(), row.n, r.Sort, got, row.sort, row.want)
		}
	}
}

// A number that is ten away, and that an unneeded number gives, too, is said to be both.
func TestUnneededNumberAndTenAway(t *testing.T) {
	q := Question{Problem: mustNew(t, problem.TakeFromResult, 349, 113), Extra: 10}
	r, _ := q.Help(1000, 0).To(226)
	var ids []string
	for _, line := range r.Lines {
		ids = append(ids, line.ID)
	}
	if got := strings.Join(ids, " "); got != "reply.several reply.away.ten mistake.used-extra.hint" {
		t.Errorf("349 - 113 with a 10 that is not needed, reply to 226: %s", got)
	}
}

func TestCausesAreDistinct(t *testing.T) {
	causes := Causes()
	slices.Sort(causes)
	if n := len(causes); len(slices.Compact(causes)) != n {
		t.Errorf("%v has one twice", causes)
	}
}
