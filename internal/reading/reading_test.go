package reading

import (
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"homebuild/internal/problem"
)

// Marks lead the reader where it was wrong or not sure.
func TestMarksLead(t *testing.T) {
	tests := []struct{ text, want, why string }{
		{"Lina has [8 shells] and 3 hats. She finds [6 more]. How many does she have now?", "add-to-result 8 + 6 = ?", "only marked numbers count"},
		{"Lina has 8 shells. She finds [?] some more shells. Now she has 14 shells.", "add-to-change 8 + ? = 14", "the mark says what is asked, without a question"},
		{"Lina had [?] shells. She gave 4 shells to Omar. Now she has 9 shells.", "take-from-start ? - 4 = 9", "the mark stands where the number would"},
		{"Lina has [a dozen = 12] eggs. She breaks 5 of them. How many eggs are left?", "take-from-result 12 - 5 = ?", "words that say a number"},
		{"Omar has 9 kites. Lina has 5 more kites than Omar. Lina has [?] kites.", "compare-bigger-more 9 + 5 = ?", "asked without a question"},
	}
	r := NewReader("en", englishWords())
	for _, test := range tests {
		text, err := r.Mark(test.text)
		if err != nil {
			t.Errorf("%s: %v", test.text, err)
			continue
		}
		if got := r.Read(text); got.Certainty == CannotTell || Line(got.Problem) != test.want {
			t.Errorf("%s: want %s, got %v %s %s: %s", test.text, test.want, got.Certainty, Line(got.Problem), got.Why, test.why)
		}
		if strings.ContainsAny(text.Plain, "[]=") || strings.Contains(text.Plain, "  ") {
			t.Errorf("%s: the marks are published: %s", test.text, text.Plain)
		}
	}
}

// Without knowledge of a language nothing is proposed, whatever is marked.
func TestUnknownLanguage(t *testing.T) {
	r := NewReader("sw", nil)
	text, err := r.Mark("Lina ana kombe [8]. Anapata [6]. Ana kombe ngapi?")
	if err != nil {
		t.Fatal(err)
	}
	if got := r.Read(text); r.Reads() || got.Certainty != CannotTell || got.Why == "" {
		t.Errorf("want no proposal and a reason, got %+v", got)
	}
}

// What is a whole number in a text, and what belongs to something else.
func TestNumerals(t *testing.T) {
	tests := []struct {
		text string
		want []int
	}{
		{"8 shells, six more and Seven.", []int{8, 6, 7}},
		{"It costs 3.50 at 7:30, 1/2 a loaf, the 2nd of A4, $5, 12:00.", nil},
		{"A 7-year-old has 20, then 21.", []int{7, 20, 21}},
		{"٨ أصداف و ٦", []int{8, 6}},
		{"८ और ६", []int{8, 6}},
		{"8个贝壳和14个", []int{8, 14}},
		{"twenty one, twenty-five and twenty", []int{21, 25, 20}},
		{"9999999999 and 1000", []int{1000}},
	}
	for _, test := range tests {
		text, err := Mark(test.text, englishWords())
		if err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(test.want, text.Values(), cmp.Transformer("nil", func(s []int) []int { return append([]int{}, s...) })); diff != "" {
			t.Errorf("%s (-want +got):\n%s", test.text, diff)
		}
	}
}

// A reading line says the same problem again, for every kind and many numbers.
func TestLineThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kind := rapid.SampledFrom(problem.Kinds()).Draw(t, "kind")
		numbers := rapid.SliceOfN(rapid.IntRange(0, 300), 2, 3).Draw(t, "numbers")
		p, err := problem.New(kind, numbers...)
		if err != nil {
			return
		}
		got, err := ParseLine(Line(p))
		if err != nil {
			t.Fatalf("%s: %v", Line(p), err)
		}
		if kind != problem.TogetherBoth && got.Answer() != p.Answer() || got.Kind() != kind || !slices.Equal(told(got), told(p)) {
			t.Fatalf("%s: want %v, got %v", Line(p), p, got)
		}
	})
}

func told(p problem.Problem) []int {
	var out []int
	for _, q := range p.Told() {
		out = append(out, q.Value)
	}
	return out
}

// Whatever a teacher types, reading ends soon and panics nowhere; what is
// proposed tells numbers of the text.
func FuzzRead(f *testing.F) {
	for _, seed := range []string{
		"Lina has 8 shells. She finds 6 more. How many shells does she have now?", "[", "]", "[?]", "[a = 3] [?] how many",
		"How many more than and 8 of the 14 of them are than Omar?", strings.Repeat("how many 8 of the ", 40), "8 8 8 8 is is is and and", "٨ how many 9 than than",
		"¿Cuántas le quedan a 5 más que 8 de las 14?", "Combien lui en reste-t-il de plus qu'Omar d'l' -t-il 8", "a a a 5 a mais do que à", "^ est-ce que",
	} {
		f.Add(seed)
	}
	var readers []*Reader
	for _, tag := range languages(f) {
		readers = append(readers, NewReader(tag, numberWords(tag)))
	}
	f.Fuzz(func(t *testing.T, story string) {
		if len(story) > 2000 {
			return
		}
		for _, r := range readers {
			readAny(t, r, story)
		}
	})
}

// readAny reads whatever was typed, and holds what comes out against it.
func readAny(t *testing.T, r *Reader, story string) {
	began := time.Now()
	text, err := r.Mark(story)
	if err != nil {
		return
	}
	got := r.Read(text)
	if took := time.Since(began); took > 2*time.Second {
		t.Errorf("reading took %v", took)
	}
	if got.Certainty == CannotTell {
		return
	}
	if _, missing := text.Tells(got.Problem); len(missing) > 0 {
		t.Errorf("%q: proposes %s, and the text has no %v", story, Line(got.Problem), missing)
	}
	if back, err := ParseLine(Line(got.Problem)); err != nil || back.Kind() != got.Problem.Kind() {
		t.Errorf("%q: the line %q cannot be pasted: %v", story, Line(got.Problem), err)
	}
}
