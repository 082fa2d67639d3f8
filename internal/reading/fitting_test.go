package reading

import (
	"strings"
	"testing"

	"homebuild/internal/problem"
)

func TestFitting(t *testing.T) {
	tests := []struct {
		name, text string
		want       []string // some of the lines; none where nothing fits
		without    []string
	}{
		{"two numbers", "Lina 8, Omar 6?", []string{"add-to-result 8 + 6 = ?", "take-from-result 8 - 6 = ?", "add-to-change 6 + ? = 8", "together-total 8 + 6 = ?"}, []string{"together-three", "together-both"}},
		{"the order told first", "6, 8?", []string{"add-to-result 6 + 8 = ?", "add-to-change 6 + ? = 8"}, []string{"take-from-result 6"}},
		{"three numbers", "4, 6, 5?", []string{"together-three 4 + 6 + 5 = ?", "add-then-take 4 + 6 - 5 = ?"}, []string{"add-to-result "}},
		{"one number", "10?", []string{"together-both 10 = ? + ?"}, []string{"add-to-result"}},
		{"marks say what counts", "[8 x] 7 [6 y]?", []string{"add-to-result 8 + 6 = ?"}, []string{"7"}},
		{"no number", "Lina?", nil, nil},
		{"too many", "1, 2, 3, 4?", nil, nil},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			text, err := Mark(test.text, nil)
			if err != nil {
				t.Fatal(err)
			}
			var lines []string
			for _, p := range Fitting(text.Counting()) {
				lines = append(lines, Line(p))
				if back, err := ParseLine(Line(p)); err != nil || back.Answer() != p.Answer() {
					t.Errorf("%q is not read again: %v", Line(p), err)
				}
			}
			all := strings.Join(lines, "\n")
			for _, want := range test.want {
				if !strings.Contains(all, want) {
					t.Errorf("want %q in\n%s", want, all)
				}
			}
			for _, not := range test.without {
				if strings.Contains(all, not) {
					t.Errorf("want no %q in\n%s", not, all)
				}
			}
			if (test.want == nil) != (lines == nil) {
				t.Errorf("want %d lines, got\n%s", len(test.want), all)
			}
		})
	}
}

// Every kind can be chosen for some numbers.
func TestFittingKnowsEveryKind(t *testing.T) {
	met := map[problem.Kind]bool{}
	for _, numbers := range [][]int{{10}, {13, 4}, {13, 6, 4}} {
		for _, p := range Fitting(numbers) {
			met[p.Kind()] = true
		}
	}
	for _, k := range problem.Kinds() {
		if !met[k] {
			t.Errorf("no numbers offer %v", k)
		}
	}
}
