package activity

import (
	"slices"
	"testing"

	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// admits counts the sets of numbers of a target that a strategy fits, of all or of a
// spread of them; it looks at them one by one, and knows nothing of how a planner does.
func admits(t Target, name strategy.Name) (fits, suits int) {
	for _, kind := range t.Kinds {
		box := t.box(kind)
		spread := box.size()/1_000 | 1
		for at := uint64(0); at < box.size(); at += spread {
			p, ok := t.holds(kind, box.at(at))
			if !ok {
				continue
			}
			for _, step := range p.Steps() {
				if strategy.Fits(name, step.Calculation()) {
					fits++
				}
				if strategy.Suits(name, step.Calculation()) {
					suits++
				}
			}
		}
	}
	return fits, suits
}

// Every target by every way it is good for: it has numbers for it, its worked story is
// solved by it and, where its numbers can be, at its best; and so are half of the
// stories to try, but where easy facts are still to be met one at least.
func TestTheWorkedStoryIsSolvedByTheFocus(t *testing.T) {
	for _, target := range sample(t, 17) {
		for _, name := range target.Strategies {
			fits, suits := admits(target, name)
			if fits == 0 {
				t.Errorf("%s is not solved by %v: take it out of its strategies", target.ID, name)
				continue
			}
			var asked []Request
			for i, key := range []string{"puddle", "kite", "pebble"} {
				asked = append(asked, Request{Week: monday(i), Key: key, Target: target, Focus: name, Stories: 4, Review: i == 1})
			}
			for _, w := range Year(asked) {
				if !w.Worked.ByFocus() || suits > 0 && unfocused(name, w.Worked.Problem) > 0 {
					t.Errorf("%s by %v, key %s: the worked story is %v, solved by %v", target.ID, name, w.Request.Key, w.Worked.Problem.Equation(), w.Worked.Ways()[0].Name)
				}
				want := 2
				if target.aboutFacts() {
					want = 1
				}
				if helps, _ := helpsWith(name, w); helps < 1+want {
					t.Errorf("%s by %v, key %s: %d stories are solved by it, want %d", target.ID, name, w.Request.Key, helps, 1+want)
				}
			}
		}
	}
}

// A way that the list does not name for a target is a teacher's to choose: it leads
// wherever it fits numbers that are not rare.
func TestATeachersOwnFocusLeads(t *testing.T) {
	for _, target := range sample(t, 31) {
		p := newPlanner()
		for _, name := range strategy.Names() {
			if slices.Contains(target.Strategies, name) {
				continue
			}
			w := p.aside().week(Request{Week: monday(0), Key: "puddle", Target: target, Focus: name, Stories: 1})
			if w.Worked.ByFocus() {
				continue
			}
			const rare = 5
			if fits, _ := admits(target, name); fits > rare {
				t.Errorf("%s by %v: the worked story is %v", target.ID, name, w.Worked.Problem.Equation())
			}
			if told := slices.ContainsFunc(w.Warnings, func(x Warning) bool { return x.Setting == "focus" }); !told {
				t.Errorf("%s by %v: %v is worked otherwise, and nobody is told", target.ID, name, w.Worked.Problem.Equation())
			}
		}
	}
}

// Published worked examples lead where a target and its way are theirs (CCSS-M 2010,
// 1.OA.C.5, 1.OA.C.6): the example is one that shows why the way helps.
func TestTheWorkedStoryIsAGoodExample(t *testing.T) {
	for _, row := range []struct {
		target string
		focus  strategy.Name
	}{
		{"add-within-20", strategy.MakeTen}, {"add-past-ten-within-20", strategy.MakeTen},
		{"subtract-past-ten-within-20", strategy.BridgeBack}, {"subtract-within-20", strategy.ThinkAddition},
		{"stories-within-10", strategy.CountOn}, {"facts-within-20", strategy.NearDoubles},
		{"stories-within-20", strategy.CountBack}, {"add-three-within-20", strategy.FriendlyPair},
		{"add-past-ten-within-100", strategy.FriendlyJump}, {"subtract-past-ten-within-100", strategy.JumpUp},
	} {
		for _, key := range []string{"puddle", "kite", "pebble", "heron"} {
			w := Year([]Request{{Week: monday(0), Key: key, Target: named(t, row.target), Focus: row.focus, Stories: 4}})[0]
			p := w.Worked.Problem
			if !goodExample(row.focus, p) || slices.ContainsFunc(p.Given(), func(q problem.Quantity) bool { return q.Value == p.Answer() }) {
				t.Errorf("%s by %v, key %s: the worked story is %v", row.target, row.focus, key, p.Equation())
			}
		}
	}
}

// A week that practices no way is planned as it always was: these are from before a
// way had a say in which story is worked.
func TestAWeekWithoutAFocusStaysAsItWas(t *testing.T) {
	for id, want := range map[string]string{
		"stories-within-20":    "11 - ? = 3, 8 + 12 = ?, 11 + ? = 20, 13 - 7 = ?, 8 + 9 = ?",
		"facts-within-20":      "8 + 1 = ?, 3 + 1 = ?, 5 - 4 = ?, 16 - 9 = ?, 9 + 6 = ?",
		"two-steps-within-100": "36 + 13 - 22 = ?, 25 + 17 + 57 = ?, 53 - 5 - 27 = ?, 81 + 10 - 77 = ?, 62 - 51 + 12 = ?",
	} {
		w := Year([]Request{{Week: monday(0), Key: "puddle", Target: named(t, id), Stories: 4}})[0]
		if got := inEquations(w); got != want {
			t.Errorf("%s: %s, want %s", id, got, want)
		}
	}
}

// A story of her own makes room in the week, and does not take the way from the
// worked one.
func TestOwnStoriesLeaveTheLead(t *testing.T) {
	p, err := problem.New(problem.TakeFromResult, 13, 4)
	if err != nil {
		t.Fatal(err)
	}
	for own := range 6 {
		r := Request{Week: monday(0), Key: "puddle", Target: named(t, "stories-within-20"), Focus: strategy.MakeTen, Stories: 4}
		r.Given = slices.Repeat([]Given{{Problem: p}}, own)
		if w := Year([]Request{r})[0]; !w.Worked.ByFocus() {
			t.Errorf("with %d own stories the worked one is %v", own, w.Worked.Problem.Equation())
		}
	}
}

// The kind that is proposed for a way is the story's own where it can be.
func TestFocusKind(t *testing.T) {
	for _, row := range []struct {
		target   string
		focus    strategy.Name
		has      problem.Kind
		want     problem.Kind
		possible bool
	}{
		{"stories-within-10", strategy.CountOn, problem.TogetherTotal, problem.TogetherTotal, true},
		{"find-the-start-within-20", strategy.NearDoubles, problem.AddToStart, problem.TakeFromStart, true},
		{"subtract-within-20", strategy.MakeTen, problem.TakeFromResult, problem.TakeFromResult, false},
		{"subtract-within-20", 0, problem.TakeFromResult, problem.TakeFromResult, false},
	} {
		got, ok := FocusKind(Request{Key: "puddle", Target: named(t, row.target), Focus: row.focus}, row.has)
		if got != row.want || ok != row.possible {
			t.Errorf("%s by %v: %v, %t, want %v, %t", row.target, row.focus, got, ok, row.want, row.possible)
		}
	}
}
