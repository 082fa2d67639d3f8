package activity

import (
	"slices"
	"testing"

	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

const (
	addTo, takeFrom = problem.AddToResult, problem.TakeFromResult
	together, apart = problem.TogetherTotal, problem.TogetherBoth
	addStart        = problem.AddToStart // one of the four difficult kinds
	changeOf        = problem.TakeFromChange
)

// A week's way helps with half of the stories to try, and with one at least.
func TestPracticing(t *testing.T) {
	for stories, want := range map[int]int{1: 1, 2: 1, 3: 1, 4: 2, 5: 2, 8: 4} {
		if got := practicing(stories); got != want {
			t.Errorf("of %d stories %d practice, want %d", stories, got, want)
		}
	}
}

// spotsOf are spots of kinds; those at the places given practice.
func spotsOf(kinds []problem.Kind, practicing ...int) (all []spot, some []*spot) {
	all = make([]spot, len(kinds))
	for i, k := range kinds {
		all[i].kind = k
		if slices.Contains(practicing, i) {
			all[i].duty = practices
		}
		some = append(some, &all[i])
	}
	return all, some
}

// The worked story is the first that practices and is neither a difficult kind nor a
// number to take apart; where there is none it becomes one. A target about difficult
// kinds is worked by one.
func TestLead(t *testing.T) {
	plain, difficult := Target{Kinds: []problem.Kind{addTo, addStart}}, Target{Kinds: []problem.Kind{addStart, addTo}}
	for _, row := range []struct {
		name       string
		target     Target
		helped     []problem.Kind
		kinds      []problem.Kind
		practicing []int
		leads      int
		by         problem.Kind
	}{
		{"the first", plain, []problem.Kind{together, addTo}, []problem.Kind{addTo, together}, []int{0, 1}, 0, addTo},
		{"the first that practices", plain, nil, []problem.Kind{takeFrom, together}, []int{1}, 1, together},
		{"none that is difficult", plain, nil, []problem.Kind{addStart, together}, []int{0, 1}, 1, together},
		{"none to take apart", plain, nil, []problem.Kind{apart, together}, []int{0, 1}, 1, together},
		{"all are difficult", plain, []problem.Kind{addTo, addStart}, []problem.Kind{takeFrom, addStart, addStart}, []int{1, 2}, 1, addTo},
		{"all are to take apart", plain, []problem.Kind{apart, addTo}, []problem.Kind{apart, apart}, []int{0, 1}, 0, addTo},
		{"nothing else is helped", plain, []problem.Kind{addStart}, []problem.Kind{addStart, addStart}, []int{0, 1}, 0, addStart},
		{"about difficult kinds", difficult, nil, []problem.Kind{addTo, addStart}, []int{0, 1}, 1, addStart},
	} {
		all, some := spotsOf(row.kinds, row.practicing...)
		lead(row.target, row.helped, some)
		for i, s := range all {
			if (s.duty == explains) != (i == row.leads) {
				t.Errorf("%s: %v, want the one at %d to lead", row.name, all, row.leads)
			}
		}
		if got := all[row.leads].kind; got != row.by {
			t.Errorf("%s: the worked story is a %v, want %v", row.name, got, row.by)
		}
	}
}

// A kind that makes room for the way is the one that the week has least.
func TestRarest(t *testing.T) {
	all, _ := spotsOf([]problem.Kind{addTo, addTo, together})
	for _, row := range []struct {
		kinds []problem.Kind
		want  problem.Kind
	}{
		{[]problem.Kind{addTo, together}, together}, {[]problem.Kind{together, takeFrom, addTo}, takeFrom},
		{[]problem.Kind{takeFrom, changeOf}, takeFrom}, // of equals the first
	} {
		if got := rarest(row.kinds, all); got != row.want {
			t.Errorf("of %v the rarest is %v, want %v", row.kinds, got, row.want)
		}
	}
}

// Stories that make a ten are sums. Half of those to try and the worked one are: those
// that the week has, and where these are too few the last ones make room.
func TestSpotsFor(t *testing.T) {
	r := Request{Key: "puddle", Target: Target{Within: 20, Grade: 1, Kinds: []problem.Kind{addTo, takeFrom, together, changeOf}}, Focus: strategy.MakeTen}
	for _, row := range []struct {
		name  string
		focus strategy.Name
		kinds []problem.Kind
		duty  []duty
		sums  int // stories that are sums then
	}{
		{"no way", 0, []problem.Kind{addTo, takeFrom, together, changeOf, addTo}, []duty{noDuty, noDuty, noDuty, noDuty, noDuty}, 3},
		{"a way that helps with none", strategy.FriendlyPair, []problem.Kind{addTo, takeFrom, together, changeOf, addTo}, []duty{noDuty, noDuty, noDuty, noDuty, noDuty}, 3},
		{"as many as are wanted", strategy.MakeTen, []problem.Kind{takeFrom, addTo, changeOf, together, addTo}, []duty{noDuty, explains, noDuty, practices, practices}, 3},
		{"more than are wanted", strategy.MakeTen, []problem.Kind{addTo, together, addTo, together, takeFrom}, []duty{explains, practices, practices, noDuty, noDuty}, 4},
		{"one too few", strategy.MakeTen, []problem.Kind{addTo, takeFrom, together, changeOf, takeFrom}, []duty{explains, noDuty, practices, noDuty, practices}, 3},
		{"none", strategy.MakeTen, []problem.Kind{takeFrom, takeFrom, changeOf, changeOf, takeFrom}, []duty{noDuty, noDuty, explains, practices, practices}, 3},
		{"one to try", strategy.MakeTen, []problem.Kind{takeFrom, changeOf}, []duty{explains, practices}, 2},
		{"only a worked one", strategy.MakeTen, []problem.Kind{takeFrom}, []duty{explains}, 1},
	} {
		r.Focus = row.focus
		var got []duty
		sums := 0
		for _, s := range newPlanner().spotsFor(r, row.kinds) {
			got = append(got, s.duty)
			if opOf(s.kind) == problem.Plus {
				sums++
			}
		}
		if !slices.Equal(got, row.duty) || sums != row.sums {
			t.Errorf("%s: duties %v with %d sums, want %v with %d", row.name, got, sums, row.duty, row.sums)
		}
	}
}

// What comes back, and a story that is for easy facts, does not practice the way.
func TestFreeSpots(t *testing.T) {
	for _, row := range []struct {
		name   string
		target string
		review bool
		places []int
	}{
		{"all", "add-within-20", false, []int{0, 1, 2, 3, 4}},
		{"the last may come back", "add-within-20", true, []int{0, 1, 2, 3}},
		{"every other is for easy facts", "facts-within-20", false, []int{1, 3}},
	} {
		all, _ := spotsOf([]problem.Kind{addTo, addTo, addTo, addTo, addTo})
		r := Request{Target: named(t, row.target), Review: row.review}
		var got []int
		free := newPlanner().freeSpots(r, all)
		for i := range all {
			if slices.Contains(free, &all[i]) {
				got = append(got, i)
			}
		}
		if !slices.Equal(got, row.places) {
			t.Errorf("%s: %v are free, want %v", row.name, got, row.places)
		}
	}
	one, _ := spotsOf([]problem.Kind{addTo})
	if got := newPlanner().freeSpots(Request{Target: named(t, "facts-within-20")}, one); len(got) != 1 || got[0] != &one[0] {
		t.Errorf("of a worked story alone %d are free, want it", len(got))
	}
}

// A way is for a kind of story where it is for its operation; whether it helps with some
// numbers is found soon, or given up.
func TestHelps(t *testing.T) {
	for _, row := range []struct {
		focus  strategy.Name
		kind   problem.Kind
		within int
		want   bool
	}{
		{strategy.MakeTen, addTo, 20, true}, {strategy.MakeTen, takeFrom, 20, false}, {strategy.BridgeBack, takeFrom, 20, true},
		{strategy.BridgeBack, addTo, 20, false}, {strategy.FriendlyPair, problem.TogetherThree, 20, true}, {strategy.FriendlyPair, addTo, 20, false},
		{strategy.MakeTen, addTo, 9, false}, // there is no ten
	} {
		if got := (Request{Target: Target{Within: row.within}, Focus: row.focus}).helps(row.kind); got != row.want {
			t.Errorf("%v helps with %v to %d: %v, want %v", row.focus, row.kind, row.within, got, row.want)
		}
	}
	asked := 0
	never := BearerFunc(func(problem.Problem) bool { asked++; return false })
	r := Request{Target: Target{Within: problem.Largest, Grade: 3}, Focus: strategy.SplitTens, Bears: never}
	if r.helps(addTo) || asked == 0 || asked > mostTried {
		t.Errorf("after %d questions stories that bear nothing are helped, or want %d questions at most", asked, mostTried)
	}
}

// The last story may bring an earlier week back, where there are two to try at least.
func TestMayReturn(t *testing.T) {
	for _, row := range []struct {
		review    bool
		place, of int
		want      bool
	}{
		{true, 4, 5, true}, {true, 3, 5, false}, {true, 2, 3, true}, {true, 1, 2, false}, {true, 0, 1, false}, {false, 4, 5, false},
	} {
		if got := (Request{Review: row.review}).mayReturn(row.place, row.of); got != row.want {
			t.Errorf("story %d of %d, where that is wished for %v: may return %v, want %v", row.place, row.of, row.review, got, row.want)
		}
	}
}

// A week is remembered: its target, and each of its stories once.
func TestAWeekIsRemembered(t *testing.T) {
	p := newPlanner()
	r := Request{Week: monday(0), Key: "puddle", Target: named(t, "add-within-20"), Stories: 4}
	for weeks := 1; weeks <= 2; weeks++ {
		p.week(r)
		stories := 0
		for _, n := range p.memory.kinds {
			stories += n
		}
		if m := p.memory; m.week != weeks || m.targets[r.Target.ID] != weeks || stories != 5*weeks {
			t.Errorf("after %d weeks: week %d, %d about the target, %d stories", weeks, m.week, m.targets[r.Target.ID], stories)
		}
	}
}
