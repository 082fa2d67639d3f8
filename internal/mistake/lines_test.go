package mistake

import (
	"testing"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// A message has the same places wherever it is said, and Lines has them all:
// compared over every problem within 30 and a spread beyond.
func TestLinesAreComplete(t *testing.T) {
	listed := map[string]phrase.Line{}
	for _, line := range Lines() {
		listed[line.ID] = line
	}
	for _, c := range Causes() {
		for _, id := range []string{"mistake." + c.String() + ".hint", "mistake." + c.String() + ".name"} {
			if _, ok := listed[id]; !ok {
				t.Errorf("Lines lacks %s", id)
			}
		}
	}
	check := func(p problem.Problem, extra int) {
		r := newReplies(p, extra)
		for n := range 60 {
			for _, line := range r.to(n).Lines {
				comparePlaces(t, line, listed[line.ID])
			}
		}
		for _, m := range r.mistakes {
			comparePlaces(t, m.Hint(), listed[m.Hint().ID])
		}
		small, big := General(p)
		for _, line := range append(small.Lines, big.Lines...) {
			comparePlaces(t, line, listed[line.ID])
		}
	}
	every(1, 30, 3, func(p problem.Problem) { check(p, 7) })
	for a := 101; a < 1000; a += 37 {
		for b := 21; b < a; b += 41 {
			for _, kind := range []problem.Kind{problem.TogetherTotal, problem.TakeFromResult, problem.BiggerFewer} {
				check(mustNew(t, kind, a, b), 0)
			}
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
