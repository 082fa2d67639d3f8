package story

import (
	"slices"
	"strings"
	"testing"

	"homebuild/internal/problem"
)

func TestLost(t *testing.T) {
	all, err := LoadPlaces()
	if err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct {
		name string
		told func(id string) bool
		want []Loss // among others
		none []problem.Kind
	}{
		{"all events", func(string) bool { return true }, nil, problem.Kinds()},
		{"none", func(string) bool { return false }, []Loss{{problem.AddToResult, 0}, {problem.DifferenceMore, 0}}, nil},
		{"the ferry alone, up to 80", func(id string) bool { return id == "event.harbour.board" },
			[]Loss{{problem.AddToResult, 100}, {problem.DifferenceMore, 0}}, nil},
		{"three places, of an evening", func(id string) bool {
			return slices.ContainsFunc([]string{"harbour", "library", "bakery"}, func(p string) bool { return strings.HasPrefix(id, "event."+p+".") })
		}, nil, []problem.Kind{problem.AddToResult, problem.TakeFromResult}},
	} {
		lost := all.Lost(all.Only(tt.told))
		for _, w := range tt.want {
			if !slices.Contains(lost, w) {
				t.Errorf("%s: lost %v, want %v among them", tt.name, lost, w)
			}
		}
		for _, k := range tt.none {
			if slices.ContainsFunc(lost, func(l Loss) bool { return l.Kind == k && l.Beyond == 0 }) {
				t.Errorf("%s: %v is lost", tt.name, k)
			}
		}
	}
}
