package ownstory

import (
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"homebuild/internal/problem"
)

// What a teacher typed, held against her text: the places of its numbers, or what
// is wrong.
func TestChoose(t *testing.T) {
	const shells = "Lina has 8 shells. She finds 6 more. How many shells does she have now?"
	tests := []struct {
		name, text, line string
		want             []int // places
		wrong            string
	}{
		{"as offered", shells, "add-to-result 8 + 6 = ?", []int{0, 1}, ""},
		{"numbers the other way round", shells, "compare-bigger-more 6 + 8 = ?", []int{1, 0}, ""},
		{"another equation of the table", shells, "compare-difference-more 8 - 6 = ?", []int{0, 1}, ""},
		{"signs of a word processor", shells, " take-from-result:  8 – 6 ＝ ？ ", []int{0, 1}, ""},
		{"without spaces", shells, "add-to-result 8+6=?", []int{0, 1}, ""},
		{"one number written twice", "8, and 6 more", "bigger-then-together 8 + 8 + 6 = ?", []int{0, 1}, ""},
		{"the same number twice", "8 and 8", "together-total 8 + 8 = ?", []int{0, 1}, ""},
		{"marked before others", "8 hats, [8 shells] and [6 more]", "add-to-result 8 + 6 = ?", []int{1, 2}, ""},
		{"digits before words", "Three children, 3 hats and 6 more", "add-to-result 3 + 6 = ?", []int{1, 2}, ""},
		{"other number", shells, "add-to-result 8 + 7 = ?", nil, "does not tell what the reading needs: 7"},
		{"two others", shells, "add-to-result 9 + 7 = ?", nil, "needs: 9, 7"},
		{"number told once", shells, "add-to-result 8 + 8 = ?", nil, "needs: 8"},
		{"equation of another kind", shells, "take-from-start 8 + 6 = ?", nil, "does not fit the kind take-from-start"},
		{"no sample of small numbers", "2 and 2", "take-then-take 2 - 2 = ?", nil, "does not fit the kind take-then-take"},
		{"part bigger than whole", shells, "take-from-result 6 - 8 = ?", nil, "does not fit"},
		{"solved", shells, "add-to-result 8 + 6 = 14", nil, "does not fit"},
		{"kind alone", shells, "add-to-result", nil, "does not fit"},
		{"numbers alone", shells, "add-to-result 8 6", nil, "does not fit"},
		{"in words", shells, "add-to-result eight and six", nil, "does not fit"},
		{"many numbers", shells, "add-to-result " + strings.Repeat("8 + ", 200) + "6 = ?", nil, "does not fit"},
		{"no kind", shells, "add-to-reslt 8 + 6 = ?", nil, `"add-to-reslt" is not a kind`},
		{"yes", shells, "yes", nil, `"yes" is not a kind`},
		{"mark not used", "[3] days ago. " + shells, "add-to-result 8 + 6 = ?", nil, `"3" is marked as a number that counts`},
		{"no difference", "8 and 8", "compare-difference-more 8 + ? = 8", nil, "both amounts are the same"},
		{"too many pairs", "Lina has 300.", "together-both 300 = ? + ?", nil, "too many ways"},
		{"too large", "900 and 800", "add-to-result 900 + 800 = ?", nil, "1700 is larger than 1000"},
	}
	for _, test := range tests {
		got, err := read(t, NewLanguage("en", wordsOf(t, "en")), test.text).Choose(test.line)
		switch {
		case test.wrong != "" && (err == nil || !strings.Contains(err.Error(), test.wrong)):
			t.Errorf("%s: want an error with %q, got %v", test.name, test.wrong, err)
		case test.wrong == "" && (err != nil || !slices.Equal(got.Places, test.want)):
			t.Errorf("%s: want the places %v, got %v, %v", test.name, test.want, got.Places, err)
		}
	}
}

func TestUnneeded(t *testing.T) {
	text := read(t, NewLanguage("en", wordsOf(t, "en")), "Two girls: 8 shells, 3 hats, 6 more, in 2026.")
	c, err := text.Choose("add-to-result 8 + 6 = ?")
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff([]int{3, 2026}, text.values(text.Unneeded(c))); diff != "" {
		t.Errorf("numbers left out (-want +got):\n%s", diff)
	}
}

// A translation tells the same numbers.
func TestMatch(t *testing.T) {
	tests := []struct {
		name, translation string
		want              []int
		wrong             string
	}{
		{"digits", "Lina tiene 8 conchas. Encuentra 6 más.", []int{0, 1}, ""},
		{"words", "Lina tiene ocho conchas. Encuentra seis más.", []int{0, 1}, ""},
		{"in another order", "Encuentra 6. Tenía 8.", []int{1, 0}, ""},
		{"other words stay words", "Un día Lina tiene ocho conchas, 8 conchas, y 6.", []int{2, 3}, ""},
		{"a word that is said to be a number", "Lina tiene [media docena = 6]. Tenía 8.", []int{1, 0}, ""},
		{"one is missing", "Lina tiene 8 conchas.", nil, "does not tell 6"},
		{"one is too many", "Lina tiene 8 conchas. Encuentra 6 de 7.", nil, "tells 7"},
		{"one is marked too many", "8, 6 y [siete]", nil, "tells 7"},
		{"no number", "", nil, "does not tell 8, 6"},
	}
	text := read(t, NewLanguage("en", nil), "Lina has 8 shells. She finds 6 more.")
	for _, test := range tests {
		got, err := text.Match([]int{0, 1}, read(t, NewLanguage("es", wordsOf(t, "es")), test.translation))
		switch {
		case test.wrong != "" && (err == nil || !strings.Contains(err.Error(), test.wrong)):
			t.Errorf("%s: want an error with %q, got %v", test.name, test.wrong, err)
		case test.wrong == "" && (err != nil || !slices.Equal(got, test.want)):
			t.Errorf("%s: want %v, got %v, %v", test.name, test.want, got, err)
		}
	}
}

func TestAnswers(t *testing.T) {
	sum, _ := problem.New(problem.AddToResult, 8, 6)
	pairs, _ := problem.New(problem.TogetherBoth, 6, 4)
	tests := []struct {
		p      problem.Problem
		answer string
		want   []int // nil for a wrong answer
	}{
		{sum, "She has 14 shells now.", []int{0}},
		{sum, "She has fourteen shells.", []int{0}},
		{sum, "8 and 6 are 14.", []int{2}},
		{sum, "She has 15 shells.", nil},
		{sum, "She has many.", nil},
		{pairs, "6 could be red and 4 blue.", []int{0, 1}},
		{pairs, "One could be red and nine blue.", []int{0, 1}},
		{pairs, "6 could be red and 5 blue.", nil},
		{pairs, "10", nil},
		{pairs, "Of 10, 6 could be red and 4 blue.", nil},
	}
	for _, test := range tests {
		got, err := read(t, NewLanguage("en", wordsOf(t, "en")), test.answer).Answers(test.p)
		if !slices.Equal(got, test.want) || (err == nil) != (test.want != nil) {
			t.Errorf("%s: %s: want %v, got %v, %v", test.p.Equation(), test.answer, test.want, got, err)
		}
	}
}

// A line says the same problem again, for every kind and many numbers.
func TestLineThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kind := rapid.SampledFrom(problem.Kinds()).Draw(t, "kind")
		numbers := rapid.SliceOfN(rapid.IntRange(0, 300), 2, 3).Draw(t, "numbers")
		p, err := problem.New(kind, numbers...)
		if err != nil {
			return
		}
		line := Choice{Problem: p}.Line()
		got, err := parseLine(line)
		if err != nil {
			t.Fatalf("%s: %v", line, err)
		}
		if kind != problem.TogetherBoth && got.Answer() != p.Answer() || got.Kind() != kind || !slices.Equal(got.Given(), p.Given()) {
			t.Fatalf("%s: want %v, got %v", line, p, got)
		}
	})
}

// Whatever a teacher types, it is read without a panic; numbers stand where they
// are said to stand, and what is offered can be chosen.
func FuzzRead(f *testing.F) {
	for _, seed := range [][2]string{
		{"Lina has [8 shells]. She finds 6 more. How many shells does she have now?", "add-to-result 8 + 6 = ?"},
		{"[", "together-both 0 = ? + ?"}, {"]", "-"}, {"[a = 3] [= ] 3", "add-then-take 3 + 3 - 3 = ?"},
		{strings.Repeat("8 6 ", 40), "bigger-then-together 8 + 8 + 6 = ?"}, {"٨ e vinte e três quatre-vingt-", "take-from-start ? - 8 = 23"},
		{"quatre-vingt-dix-neuf cent y y et et e -et-", "compare-bigger-fewer"}, {"1000 0 0", "together-three 1000 + 0 + 0 = ?"},
	} {
		f.Add(seed[0], seed[1])
	}
	var languages []Language
	for _, tag := range []string{"en", "es", "fr", "pt", "ko"} {
		languages = append(languages, NewLanguage(tag, wordsOf(f, tag)))
	}
	f.Fuzz(func(t *testing.T, story, line string) {
		if len(story) > 2000 || len(line) > 2000 {
			return
		}
		for _, l := range languages {
			text, err := l.Read(story)
			if err != nil {
				continue
			}
			at := 0
			for _, n := range text.Numerals {
				if n.Start < at || n.End <= n.Start || n.End > len(text.Plain) || n.Value < 0 || !strings.Contains(story, text.Plain[n.Start:n.End]) {
					t.Fatalf("%q: %+v does not stand in %q", story, n, text.Plain)
				}
				at = n.End
			}
			for _, c := range text.Offer().Choices {
				if _, err := text.Choose(c.Line()); err != nil {
					t.Errorf("%q: %s is offered and cannot be chosen: %v", story, c.Line(), err)
				}
			}
			if c, err := text.Choose(line); err == nil && len(c.Places) != len(c.Problem.Given()) {
				t.Errorf("%q: %q is chosen with the places %v", story, line, c.Places)
			}
		}
	})
}
