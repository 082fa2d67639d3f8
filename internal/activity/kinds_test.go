package activity

import (
	"slices"
	"testing"

	"homebuild/internal/problem"
)

// Every kind comes before one comes again, those that the class has met least first; the
// worked story is none of the difficult kinds, where the target is not about them.
func TestKindsFor(t *testing.T) {
	difficult := problem.AddToStart
	for _, row := range []struct {
		name  string
		kinds []problem.Kind
		met   map[problem.Kind]int
		want  []problem.Kind
	}{
		{"met least first", []problem.Kind{addTo, takeFrom, together}, map[problem.Kind]int{addTo: 2, takeFrom: 1}, []problem.Kind{together, takeFrom, addTo, together, takeFrom}},
		{"the worked one is not difficult", []problem.Kind{addTo, difficult, takeFrom}, map[problem.Kind]int{addTo: 2, takeFrom: 1}, []problem.Kind{takeFrom, difficult, addTo, takeFrom, difficult}},
		{"a target about difficult ones", []problem.Kind{difficult, addTo}, map[problem.Kind]int{difficult: 1}, []problem.Kind{difficult, addTo, difficult, addTo, difficult}},
		{"one kind", []problem.Kind{addTo}, nil, []problem.Kind{addTo, addTo, addTo, addTo, addTo}},
	} {
		p := newPlanner()
		p.memory.kinds = row.met
		if got := p.kindsFor(Request{Key: "puddle", Target: Target{Kinds: row.kinds}}, 5); !slices.Equal(got, row.want) {
			t.Errorf("%s: %v, want %v", row.name, got, row.want)
		}
	}
}

// A page goes from easy to hard, kinds before numbers; a word that misleads ("fewer" for
// the bigger amount: CCSS-M 2010, Glossary, Table 1) comes second, fourth and so on, as
// long as there are others.
func TestArrange(t *testing.T) {
	const trap, other = problem.BiggerFewer, problem.BiggerMore
	story := func(kind problem.Kind, n ...int) Activity { return Activity{Problem: made(t, kind, n...)} }
	for _, row := range []struct {
		name           string
		stories, order []Activity
	}{
		{"kinds", []Activity{story(addStart, 3, 2), story(takeFrom, 9, 4), story(together, 8, 6)}, []Activity{story(together, 8, 6), story(takeFrom, 9, 4), story(addStart, 3, 2)}},
		{"numbers", []Activity{story(together, 8, 6), story(together, 3, 2)}, []Activity{story(together, 3, 2), story(together, 8, 6)}},
		{"one trap", []Activity{story(trap, 8, 2), story(other, 3, 2), story(other, 8, 2)}, []Activity{story(other, 3, 2), story(trap, 8, 2), story(other, 8, 2)}},
		{"two traps", []Activity{story(trap, 8, 2), story(other, 3, 2), story(trap, 9, 2), story(other, 8, 2)}, []Activity{story(other, 3, 2), story(trap, 8, 2), story(other, 8, 2), story(trap, 9, 2)}},
		{"more traps than others", []Activity{story(trap, 8, 2), story(trap, 9, 2), story(other, 3, 2), story(trap, 7, 2)}, []Activity{story(other, 3, 2), story(trap, 7, 2), story(trap, 8, 2), story(trap, 9, 2)}},
		{"traps alone", []Activity{story(trap, 9, 2), story(trap, 8, 2)}, []Activity{story(trap, 8, 2), story(trap, 9, 2)}},
		{"none", nil, nil},
	} {
		arrange(row.stories)
		same := func(a, b Activity) bool { return a.Problem == b.Problem }
		if !slices.EqualFunc(row.stories, row.order, same) {
			t.Errorf("%s: %v, want %v", row.name, row.stories, row.order)
		}
	}
}
