package ownstory

import (
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"homebuild/internal/problem"
)

func lines(o Offer) []string {
	var out []string
	for _, c := range o.Choices {
		out = append(out, c.Line())
	}
	return out
}

// All that two, three or one numbers can tell, in the order of the table.
func TestOffer(t *testing.T) {
	tests := []struct {
		name, text string
		want       []string
	}{
		{"two numbers", "Lina 8, Omar 6?", []string{
			"add-to-result 8 + 6 = ?", "add-to-change 6 + ? = 8", "add-to-start ? + 6 = 8",
			"take-from-result 8 - 6 = ?", "take-from-change 8 - ? = 6", "take-from-start ? - 8 = 6",
			"together-total 8 + 6 = ?", "together-addend 6 + ? = 8",
			"compare-difference-more 6 + ? = 8", "compare-difference-fewer 6 + ? = 8",
			"compare-bigger-more 8 + 6 = ?", "compare-bigger-fewer 8 + 6 = ?",
			"compare-smaller-more 8 - 6 = ?", "compare-smaller-fewer 8 - 6 = ?",
			"bigger-then-together 8 + 8 + 6 = ?",
		}},
		{"three numbers", "4, 6, 5?", []string{
			"together-three 4 + 6 + 5 = ?", "add-then-add 4 + 6 + 5 = ?", "add-then-take 4 + 6 - 5 = ?",
			"take-then-add 6 - 4 + 5 = ?", "together-then-take 4 + 6 - 5 = ?",
		}},
		{"one number", "10?", []string{"together-both 10 = ? + ?"}},
		{"one number that has too many pairs", "300?", nil},
		{"no number", "Lina?", nil},
		{"too many", "1, 2, 3, 4?", nil},
		{"nothing larger than pages show", "In 900 and 800?", []string{
			"add-to-change 800 + ? = 900", "add-to-start ? + 800 = 900",
			"take-from-result 900 - 800 = ?", "take-from-change 900 - ? = 800",
			"together-addend 800 + ? = 900",
			"compare-difference-more 800 + ? = 900", "compare-difference-fewer 800 + ? = 900",
			"compare-smaller-more 900 - 800 = ?", "compare-smaller-fewer 900 - 800 = ?",
		}},
	}
	for _, test := range tests {
		text := read(t, NewLanguage("en", nil), test.text)
		if diff := cmp.Diff(test.want, lines(text.Offer())); diff != "" {
			t.Errorf("%s (-want +got):\n%s", test.name, diff)
		}
	}
}

// The same amount twice is no difference to ask for.
func TestOfferOfTwoAlike(t *testing.T) {
	for _, c := range read(t, NewLanguage("en", nil), "8 and 8").Offer().Choices {
		if k := c.Problem.Kind(); k == problem.DifferenceMore || k == problem.DifferenceFewer {
			t.Errorf("want no %s", c.Line())
		}
	}
}

// Which numbers count, and which are left out.
func TestCounted(t *testing.T) {
	tests := []struct {
		name, text       string
		counted, leftOut []int
	}{
		{"digits", "Lina has 8 shells and finds 6.", []int{8, 6}, nil},
		{"marks", "[8 shells], 7 hats, [six more] and nine", []int{8, 6}, []int{7, 9}},
		{"digits before words", "Three children have 8 shells and 6 hats.", []int{8, 6}, []int{3}},
		{"words alone", "She has eight and finds six.", []int{8, 6}, nil},
		{"words help out", "She has 13 and gives four away.", []int{13, 4}, nil},
		{"a word for one is perhaps no number", "One day she has ten kites.", []int{10}, nil},
		{"a marked word for one", "She has [one kite] and finds [six].", []int{1, 6}, nil},
		{"one in digits", "She has 1 kite and finds 6.", []int{1, 6}, nil},
		{"words that are said to be a number", "[a dozen = 12] eggs, 5 break", []int{12, 5}, nil},
		{"years", "In 2026 she has 8 and finds 6.", []int{8, 6}, []int{2026}},
		{"nothing", "Lina flies a kite.", nil, nil},
	}
	for _, test := range tests {
		text := read(t, NewLanguage("en", wordsOf(t, "en")), test.text)
		counted, leftOut := text.counted()
		got := [][]int{text.values(counted), text.values(leftOut)}
		want := [][]int{append([]int{}, test.counted...), append([]int{}, test.leftOut...)}
		if diff := cmp.Diff(want, got); diff != "" {
			t.Errorf("%s (-want +got):\n%s", test.name, diff)
		}
	}
}

// Every kind can be offered, is said in words that tell it from the others that
// the same numbers offer, and can be chosen by its line; its numbers stand where
// the choice says.
func TestEveryKindIsOffered(t *testing.T) {
	met := map[problem.Kind]bool{}
	for _, story := range []string{"10", "13 and 4", "4 and 13", "13, 6 and 4"} {
		text := read(t, NewLanguage("en", nil), story)
		said := map[string]string{}
		for _, c := range text.Offer().Choices {
			met[c.Problem.Kind()] = true
			words := c.Happens() + ": " + c.Asked()
			if other := said[words]; other != "" || c.Happens() == "" || !strings.HasSuffix(c.Asked(), "?") {
				t.Errorf("%s: %q is also said of %q", c.Line(), words, other)
			}
			said[words] = c.Line()
			chosen, err := text.Choose(c.Line())
			if err != nil || chosen.Problem.Kind() != c.Problem.Kind() || chosen.Problem.Answer() != c.Problem.Answer() {
				t.Errorf("%s: chosen is %s: %v", c.Line(), chosen.Line(), err)
			}
			for i, q := range c.Problem.Given() {
				if text.Numerals[c.Places[i]].Value != q.Value || text.Numerals[chosen.Places[i]].Value != q.Value {
					t.Errorf("%s: the %s is not where the choice says", c.Line(), q.Role)
				}
			}
		}
	}
	for _, k := range problem.Kinds() {
		if !met[k] {
			t.Errorf("no numbers offer %v", k)
		}
	}
}

// The guide has each kind with an equation, a story and what the program says of
// it; the story's numbers offer that line, and it can be chosen.
func TestGuide(t *testing.T) {
	data, err := os.ReadFile("../../docs/own-stories.md")
	if err != nil {
		t.Fatal(err)
	}
	lang := NewLanguage("en", wordsOf(t, "en"))
	seen := map[problem.Kind]bool{}
	for row := range strings.SplitSeq(string(data), "\n") {
		cells := strings.Split(row, "|")
		if len(cells) != 6 || !strings.Contains(cells[2], "=") {
			continue
		}
		line := strings.Trim(strings.TrimSpace(cells[1]), "`") + " " + strings.TrimSpace(cells[2])
		text := read(t, lang, strings.TrimSpace(cells[4]))
		offer := text.Offer()
		at := slices.Index(lines(offer), line)
		if at < 0 {
			t.Errorf("%s: want %s among\n%s", text.Plain, line, strings.Join(lines(offer), "\n"))
			continue
		}
		c := offer.Choices[at]
		if want := c.Happens() + "; " + c.Asked(); strings.TrimSpace(cells[3]) != want {
			t.Errorf("%s: want %q in the guide, got %q", line, want, strings.TrimSpace(cells[3]))
		}
		if _, err := text.Choose(line); err != nil {
			t.Errorf("%s: %v", line, err)
		}
		seen[c.Problem.Kind()] = true
	}
	for _, k := range problem.Kinds() {
		if !seen[k] {
			t.Errorf("the guide has no line for %s", k)
		}
	}
}
