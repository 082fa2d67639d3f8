package site

import (
	"slices"
	"strings"
	"testing"

	"homebuild/internal/problem"
)

// inputHolding is the example's year in English and Spanish, whose head says something
// more.
func inputHolding(t *testing.T, review, hold string) Input {
	t.Helper()
	in := inputWith(t, `review = "draft"`, review+"\nhold = \""+hold+`"`)
	in.Site.Weeks = exampleInput(t, "en").Site.Weeks
	return in
}

// A language that holds events or kinds of stories back has weeks told without them,
// where their target has others, and no page of a week that cannot do without; once a
// fluent reader has signed it, it holds nothing back.
func TestHeldBackStories(t *testing.T) {
	const draft, signed = `review = "draft"`, `reviewed = "M. G., 2026-10-01"`
	compares := func(e exercise) bool {
		return slices.ContainsFunc(e.Problem.Steps(), func(p problem.Problem) bool { return p.Kind().Situation() == problem.Compare })
	}
	never := []string{"compare-within-20", "who-has-more-within-100", "compare-then-join-within-100"} // without a comparison
	tests := []struct {
		name, review, hold string
		held               func(e exercise) bool
		without            []string // targets of the weeks that Spanish has no page of
		told               bool     // whether other weeks tell what is held
	}{
		{"an event", draft, "harbour.board, harbour.crane", func(e exercise) bool { return e.Story.Event == "harbour.board" || e.Story.Event == "harbour.crane" }, nil, false},
		{"kinds", draft, "compare", compares, never, false},
		{"kinds, signed", signed, "compare", compares, nil, true},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			t.Parallel()
			p, _, problems := Plan(inputHolding(t, test.review, test.hold))
			if len(problems) > 0 {
				t.Fatal(problems)
			}
			unmade, told := p.unmade(), 0
			for _, l := range p.lessons {
				without := slices.Contains(test.without, l.target.ID)
				if unmade[learnPath("es", l.date)] != without || unmade[tryPath("es", l.date)] != without || unmade[learnPath("en", l.date)] {
					t.Errorf("%s, %s: Spanish has no page: %v", l.date, l.target.ID, unmade[learnPath("es", l.date)])
				}
				if !without && slices.ContainsFunc(slices.Concat(l.exercises(), l.ladder), test.held) {
					told++
				}
			}
			if told > 0 != test.told {
				t.Errorf("%d weeks tell what is held back", told)
			}
			notes := p.Withheld().Error()
			if strings.Contains(notes, "holds stories back until a fluent reader has signed it") != (len(test.without) > 0) {
				t.Errorf("the teacher is told: %s", notes)
			}
		})
	}
}
