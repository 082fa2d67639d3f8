package ownstory

import (
	"errors"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

func lines(o Offer) []string {
	var out []string
	for _, c := range o.Choices {
		out = append(out, c.Line())
	}
	return out
}

// All that two, three or one numbers can tell, in the order of the table; last what has
// them the other way round.
func TestOffer(t *testing.T) {
	tests := []struct {
		name, text string
		want       []string
	}{
		{"two numbers", "Lina 8, Omar 6?", []string{
			"add-to-result 8 + 6 = ?",
			"take-from-result 8 - 6 = ?", "take-from-change 8 - ? = 6", "take-from-start ? - 8 = 6",
			"together-total 8 + 6 = ?", "together-addend 6 + ? = 8",
			"compare-difference-more 6 + ? = 8", "compare-difference-fewer 6 + ? = 8",
			"compare-bigger-more 8 + 6 = ?", "compare-bigger-fewer 8 + 6 = ?",
			"compare-smaller-more 8 - 6 = ?", "compare-smaller-fewer 8 - 6 = ?",
			"bigger-then-together 8 + 8 + 6 = ?",
			"add-to-change 6 + ? = 8", "add-to-start ? + 6 = 8",
		}},
		{"three numbers", "4, 6, 5?", []string{
			"together-three 4 + 6 + 5 = ?", "add-then-add 4 + 6 + 5 = ?", "add-then-take 4 + 6 - 5 = ?",
			"together-then-take 4 + 6 - 5 = ?", "take-then-add 6 - 4 + 5 = ?",
		}},
		{"one number", "10?", []string{"together-both 10 = ? + ?"}},
		{"a two that counts the parts", "8 tulips in two vases?", []string{
			"add-to-result 8 + 2 = ?", "take-from-result 8 - 2 = ?", "take-from-change 8 - ? = 2", "take-from-start ? - 8 = 2",
			"together-total 8 + 2 = ?", "together-addend 2 + ? = 8", "together-both 8 = ? + ?",
			"compare-difference-more 2 + ? = 8", "compare-difference-fewer 2 + ? = 8",
			"compare-bigger-more 8 + 2 = ?", "compare-bigger-fewer 8 + 2 = ?",
			"compare-smaller-more 8 - 2 = ?", "compare-smaller-fewer 8 - 2 = ?",
			"bigger-then-together 8 + 8 + 2 = ?", "add-to-change 2 + ? = 8", "add-to-start ? + 2 = 8",
		}},
		{"one number that has too many pairs", "300?", nil},
		{"no number", "Lina?", nil},
		{"four numbers", "1, 2, 3, 4?", []string{"together-four 1 + 2 + 3 + 4 = ?"}},
		{"too many", "1, 2, 3, 4, 5?", nil},
		{"nothing larger than pages show", "In 900 and 800?", []string{
			"take-from-result 900 - 800 = ?", "take-from-change 900 - ? = 800",
			"together-addend 800 + ? = 900",
			"compare-difference-more 800 + ? = 900", "compare-difference-fewer 800 + ? = 900",
			"compare-smaller-more 900 - 800 = ?", "compare-smaller-fewer 900 - 800 = ?",
			"add-to-change 800 + ? = 900", "add-to-start ? + 800 = 900",
		}},
	}
	for _, test := range tests {
		text := read(t, NewLanguage("en", wordsOf(t, "en")), test.text)
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
		{"words that are said to be a number, among marked ones", "[a dozen = 12] eggs, [5] break, 3 roll away", []int{12, 5}, []int{3}},
		{"a name, as its capital says", "There are 22 children in Room 4 today. 3 are absent.", []int{22, 3}, []int{4}},
		{"a name at the beginning, too", "Room 12 has 22 children. They are more than in Room 14 by 3.", []int{22, 3}, []int{12, 14}},
		{"a name in Russian", "Автобус везёт 22 человека в Дом 4. Выходят 3.", []int{22, 3}, []int{4}},
		{"a name, as its mark says", "[Room 4 =] has 22 children. 3 are absent.", []int{22, 3}, []int{4}},
		{"people at the beginning of a sentence", "Lina has 8 shells. Omar 6.", []int{8, 6}, nil},
		{"what stands behind a name, where fewer than two are left", "We see Lina 8 times and Omar 6 times.", []int{8, 6}, nil},
		{"years", "In 2026 she has 8 and finds 6.", []int{8, 6}, []int{2026}},
		{"nothing", "Lina flies a kite.", nil, nil},
	}
	for _, test := range tests {
		text := read(t, NewLanguage("en", wordsOf(t, "en")), test.text)
		counted := text.Counted()
		got := [][]int{text.values(counted), text.values(text.leftOut(counted))}
		want := [][]int{append([]int{}, test.counted...), append([]int{}, test.leftOut...)}
		if diff := cmp.Diff(want, got); diff != "" {
			t.Errorf("%s (-want +got):\n%s", test.name, diff)
		}
	}
}

// Every kind can be offered, is said in words that tell it from the others of the
// same happening, has a picture, and can be chosen by its line, its number and its
// kind; its numbers stand where the choice says. Nobody looks through more than a
// few at once.
func TestEveryKindIsOffered(t *testing.T) {
	met := map[problem.Kind]bool{}
	for _, story := range []string{"10", "13 and 4", "4 and 13", "13, 6 and 4", "4, 6 and 13", "4, 6, 13 and 9", "500 and 250"} {
		text := read(t, NewLanguage("en", nil), story)
		offer := text.Offer()
		listed := 0
		for _, h := range offer.Happenings() {
			shown := offer.Of(h).Choices
			listed += len(shown)
			if len(shown) > MostShown {
				t.Errorf("%s: %d choices are shown of %s, want at most %d", story, len(shown), h, MostShown)
			}
			said := map[string]string{}
			for _, c := range shown {
				met[c.Problem.Kind()] = true
				if other := said[c.Asks()]; other != "" || !strings.HasSuffix(c.Asks(), "?") {
					t.Errorf("%s: %q is also said of %q", c.Line(), c.Asks(), other)
				}
				said[c.Asks()] = c.Line()
				if _, err := picture.OfProblem(c.Problem, picture.BarModel, picture.Open); err != nil {
					t.Errorf("%s: no picture: %v", c.Line(), err)
				}
				for _, wish := range []Wish{{Kind: c.Line()}, {Number: c.Number()}, {Kind: c.ID()}, {Happens: h.String(), Kind: c.ID(), Equation: c.Equation().String()}} {
					chosen, err := text.Choose(wish)
					if err != nil || chosen.Line() != c.Line() || !slices.Equal(chosen.Places, c.Places) {
						t.Errorf("%+v: chosen is %s: %v", wish, chosen.Line(), err)
					}
				}
				for _, c := range append(c.Turned, c) {
					for i, q := range c.Problem.Given() {
						if text.Numerals[c.Places[i]].Value != q.Value {
							t.Errorf("%s: the %s is not where the choice says", c.Line(), q.Role)
						}
					}
				}
			}
		}
		if listed != len(offer.Choices) {
			t.Errorf("%s: %d choices, and %d of what happens", story, len(offer.Choices), listed)
		}
	}
	for _, k := range problem.Kinds() {
		if !met[k] {
			t.Errorf("no numbers offer %v", k)
		}
	}
}

// Where a story has its numbers the other way round, that is offered, too.
func TestTurned(t *testing.T) {
	tests := []struct {
		text, kind string
		want       []string
	}{
		{"5 more than Omar, who has 9", "compare-bigger-more", []string{"compare-bigger-more 9 + 5 = ?"}},
		{"13, 4", "take-from-start", []string{"take-from-start ? - 4 = 13"}},
		{"13, 4", "take-from-result", nil},
		{"13, 4", "together-total", nil},
		{"loses 4, had 8, found 6", "add-then-take", []string{
			"add-then-take 4 + 6 - 8 = ?", "add-then-take 8 + 4 - 6 = ?", "add-then-take 8 + 6 - 4 = ?", "add-then-take 6 + 4 - 8 = ?", "add-then-take 6 + 8 - 4 = ?",
		}},
	}
	for _, test := range tests {
		for _, c := range read(t, NewLanguage("en", nil), test.text).Offer().Choices {
			if c.ID() != test.kind {
				continue
			}
			var got []string
			for _, other := range c.Turned {
				got = append(got, other.Line())
			}
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Errorf("%s: %s (-want +got):\n%s", test.text, c.Line(), diff)
			}
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
		if len(cells) != 7 || !strings.Contains(cells[3], "=") {
			continue
		}
		line := strings.Trim(strings.TrimSpace(cells[2]), "`") + " " + strings.TrimSpace(cells[3])
		text := read(t, lang, strings.TrimSpace(cells[5]))
		offer := text.Offer()
		at := slices.Index(lines(offer), line)
		if at < 0 {
			t.Errorf("%s: want %s among\n%s", text.Plain, line, strings.Join(lines(offer), "\n"))
			continue
		}
		c := offer.Choices[at]
		if want := c.Happens().Label() + " " + c.Asks(); strings.TrimSpace(cells[4]) != want {
			t.Errorf("%s: want %q in the guide, got %q", line, want, strings.TrimSpace(cells[4]))
		}
		if number := strconv.Itoa(c.Number()); strings.TrimSpace(cells[1]) != number {
			t.Errorf("%s: want the number %s in the guide: week files have it", line, number)
		}
		if _, err := text.Choose(Wish{Kind: line}); err != nil {
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

// What the guide shows of the questions is what the program asks about the story that
// stands above them; a line that ends in "..." goes on.
func TestGuideShowsTheQuestions(t *testing.T) {
	data, err := os.ReadFile("../../docs/own-stories.md")
	if err != nil {
		t.Fatal(err)
	}
	const story = "Lina has 8 shells. She finds 6 more. How many shells does she have now?"
	if !strings.Contains(string(data), "[[own-story]]\ntext = \""+story+"\"\n") {
		t.Fatalf("the guide does not begin with %q", story)
	}
	text := read(t, NewLanguage("en", wordsOf(t, "en")), story)
	blocks := strings.Split(string(data), "```\nyour own story waits")[1:]
	wishes := []Wish{{}, {Happens: "joins"}}
	if len(blocks) != len(wishes) {
		t.Fatalf("%d questions in the guide, want %d", len(blocks), len(wishes))
	}
	for i, wish := range wishes {
		block, _, _ := strings.Cut("your own story waits"+blocks[i], "\n```")
		_, err := text.Choose(wish)
		var asked *Error
		if !errors.As(err, &asked) {
			t.Fatalf("%+v: want a question, got %v", wish, err)
		}
		got := strings.Split(asked.Text+"\n  hint: "+asked.Hint, "\n")
		for n, line := range strings.Split(block, "\n") {
			if begin, more := strings.CutSuffix(line, "..."); more && n < len(got) && strings.HasPrefix(got[n], begin) {
				got[n] = line
			}
		}
		if diff := cmp.Diff(strings.Split(block, "\n"), got); diff != "" {
			t.Errorf("%+v (-guide +program):\n%s", wish, diff)
		}
	}
}
