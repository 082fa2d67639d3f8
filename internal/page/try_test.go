package page

import (
	"fmt"
	"strings"
	"testing"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// numbered are choices of plain numbers.
func numbered(numbers ...int) []Choice {
	var out []Choice
	for _, n := range numbers {
		out = append(out, Choice{Number: n})
	}
	return out
}

func upTo(top int) []int {
	var out []int
	for n := range top + 1 {
		out = append(out, n)
	}
	return out
}

func TestGrids(t *testing.T) {
	words := []Choice{{Other: phrase.Say("try.below", phrase.Number("Number", 600))}}
	pairs := []Choice{{Pair: problem.Alone(problem.Sum(0, 1))}, {Pair: problem.Alone(problem.Sum(1, 0)), Number: 1}}
	tests := []struct {
		name    string
		choices []Choice
		want    string
		why     string
	}{
		{"to 20", numbered(append(upTo(20), 74)...), "nums:22", "large targets in one grid"},
		{"to 20, one far off", numbered(append(upTo(20), 912)...), "nums:21 nums single:1", "three digits need room"},
		{"to 100", numbered(append(upTo(100), 210, 1515)...), "nums chart:100 nums single:3", "ten in a row, as on a number chart"},
		{"to 1000", append(numbered(22, 163, 706, 6106), words...), "nums single:4 nums words:1", "few numbers, far apart"},
		{"pairs", pairs, "nums pairs:2", ""},
	}
	for _, tt := range tests {
		var got []string
		for _, g := range (&TryStory{Choices: tt.choices}).grids() {
			got = append(got, fmt.Sprintf("%s:%d", g.class, len(g.choices)))
		}
		if got := strings.Join(got, " "); got != tt.want {
			t.Errorf("%s: want %q, got %q (%s)", tt.name, tt.want, got, tt.why)
		}
	}
}

// TestForClass: a reply that many numbers share names them small.
func TestForClass(t *testing.T) {
	for n, want := range map[int]string{1: "for", manyAnswers: "for", manyAnswers + 1: "for long"} {
		if got := (&TryStory{Choices: numbered(upTo(n - 1)...)}).forClass(0); got != want {
			t.Errorf("a reply to %d numbers has the class %q, want %q", n, got, want)
		}
	}
}
