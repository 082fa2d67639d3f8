package mistake

import (
	"strings"
	"testing"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// A message has the same places wherever it is said, and Lines has them all:
// compared over every problem within 20 and a spread beyond.
func TestLinesAreComplete(t *testing.T) {
	listed := map[string]phrase.Line{}
	for _, line := range append(Lines(), strategy.Lines()...) {
		listed[line.ID] = line
	}
	for _, c := range Causes() {
		if _, ok := listed[c.Name().ID]; !ok {
			t.Errorf("Lines lacks %s", c.Name().ID)
		}
	}
	said := map[string]bool{}
	check := func(q Question) {
		help := q.Help(problem.RangeOf(q.largest()), 3)
		for _, r := range help.All() {
			for _, line := range r.Lines {
				said[line.ID] = true
				comparePlaces(t, line, listed[line.ID])
			}
		}
		for _, m := range q.Mistakes() {
			said[m.Hint.ID] = true
			comparePlaces(t, m.Hint, listed[m.Hint.ID])
		}
	}
	every(1, 20, 3, func(p problem.Problem) {
		check(Question{Problem: p, Extra: 7, Columns: true, Ways: strategy.Ways(p.Calculation(), 3)})
	})
	small, large := mustNew(t, problem.TogetherTotal, 3, 4), mustNew(t, problem.TogetherTotal, 28, 17)
	check(Question{Problem: small, Ways: strategy.Ways(small.Calculation(), 0)})
	check(Question{Problem: large, Ways: strategy.Ways(large.Calculation(), 3)})
	zero := mustNew(t, problem.TakeFromResult, 503, 285) // no ten to open
	check(Question{Problem: zero, Columns: true, Ways: strategy.Ways(zero.Calculation(), 3)})
	for a := 101; a < 1000; a += sparse(37, 148) {
		for b := 21; b < a; b += sparse(41, 123) {
			for _, kind := range []problem.Kind{problem.TogetherTotal, problem.TakeFromResult, problem.BiggerFewer} {
				p := mustNew(t, kind, a, b)
				check(Question{Problem: p, Columns: true, Ways: strategy.Ways(p.Calculation(), 3)})
			}
		}
	}
	for id := range listed {
		if strings.HasPrefix(id, "mistake.") && strings.HasSuffix(id, ".hint") && !said[id] {
			t.Errorf("Lines has %s, which nothing says", id)
		}
	}
}

func comparePlaces(t *testing.T, got, want phrase.Line) {
	t.Helper()
	if want.ID == "" {
		t.Errorf("Lines lacks %s", got.ID)
		return
	}
	same := len(got.Values) == len(want.Values)
	for i := range got.Values {
		same = same && got.Values[i].Name == want.Values[i].Name && got.Values[i].Kind == want.Values[i].Kind
	}
	if !same {
		t.Errorf("%s has places %v here and %v there", got.ID, got.Values, want.Values)
	}
}
