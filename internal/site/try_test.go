package site

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"homebuild/internal/activity"
	"homebuild/internal/page"
	"homebuild/internal/problem"
)

// Every number that can be picked gets the reply that mistake gives to it.
func TestAnswersAreThoseOfMistake(t *testing.T) {
	lessons, _, _, _ := plan(exampleInput(t, "en"))
	seen := map[int]int{}
	for _, l := range lessons {
		for i, x := range l.stories {
			a := l.answers(x, l.turn(i))
			if a.Whole > 0 {
				continue
			}
			seen[a.Most]++
			help := l.question(x).Help(2*a.Largest(), l.turn(i))
			for n := range a.Largest() + 1 {
				want, _ := help.To(n)
				if got := replyTo(a, n); fmt.Sprint(got.Lines) != fmt.Sprint(want.Lines) {
					t.Fatalf("%s %v: to %d the page says %v, want %v", l.date, x.Problem, n, got.Lines, want.Lines)
				}
			}
		}
	}
	for _, r := range []int{10, 20, 100, problem.Largest} {
		if seen[r] == 0 {
			t.Errorf("the example has no story to %d: %v", r, seen)
		}
	}
}

// replyTo is the reply to a number, by what the fields of a page say.
func replyTo(a page.Answers, n int) page.Reply {
	to := page.ToRight
	switch {
	case n < a.Right:
		to = page.ToSmaller
	case n > a.Right:
		to = page.ToBigger
	}
	var general page.Reply
	for _, r := range a.Replies {
		if slices.Contains(r.Numbers, n) {
			return r
		}
		if r.To == to {
			general = r
		}
	}
	return general
}

// A whole is taken apart into two parts; where they are too big for tiles, one of
// them is asked for, and any up to the whole is right.
func TestPartsOfAWhole(t *testing.T) {
	apart := func(a, b int) page.Answers {
		p, err := problem.New(problem.TogetherBoth, a, b)
		if err != nil {
			t.Fatal(err)
		}
		return (&lesson{}).answers(exercise{Activity: activity.Activity{Problem: p}}, 0)
	}
	if a := apart(3, 4); a.Whole != 7 || a.Most != 10 {
		t.Errorf("parts of 7: %+v", a)
	}
	if a := apart(7, 13); a.Whole != 20 || a.Most != 20 {
		t.Errorf("parts of 20: %+v", a)
	}
	a := apart(120, 117)
	for n, right := range map[int]bool{0: true, 1: true, 99: true, 237: true, 238: false, 999: false} {
		if got := replyTo(a, n).Lines[0].ID == "try.part.right"; got != right {
			t.Errorf("a part of 237: %d is right: %t", n, got)
		}
	}
}

func TestPagesToTry(t *testing.T) {
	week := func(n, first int) (stories []exercise) {
		p, err := problem.New(problem.TogetherTotal, first, 5)
		if err != nil {
			t.Fatal(err)
		}
		for range n {
			stories = append(stories, exercise{Activity: activity.Activity{Problem: p}})
		}
		return stories
	}
	for _, row := range []struct {
		stories, first int
		want           []int
	}{{1, 9, []int{1}}, {4, 9, []int{4}}, {5, 9, []int{2, 5}}, {8, 9, []int{4, 8}}, {9, 9, []int{3, 6, 9}}, {4, 30, []int{2, 4}}, {3, 300, []int{3}}, {4, 300, []int{2, 4}}} {
		if got := pagesToTry(week(row.stories, row.first)); !slices.Equal(got, row.want) {
			t.Errorf("%d stories with %d: want pages that end at %v, got %v", row.stories, row.first, row.want, got)
		}
	}
}

// A long week has its stories on more than one page, the pages of nearly the
// same length, and each leads to the next.
func TestTryPages(t *testing.T) {
	for _, row := range []struct {
		stories int
		want    []int // stories on each page
	}{{1, []int{1}}, {4, []int{4}}, {5, []int{2, 3}}, {8, []int{4, 4}}} {
		in := exampleInput(t, "en")
		in.Site.Weeks = in.Site.Weeks[:1]
		in.Site.Weeks[0].Stories = row.stories
		files, _, problems := Assemble(in)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		at := 0
		for _, f := range files {
			if f.Path != tryPagePath("en", "2026-09-14", at) {
				continue
			}
			raw, err := f.Render()
			if err != nil || at == len(row.want) {
				t.Fatalf("%d stories: a page %d of stories, error %v", row.stories, at+1, err)
			}
			if got := strings.Count(string(raw), `class="story"`); got != row.want[at] {
				t.Errorf("%d stories: page %d has %d, want %d", row.stories, at+1, got, row.want[at])
			}
			at++
			if more := strings.Contains(string(raw), fmt.Sprintf("-try-%d.html\"", at+1)); more != (at < len(row.want)) {
				t.Errorf("%d stories: page %d leads to a next page: %t", row.stories, at, more)
			}
		}
		if at != len(row.want) {
			t.Errorf("%d stories: %d pages, want %d", row.stories, at, len(row.want))
		}
	}
}
