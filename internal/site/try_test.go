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

// Whoever got a number that is not listed is helped: general replies stand below
// stories with numbers beyond 100 and nowhere else.
func TestGeneralRepliesOnlyWhereNumbersAreNotListed(t *testing.T) {
	seen := map[bool]int{}
	lessons, _, _, _ := plan(exampleInput(t, "en"))
	for _, l := range lessons {
		for _, x := range l.stories {
			general := 0
			for _, c := range l.tryStory(x, 0).Choices {
				if c.Other.ID != "" {
					general++
				}
			}
			beyond := largest(x) > 100
			if (general > 0) != beyond {
				t.Errorf("%s %v: %d general choices for numbers up to %d", l.date, x.Problem, general, largest(x))
			}
			seen[beyond]++
		}
	}
	if seen[true] == 0 || seen[false] == 0 {
		t.Fatalf("the example shows only one sort: %v", seen)
	}
}

// The bounds that the hundreds give never cut off the answer.
func TestBounds(t *testing.T) {
	for a := 100; a <= 900; a += 37 {
		for b := 1; a+b <= 1000 && b < a; b += 41 {
			for _, c := range []problem.Calculation{
				{Op: problem.Plus, Numbers: []int{a, b}}, {Op: problem.Minus, Numbers: []int{a, b}},
			} {
				if low, high := bounds(c); c.Value() < low || c.Value() > high {
					t.Errorf("%v is not from %d to %d", c, low, high)
				}
			}
		}
	}
}

func TestPagesToTry(t *testing.T) {
	plain, err := problem.New(problem.AddToResult, 8, 6)
	if err != nil {
		t.Fatal(err)
	}
	apart := func(a, b int) problem.Problem {
		p, err := problem.New(problem.TogetherBoth, a, b)
		if err != nil {
			t.Fatal(err)
		}
		return p
	}
	few, many := apart(4, 6), apart(7, 13)
	tests := []struct {
		name    string
		stories []problem.Problem
		want    []int
	}{
		{"one", []problem.Problem{plain}, []int{1}},
		{"four have room", []problem.Problem{plain, plain, plain, plain}, []int{4}},
		{"five are shared out", []problem.Problem{plain, plain, plain, plain, plain}, []int{2, 5}},
		{"few pairs are as others", []problem.Problem{few, few, few, few}, []int{4}},
		{"many pairs take more room", []problem.Problem{many, plain, plain, plain}, []int{2, 4}},
		{"three of them have room", []problem.Problem{many, many, many}, []int{3}},
		{"eight of them", []problem.Problem{many, many, many, many, many, many, many, many}, []int{2, 5, 8}},
	}
	for _, test := range tests {
		var stories []exercise
		for _, p := range test.stories {
			stories = append(stories, exercise{Activity: activity.Activity{Problem: p}})
		}
		if got := pagesToTry(stories); !slices.Equal(got, test.want) {
			t.Errorf("%s: want pages that end at %v, got %v", test.name, test.want, got)
		}
	}
}

// Of the pairs that make a total none is too big: beyond 100, too, nothing says
// so.
func TestPairsHaveNoGeneralReplies(t *testing.T) {
	p, err := problem.New(problem.TogetherBoth, 120, 117)
	if err != nil {
		t.Fatal(err)
	}
	story := (&lesson{}).tryStory(exercise{Activity: activity.Activity{Problem: p}}, 0)
	for _, c := range story.Choices {
		if c.Other.ID != "" || c.Pair.IsZero() {
			t.Errorf("want a pair, got %+v", c)
		}
	}
	helps := slices.ContainsFunc(story.Replies, func(r page.Reply) bool { return !r.Right })
	if (story.Open != nil) != helps {
		t.Errorf("a picture for replies that help: %t, such replies: %t", story.Open != nil, helps)
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
			if more := strings.Contains(string(raw), fmt.Sprintf("-try-%d.html#story-", at+1)); more != (at < len(row.want)) {
				t.Errorf("%d stories: page %d leads to a next page: %t", row.stories, at, more)
			}
		}
		if at != len(row.want) {
			t.Errorf("%d stories: %d pages, want %d", row.stories, at, len(row.want))
		}
	}
}
