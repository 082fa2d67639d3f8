package activity

import (
	"fmt"
	"slices"
	"testing"

	"homebuild/internal/problem"
)

func TestCover(t *testing.T) {
	weeks := Year(append(weeksOf(named(t, "add-within-20"), 2, 4), Request{
		Week: monday(2), Key: "puddle", Target: named(t, "two-steps-within-20"), Stories: 4,
	}))
	c := Cover(weeks, 1)
	if len(c.Weeks) != 3 || len(c.Kinds) != len(problem.Kinds()) {
		t.Fatalf("%d weeks and %d kinds, want 3 and %d", len(c.Weeks), len(c.Kinds), len(problem.Kinds()))
	}
	stories := 0
	for _, row := range c.Kinds {
		sum := 0
		for _, n := range row.ByWeek {
			sum += n
		}
		if sum != row.Total {
			t.Errorf("%v: weeks add to %d, total %d", row.Kind, sum, row.Total)
		}
		stories += sum
	}
	if stories != 15 {
		t.Errorf("%d stories counted, want 3 weeks of 5", stories)
	}
	checkFacts(t, c, weeks)
	lacking := map[string]bool{}
	for _, l := range c.Lacks {
		lacking[l.Text] = true
	}
	if !lacking[`no week has a story of the kind "take-from-start"`] || lacking[`no week has a story of the kind "add-to-result"`] ||
		lacking[`no week has a story of the kind "add-then-add"`] {
		t.Errorf("lacks %v; want take-from-start among them, not what was met or is for grade 2", c.Lacks)
	}
}

// checkFacts counts the facts again from the stories' parts.
func checkFacts(t *testing.T, c Coverage, weeks []WeekPlan) {
	t.Helper()
	met := map[[2]int]bool{}
	for _, w := range weeks {
		for _, a := range w.All() {
			for _, step := range a.Problem.Steps() {
				x, y := step.Fact().Parts[0].Value, step.Fact().Parts[1].Value
				met[[2]int{x, y}], met[[2]int{y, x}] = true, true
			}
		}
	}
	missing := 0
	for a := 1; a <= 9; a++ {
		for b := 1; b <= 9; b++ {
			if (c.Facts[a-1][b-1] > 0) != met[[2]int{a, b}] {
				t.Errorf("%d + %d counted %d times, met %v", a, b, c.Facts[a-1][b-1], met[[2]int{a, b}])
			}
			if a <= b && !met[[2]int{a, b}] {
				missing++
			}
		}
	}
	if missing != len(c.Missing) {
		t.Errorf("%d facts are missing, %d listed", missing, len(c.Missing))
	}
}

// What a class lacks that had no week: in kindergarten the 25 facts to ten (1 + 1 for
// two, 1 + 2 for three, two each for four and five, and so on to five for ten), later
// all 45, in grade 3 none, where they are known; numbers to take apart up to grade 2,
// four to add in grade 2 alone. CCSS-M 2010, K.OA.A.2, 2.OA.B.2 and 2.NBT.B.6.
func TestLacks(t *testing.T) {
	for _, row := range []struct {
		grade             problem.Grade
		facts             int
		both, three, four bool
	}{
		{0, 25, true, false, false},
		{1, 45, true, true, false},
		{2, 45, true, true, true},
		{3, 0, false, true, false},
	} {
		facts, kinds := 0, map[string]bool{}
		for _, l := range Cover(nil, row.grade).Lacks {
			if l.Count > 1 {
				facts = l.Count
			}
			kinds[l.Text] = true
		}
		lacks := func(k problem.Kind) bool { return kinds[fmt.Sprintf("no week has a story of the kind %q", k)] }
		both, three, four := lacks(problem.TogetherBoth), lacks(problem.TogetherThree), lacks(problem.TogetherFour)
		if facts != row.facts || both != row.both || three != row.three || four != row.four {
			t.Errorf("grade %d lacks %d facts, both %v, three %v, four %v; want %+v", row.grade, facts, both, three, four, row)
		}
	}
}

// A class that met every fact lacks none.
func TestLacksNoFacts(t *testing.T) {
	var w WeekPlan
	for a := 1; a <= 9; a++ {
		for b := a; b <= 9; b++ {
			w.Stories = append(w.Stories, Activity{Problem: made(t, problem.TogetherTotal, a, b)})
		}
	}
	w.Worked = w.Stories[0]
	c := Cover([]WeekPlan{w}, 2)
	if len(c.Missing) > 0 || slices.ContainsFunc(c.Lacks, func(l Warning) bool { return l.Count != 1 }) {
		t.Errorf("facts %v are missing, and the class lacks %v", c.Missing, c.Lacks)
	}
	if c.Facts[0][0] != 2 || c.Facts[7][5] != 1 || c.Facts[5][7] != 1 {
		t.Errorf("1 + 1 was met %d times, want 2; 8 + 6 and 6 + 8 %d and %d times, want 1", c.Facts[0][0], c.Facts[7][5], c.Facts[5][7])
	}
}

// What a story asks of a child, sorted by hand.
func TestWorksOf(t *testing.T) {
	for _, row := range []struct {
		kind    problem.Kind
		numbers []int
		want    []Work
	}{
		{problem.AddToResult, []int{4, 3}, []Work{{10, problem.Plus, false}}},
		{problem.AddToChange, []int{8, 6}, []Work{{20, problem.Minus, true}}},
		{problem.TakeFromStart, []int{17, 5}, []Work{{20, problem.Plus, false}}},
		{problem.DifferenceMore, []int{65, 49}, []Work{{100, problem.Minus, true}}},
		{problem.TogetherThree, []int{120, 30, 41}, []Work{{1000, problem.Plus, false}}},
		{problem.AddThenTake, []int{16, 9, 4}, []Work{{100, problem.Plus, true}, {100, problem.Minus, false}}},
		{problem.TogetherBoth, []int{8, 6}, nil},
		{problem.AddToResult, []int{6, 4}, []Work{{10, problem.Plus, false}}}, // to ten, and not past it
		{problem.AddToResult, []int{6, 5}, []Work{{20, problem.Plus, true}}},
		{problem.AddToResult, []int{12, 8}, []Work{{20, problem.Plus, false}}},
		{problem.AddToResult, []int{12, 9}, []Work{{100, problem.Plus, true}}},
		{problem.AddToResult, []int{60, 40}, []Work{{100, problem.Plus, true}}},
		{problem.AddToResult, []int{60, 41}, []Work{{1000, problem.Plus, true}}},
	} {
		p, err := problem.New(row.kind, row.numbers...)
		if err != nil {
			t.Fatal(err)
		}
		if got := WorksOf(p); !slices.Equal(got, row.want) {
			t.Errorf("%v of %v asks for %v, want %v", row.kind, row.numbers, got, row.want)
		}
	}
}

// The table of work goes from small numbers to large ones, and counts the steps of each
// week; what nobody had has no row.
func TestWorkBy(t *testing.T) {
	week := func(stories ...problem.Problem) (w WeekPlan) {
		w.Worked.Problem = stories[0]
		for _, p := range stories[1:] {
			w.Stories = append(w.Stories, Activity{Problem: p})
		}
		return w
	}
	got := workBy([]WeekPlan{
		week(made(t, problem.AddToResult, 60, 50), made(t, problem.AddToResult, 4, 3)),
		week(made(t, problem.TakeFromResult, 14, 6), made(t, problem.AddToResult, 2, 3), made(t, problem.AddThenTake, 4, 4, 3)),
		week(made(t, problem.TogetherBoth, 4, 3)),
	})
	want := []WorkRow{
		{Work{10, problem.Plus, false}, []int{1, 2, 0}},
		{Work{10, problem.Minus, false}, []int{0, 1, 0}},
		{Work{20, problem.Minus, true}, []int{0, 1, 0}},
		{Work{1000, problem.Plus, true}, []int{1, 0, 0}},
	}
	if !slices.EqualFunc(got, want, func(a, b WorkRow) bool { return a.Work == b.Work && slices.Equal(a.ByWeek, b.ByWeek) }) {
		t.Errorf("the work is %v, want %v", got, want)
	}
}

// A school year of one class: 40 weeks over the targets of grades 1 and 2,
// eight stories each.
func BenchmarkYear(b *testing.B) {
	var requests []Request
	targets := embedded(b)
	for i := range 40 {
		requests = append(requests, Request{Week: monday(i), Key: "puddle", Target: targets[(i+6)%len(targets)], Stories: 8, Extra: true, Review: true})
	}
	b.ReportAllocs()
	for b.Loop() {
		Year(requests)
	}
}

func BenchmarkTargets(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Targets(); err != nil {
			b.Fatal(err)
		}
	}
}
