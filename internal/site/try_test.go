package site

import (
	"testing"

	"homebuild/internal/problem"
)

// Whoever got a number that is not listed is helped: general replies stand below
// stories with numbers beyond 100 and nowhere else.
func TestGeneralRepliesOnlyWhereNumbersAreNotListed(t *testing.T) {
	seen := map[bool]int{}
	lessons, _, _ := plan(exampleInput(t, "en"))
	for _, l := range lessons {
		for _, x := range l.stories {
			general := 0
			for _, c := range l.tryStory(x).Choices {
				if c.Other.ID != "" {
					general++
				}
			}
			beyond := largest(x) > 100
			if (general > 0) != beyond {
				t.Errorf("%s %v: %d general choices for numbers up to %d", l.week.Date, x.Problem, general, largest(x))
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
