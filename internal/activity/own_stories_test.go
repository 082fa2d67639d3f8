package activity

import (
	"slices"
	"testing"

	"homebuild/internal/problem"
)

// The teacher's own problems come first, count as met, and reshuffle nothing
// but what they themselves have taken.
func TestOwnStoriesComeFirst(t *testing.T) {
	targets, err := Targets()
	if err != nil {
		t.Fatal(err)
	}
	p, err := problem.New(problem.AddToResult, 8, 6)
	if err != nil {
		t.Fatal(err)
	}
	request := func(given ...Given) Request {
		return Request{Week: "2026-09-14", Key: "k", Target: targets[len(targets)/2], Stories: 4, Extra: true, Given: given}
	}
	plain := Year([]Request{request()})[0]
	for n, want := range map[int]int{1: 4, 4: 4, 6: 6} {
		given := make([]Given, n)
		for i := range given {
			given[i] = Given{Problem: p, ExtraNumber: 3}
		}
		got := Year([]Request{request(given...)})[0]
		if len(got.Stories) != want {
			t.Fatalf("%d own stories: want %d stories in all, got %d", n, want, len(got.Stories))
		}
		for i, a := range got.Stories {
			if a.Given != (i < n) {
				t.Errorf("%d own stories: story %d is own: %t", n, i, a.Given)
			}
		}
		if first := got.Stories[0]; first.ExtraNumber != 3 || len(first.Ways()) == 0 {
			t.Errorf("own story is not worked out: %+v", first)
		}
		if got.Worked.Problem.Kind() != plain.Worked.Problem.Kind() {
			t.Errorf("%d own stories: the worked story is a %v, without them a %v", n, got.Worked.Problem.Kind(), plain.Worked.Problem.Kind())
		}
	}
	full := Year([]Request{request(slices.Repeat([]Given{{Problem: p}}, 6)...)})[0]
	for _, w := range full.Warnings {
		if w.Setting == "extra-sentence" {
			t.Errorf("a week of own stories alone is told that %s", w.Text)
		}
	}
	if c := Cover(Year([]Request{request(Given{Problem: p})}), 1); c.Facts[7][5] == 0 {
		t.Error("8 + 6 of an own story does not count as met")
	}
}
