package activity

import (
	"testing"

	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// hadStory is a story that a class had in a week; weeks count from 1.
type hadStory struct {
	week    int
	kind    problem.Kind
	numbers numbers
}

// after is a planner whose class had stories, in the week that is being planned.
func after(t *testing.T, week int, had ...hadStory) *planner {
	t.Helper()
	p := newPlanner()
	for _, h := range had {
		met, err := h.numbers.problem(h.kind)
		if err != nil {
			t.Fatal(err)
		}
		p.memory.week = h.week
		p.memory.meet(met)
	}
	p.memory.week = week
	return p
}

// What a class had before speaks against numbers: against the very same ones for six
// weeks, against the same answer in one week, against a fact that it knows already.
func TestRankOfWhatTheClassHad(t *testing.T) {
	const add, take = problem.AddToResult, problem.TakeFromResult
	const oddPlace = 1 // every other story is not asked to be of one-digit numbers
	for _, row := range []struct {
		name string
		had  []hadStory
		week int // the one being planned
		now  numbers
		want rank
	}{
		{"nothing", nil, 1, numbers{8, 6}, rank{}},
		{"the same this week", []hadStory{{4, add, numbers{8, 6}}}, 4, numbers{8, 6}, rank{again: 1, recent: 1, met: 1, seen: 1, last: 4, echo: 1}},
		{"turned round this week", []hadStory{{4, add, numbers{6, 8}}}, 4, numbers{8, 6}, rank{again: 1, recent: 1, met: 1, seen: 1, last: 4, echo: 1}},
		{"the same answer this week", []hadStory{{4, add, numbers{9, 5}}}, 4, numbers{8, 6}, rank{echo: 1}},
		{"the same answer last week", []hadStory{{3, add, numbers{9, 5}}}, 4, numbers{8, 6}, rank{}},
		{"the fact as a difference", []hadStory{{4, take, numbers{14, 8}}}, 4, numbers{8, 6}, rank{met: 1, last: 4}},
		{"the same six weeks ago", []hadStory{{1, add, numbers{8, 6}}}, 7, numbers{8, 6}, rank{recent: 1, met: 1, seen: 1, last: 1}},
		{"the same seven weeks ago", []hadStory{{1, add, numbers{8, 6}}}, 8, numbers{8, 6}, rank{met: 1, seen: 1, last: 1}},
		{"twice, long ago", []hadStory{{1, add, numbers{8, 6}}, {2, add, numbers{8, 6}}}, 9, numbers{8, 6}, rank{met: 2, seen: 2, last: 2}},
		{"a 1 counts as met", nil, 1, numbers{14, 1}, rank{met: 1, flaws: withOne}},
	} {
		r := Request{Target: Target{Within: 20, Grade: 1}}
		p := after(t, row.week, row.had...)
		if got := p.rankNow(judge(r, add, row.now), r, oddPlace, eitherHalf); got != row.want {
			t.Errorf("%s: %v has %+v, want %+v", row.name, row.now, got, row.want)
		}
	}
}

// The worked story and every other one after it are of one-digit numbers where the
// range has such facts; the others are harder than before when a target returns.
func TestRankByPlace(t *testing.T) {
	target := Target{ID: "add-within-20", Within: 20, Grade: 1}
	for _, row := range []struct {
		name  string
		place int
		weeks int // that the target had
		now   numbers
		want  rank
	}{
		{"a fact", 0, 0, numbers{8, 6}, rank{}},
		{"no fact where one is asked for", 0, 0, numbers{12, 5}, rank{met: 1}},
		{"no fact in the next story", 1, 0, numbers{12, 5}, rank{}},
		{"no fact in the one after", 2, 0, numbers{12, 5}, rank{met: 1}},
		{"the target returns and no ten is passed", 1, 1, numbers{12, 5}, rank{flaws: tooEasy}},
		{"the target returns and a ten is passed", 1, 1, numbers{8, 6}, rank{}},
		{"the target returns with facts", 2, 1, numbers{4, 8}, rank{}},
	} {
		r := Request{Target: target}
		p := after(t, 1+row.weeks)
		p.memory.targets[target.ID] = row.weeks
		if got := p.rankNow(judge(r, problem.AddToResult, row.now), r, row.place, eitherHalf); got != row.want {
			t.Errorf("%s: %v has %+v, want %+v", row.name, row.now, got, row.want)
		}
	}
}

// The story that explains a way shows why the way helps, and does not tell its answer.
func TestRankOfTheWorkedStory(t *testing.T) {
	for _, row := range []struct {
		name string
		now  numbers
		want rank
	}{
		{"three to the ten, and one", numbers{13, 4}, rank{}},
		{"the way up is shorter", numbers{11, 7}, rank{unshown: 1}},
		{"seven are told, and seven are left", numbers{14, 7}, rank{unshown: 1, flaws: answerTold}},
	} {
		r := Request{Target: Target{Within: 20, Grade: 1}, Focus: strategy.BridgeBack, duty: explains}
		if got := after(t, 1).rankNow(judge(r, problem.TakeFromResult, row.now), r, 0, eitherHalf); got != row.want {
			t.Errorf("%s: %v has %+v, want %+v", row.name, row.now, got, row.want)
		}
	}
}

// In a week about facts those with a 1 come first and then the smallest, while the
// class has not met them; one that it has met comes after them, and after that one of
// the hard half, which the next story asks for.
func TestNewFactsComeFirst(t *testing.T) {
	r := Request{Target: named(t, "facts-within-20")}
	p := after(t, 2, hadStory{1, problem.AddToResult, numbers{2, 2}})
	inOrder := []numbers{{4, 1}, {2, 3}, {4, 4}, {5, 5}, {2, 2}, {9, 9}}
	rankOf := func(n numbers) rank { return p.rankNow(judge(r, problem.AddToResult, n), r, 0, lowerHalf) }
	for i, n := range inOrder[1:] {
		if before := inOrder[i]; rankOf(before).compare(rankOf(n)) >= 0 {
			t.Errorf("%v does not come before %v: %+v, %+v", before, n, rankOf(before), rankOf(n))
		}
	}
}

// Of two near doubles the one of the hard half comes first where that is asked for, in
// a story that is to practice them too.
func TestPracticedFactsKeepTheirHalf(t *testing.T) {
	r := Request{Target: named(t, "facts-within-20"), Focus: strategy.NearDoubles, duty: practices}
	rankOf := func(n numbers) rank { return after(t, 1).rankNow(judge(r, problem.AddToResult, n), r, 1, upperHalf) }
	if hard, easy := rankOf(numbers{7, 8}), rankOf(numbers{4, 5}); hard.compare(easy) >= 0 {
		t.Errorf("4 + 5 comes before 7 + 8: %+v, %+v", easy, hard)
	}
}

// Where nothing is allowed the search ends, however many numbers there are.
func TestChooseGivesUp(t *testing.T) {
	asked := 0
	r := Request{Target: Target{Within: problem.Largest, Grade: 3}, allows: func(problem.Problem) bool { asked++; return false }}
	c, _, found := newPlanner().choose(r, problem.AddToResult, 0)
	if found || asked == 0 || asked > mostAllowed {
		t.Errorf("after %d questions it chose %v, want none after %d at most", asked, c, mostAllowed)
	}
}
