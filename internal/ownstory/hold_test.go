package ownstory

import (
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"homebuild/internal/problem"
)

func TestUnneeded(t *testing.T) {
	text := read(t, NewLanguage("en", wordsOf(t, "en")), "Two girls: 8 shells, 3 hats, 6 more, in 2026.")
	c, err := text.Choose(Wish{Kind: "add-to-result 8 + 6 = ?"})
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
		{"a name's number", "En el salón 4, Lina tiene 8 conchas. Encuentra 6 más.", []int{1, 2}, ""},
		{"another name's number", "En el [salón 5 =], Lina tiene 8 conchas. Encuentra 6 más.", []int{1, 2}, ""},
	}
	text := read(t, NewLanguage("en", nil), "Lina has 8 shells. She finds 6 more, all in Room 4.")
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
		got, ok := parseEquation(kind, Choice{Problem: p}.Equation().String())
		if !ok {
			t.Fatalf("%s is not read again", line)
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
				if _, err := text.Choose(Wish{Kind: c.Line()}); err != nil {
					t.Errorf("%q: %s is offered and cannot be chosen: %v", story, c.Line(), err)
				}
			}
			if c, err := text.Choose(Wish{Kind: line}); err == nil && len(c.Places) != len(c.Problem.Given()) {
				t.Errorf("%q: %q is chosen with the places %v", story, line, c.Places)
			}
		}
	})
}
