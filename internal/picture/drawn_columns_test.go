package picture_test

import (
	"strings"
	"testing"

	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// A calculation worked out in columns is said with what each place comes to, and what is
// traded for it, each a true equation (the reference's worked example of trading a ten:
// 65 = 50 + 15); an arrow shows each trade, and none stands where nothing is traded.
func TestColumnsSayWhatIsTraded(t *testing.T) {
	for _, test := range []struct {
		op      problem.Op
		numbers []int
		said    string
		places  int // columns that are ruled off
		arrows  int
	}{
		{problem.Plus, []int{52, 36}, "First=52 = 50 + 2 Second=36 = 30 + 6 Result=80 + 8 = 88", 2, 0},
		{problem.Plus, []int{56, 37}, "First=56 = 50 + 6 Second=37 = 30 + 7 Result=80 + 13 = 90 + 3 = 93", 2, 1},
		{problem.Plus, []int{50, 49}, "First=50 = 50 Second=49 = 40 + 9 Result=90 + 9 = 99", 2, 0},
		{problem.Plus, []int{60, 40}, "First=60 = 60 Second=40 = 40 Result=100 = 100", 3, 1},
		{problem.Plus, []int{374, 397}, "First=374 = 300 + 70 + 4 Second=397 = 300 + 90 + 7 Result=600 + 160 + 11 = 700 + 70 + 1 = 771", 3, 2},
		{problem.Plus, []int{12, 13, 14}, "First=12 = 10 + 2 Second=13 = 10 + 3 Third=14 = 10 + 4 Result=30 + 9 = 39", 2, 0},
		{problem.Minus, []int{68, 23}, "First=68 = 60 + 8 Second=23 = 20 + 3 Result=40 + 5 = 45", 2, 0},
		{problem.Minus, []int{65, 49}, "First=65 = 60 + 5 = 50 + 15 Second=49 = 40 + 9 Result=10 + 6 = 16", 2, 1},
		{problem.Minus, []int{305, 178}, "First=305 = 300 + 5 = 200 + 90 + 15 Second=178 = 100 + 70 + 8 Result=100 + 20 + 7 = 127", 3, 2},
	} {
		pic := picture.Expanded(problem.Calculation{Op: test.op, Numbers: test.numbers})
		if got := say(pic.Describe()); !strings.HasSuffix(strings.ReplaceAll(got, "\u2212", "-"), test.said) {
			t.Errorf("%v: want it said as\n%s\ngot\n%s", test.numbers, test.said, got)
		}
		drawing := drawn(pic)
		if got := len(shapes(t, drawing, "thin")); got != test.places {
			t.Errorf("%v: want %d columns, got %d", test.numbers, test.places, got)
		}
		arrows := shapes(t, drawing, "move")
		if len(arrows) != 2*test.arrows {
			t.Errorf("%v: want %d arrows, a line and a head each, got %v", test.numbers, test.arrows, arrows)
		}
	}
}

// A bond of a difference has the taken part and what is left below the whole.
func TestBondOfACalculation(t *testing.T) {
	for _, test := range []struct {
		op      problem.Op
		numbers []int
		want    string
	}{
		{problem.Plus, []int{8, 6}, "14 8 6"},
		{problem.Plus, []int{8, 4, 2}, "14 8 4 2"},
		{problem.Minus, []int{14, 8}, "14 8 6"},
	} {
		var shown []string
		for _, e := range parse(t, drawn(picture.Bond(problem.Calculation{Op: test.op, Numbers: test.numbers}))) {
			if e.name == "text" {
				shown = append(shown, e.text)
			}
		}
		if got := strings.Join(shown, " "); got != test.want {
			t.Errorf("%v: want %q, got %q", test.numbers, test.want, got)
		}
	}
}
