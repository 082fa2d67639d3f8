package story

import (
	"slices"
	"testing"

	"homebuild/internal/problem"
)

func load(t testing.TB) Places {
	t.Helper()
	all, err := LoadPlaces()
	if err != nil {
		t.Fatal(err)
	}
	return all
}

// Next door is next door both ways, and what an event says of itself can be.
func TestPlaces(t *testing.T) {
	all := load(t)
	seen := map[string]bool{}
	for _, p := range all {
		if next := all.Place(p.Next); next == nil || next.Next != p.ID {
			t.Errorf("%s is not next door to %q", p.ID, p.Next)
		}
		for _, e := range p.Events {
			if seen[e.ID] || len(e.Cast) == 0 || len(e.Kinds) == 0 {
				t.Errorf("%s is there twice, has no cast or tells nothing", e.ID)
			}
			seen[e.ID] = true
			if e.least < e.part || e.most <= e.least || e.Extra.Least < 2 || e.Extra.Most <= e.Extra.Least || e.Extra.Thing == e.Thing {
				t.Errorf("%s has amounts from %d (parts %d) to %d, and %+v that nobody needs", e.ID, e.least, e.part, e.most, e.Extra)
			}
		}
	}
}

// Every kind of story is told often and at every size: no fewer events, and in
// no fewer places, than the plan for the stories has (our own plan, no published
// source).
func TestCoverage(t *testing.T) {
	plan := []struct {
		kind                                       problem.Kind
		events, places, ten, twenty, hundred, most int
	}{
		{problem.AddToResult, 42, 12, 32, 33, 42, 16},
		{problem.TakeFromResult, 33, 12, 26, 29, 33, 11},
		{problem.TogetherTotal, 36, 12, 21, 27, 36, 20},
		{problem.DifferenceMore, 35, 12, 21, 24, 35, 18}, // two sunflowers below 20 centimeters see nothing
		{problem.TogetherThree, 31, 12, 18, 23, 31, 18},
		{problem.TogetherFour, 6, 6, 4, 5, 6, 4},
		{problem.AddThenAdd, 23, 12, 18, 18, 23, 11},
		{problem.AddThenTake, 21, 12, 18, 19, 21, 7},
		{problem.TakeThenAdd, 28, 12, 23, 25, 28, 8},
		{problem.TakeThenTake, 22, 12, 16, 19, 22, 9},
		{problem.TogetherThenTake, 21, 12, 13, 17, 21, 10},
		{problem.BiggerThenTogether, 20, 12, 15, 16, 20, 11},
	}
	all := load(t)
	for _, want := range plan {
		got := want
		var places []string
		got.events, got.ten, got.twenty, got.hundred, got.most = 0, 0, 0, 0, 0
		for _, e := range all.Events() {
			if !slices.Contains(e.Kinds, want.kind) {
				continue
			}
			got.events++
			if !slices.Contains(places, e.Place) {
				places = append(places, e.Place)
			}
			for least, n := range map[int]*int{8: &got.ten, 12: &got.twenty} {
				if e.Span(want.kind).Least <= least {
					*n++
				}
			}
			for most, n := range map[int]*int{60: &got.hundred, 600: &got.most} {
				if e.most >= most {
					*n++
				}
			}
		}
		got.places = len(places)
		if got.events < want.events || got.places < want.places || got.ten < want.ten || got.twenty < want.twenty || got.hundred < want.hundred || got.most < want.most {
			t.Errorf("%v: want at least %+v, got %+v", want.kind, want, got)
		}
	}
}

func TestBears(t *testing.T) {
	tests := []struct {
		event   string
		kind    problem.Kind
		numbers []int
		want    bool
	}{
		{"harbour.board", problem.AddToResult, []int{8, 6}, true},
		{"harbour.board", problem.AddToResult, []int{2, 1}, false},   // below its least
		{"harbour.board", problem.AddToResult, []int{60, 31}, false}, // above its most
		{"harbour.board", problem.AddThenTake, []int{60, 31, 20}, false},
		{"harbour.board", problem.DifferenceMore, []int{9, 4}, false}, // does not compare
		{"harbour.board", problem.AddToChange, []int{8, 1}, false},    // "people came on board"
		{"harbour.board", problem.AddToResult, []int{8, 1}, true},
		{"harbour.board", problem.TogetherBoth, []int{1, 5}, true}, // any pair is right
		{"harbour.tide", problem.AddToResult, []int{40, 8}, false}, // no water rises by so little
		{"harbour.tide", problem.DifferenceMore, []int{48, 46}, true},
		{"harbour.crane", problem.DifferenceMore, []int{60, 46}, false}, // a ferry that hangs low
		{"harbour.crane", problem.TogetherTotal, []int{60, 46}, true},
	}
	all := load(t)
	for _, test := range tests {
		p, err := problem.New(test.kind, test.numbers...)
		if err != nil {
			t.Fatal(err)
		}
		if got := all.Event(test.event).Bears(p); got != test.want {
			t.Errorf("%s bears %v %v: want %v", test.event, test.kind, test.numbers, test.want)
		}
	}
}

// A recipe tells what the kind tells, asks for what is unknown, and asks last.
func TestRecipes(t *testing.T) {
	for _, k := range problem.Kinds() {
		p := sample(t, k)
		recipe := recipes[k]
		if len(recipe) == 0 {
			t.Errorf("%v has no recipe", k)
			continue
		}
		var gives []problem.Role
		for _, key := range recipe[:len(recipe)-1] {
			if role := givenBy[key]; role != "" {
				gives = append(gives, role)
			}
		}
		if want := roles(p.Given()); !sameSet(gives, want) {
			t.Errorf("%v tells %v, want %v", k, gives, want)
		}
		if asks := answered[recipe[len(recipe)-1]]; !slices.Equal(asks, roles(p.Asked())) {
			t.Errorf("%v asks %v, want %v", k, asks, roles(p.Asked()))
		}
	}
}

// sample gives numbers that fit a kind.
func sample(t testing.TB, k problem.Kind) problem.Problem {
	t.Helper()
	for _, numbers := range [][]int{{9, 4}, {9, 4, 3}, {9, 4, 3, 5}} {
		if p, err := problem.New(k, numbers...); err == nil {
			return p
		}
	}
	t.Fatalf("no sample for %v", k)
	return problem.Problem{}
}

func roles(qs []problem.Quantity) []problem.Role {
	var out []problem.Role
	for _, q := range qs {
		out = append(out, q.Role)
	}
	return out
}

func sameSet(a, b []problem.Role) bool {
	a, b = slices.Clone(a), slices.Clone(b)
	slices.Sort(a)
	slices.Sort(b)
	return slices.Equal(a, b)
}
