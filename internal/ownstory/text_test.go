package ownstory

import (
	"strings"
	"testing"
	"unicode"

	"github.com/google/go-cmp/cmp"
	"golang.org/x/text/unicode/runenames"
)

// read reads a text that holds nothing wrong.
func read(t testing.TB, l Language, text string) Text {
	t.Helper()
	out, err := l.Read(text)
	if err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	return out
}

// values are the numbers of a text, in order.
func values(t Text) []int {
	out := []int{}
	for _, n := range t.Numerals {
		out = append(out, n.Value)
	}
	return out
}

// What is a whole number in a text, and what belongs to something else.
func TestNumerals(t *testing.T) {
	tests := []struct {
		name, text string
		want       []int
	}{
		{"digits and words", "8 shells, six more and Seven.", []int{8, 6, 7}},
		{"prices with cents, and percents", "It costs 3.50, 3,50, $3.50 or 5% more.", []int{}},
		{"money", "$35, 35$, €5, 35 €, 60¢, ₩500, 500원, 35₽ and 40₫", []int{35, 35, 5, 35, 60, 500, 500, 35, 40}},
		{"units", "60 inches, 24in, 5kg, 30cm, 40 cm, 12 ft, 7m", []int{60, 24, 5, 30, 40, 12, 7}},
		{"a word after such digits", "It costs 5% six times, 3.50 seven times.", []int{6, 7}},
		{"clocks", "From 7:30 to 12:00.", []int{}},
		{"parts of a whole", "1/2 a loaf", []int{}},
		{"with letters", "the 2nd of A4, 3D, the 1990s, 8h30", []int{}},
		{"below zero", "It was -5, then −3 degrees.", []int{}},
		{"end of a sentence", "A 7-year-old has 20, then 21.", []int{7, 20, 21}},
		{"a year is a number", "In 2026 she has 8.", []int{2026, 8}},
		{"dozens", "2 dozen eggs, two dozen, 3 Dozens.", []int{24, 24, 36}},
		{"a dozen alone is a word", "a dozen eggs, 2 dozenth", []int{2}},
		{"dozens marked as what they count", "[2] dozen eggs", []int{2}},
		{"a dozen that is said", "[2 dozen = 24] eggs", []int{24}},
		{"inner quotes", `"I have 8," says Lina. «Ich habe 6.» “She has 5.” „4“ 「3」`, []int{8, 6, 5, 4, 3}},
		{"too large to count with", "Call 9999999999 and 1000.", []int{1000}},
		{"Arabic", "٨ أصداف و ٦", []int{8, 6}},
		{"Devanagari", "८ और १६", []int{8, 16}},
		{"Chinese, without spaces", "8个贝壳和14个", []int{8, 14}},
		{"full width", "１４개", []int{14}},
		{"a word inside a word", "someone, bone and tent", []int{}},
		{"a word inside a word with a hyphen", "a ten-year-old and a twenty-first", []int{}},
		{"tens and ones", "twenty one, twenty-five and twenty", []int{21, 25, 20}},
		{"apostrophe", "one's hat", []int{}},
		{"nothing", "", []int{}},
		{"not text", "\xff8\xff", []int{8}},
	}
	for _, test := range tests {
		got := values(read(t, NewLanguage("en", wordsOf(t, "en")), test.text))
		if diff := cmp.Diff(test.want, got); diff != "" {
			t.Errorf("%s: %s (-want +got):\n%s", test.name, test.text, diff)
		}
	}
}

// Every decimal digit of Unicode has the value that its name says (The Unicode
// Standard, UnicodeData.txt: "ARABIC-INDIC DIGIT EIGHT").
func TestDigitsOfEveryScript(t *testing.T) {
	names := strings.Fields("ZERO ONE TWO THREE FOUR FIVE SIX SEVEN EIGHT NINE")
	met := 0
	for c := rune(0); c <= unicode.MaxRune; c++ {
		words := strings.Fields(runenames.Name(c))
		if !unicode.IsDigit(c) || len(words) == 0 {
			continue
		}
		met++
		if got, ok := number(string(c)); !ok || names[got] != words[len(words)-1] {
			t.Errorf("%U %s: got %d, %t", c, strings.Join(words, " "), got, ok)
		}
	}
	if met < 600 { // Unicode 12 has 630
		t.Errorf("met %d digits only", met)
	}
}

func TestMarks(t *testing.T) {
	tests := []struct {
		text, plain string
		want        []Numeral
	}{
		{"Lina has [8 shells].", "Lina has 8 shells.", []Numeral{{Value: 8, Start: 9, End: 17, Marked: true}}},
		{"She finds [six more].", "She finds six more.", []Numeral{{Value: 6, Start: 10, End: 18, Marked: true, Word: true}}},
		{"[ a dozen = 12 ] eggs", "a dozen eggs", []Numeral{{Value: 12, Start: 0, End: 7, said: true}}},
		{"[两 ＝ 2]个, [3]", "两个, 3", []Numeral{{Value: 2, Start: 0, End: 3, said: true}, {Value: 3, Start: 8, End: 9, Marked: true}}},
		{"[half of ten = 5]", "half of ten", []Numeral{{Value: 5, Start: 0, End: 11, said: true}}},
		{"In [Room 4 =] sit 8.", "In Room 4 sit 8.", []Numeral{{Value: 4, Start: 3, End: 9, Name: true}, {Value: 8, Start: 14, End: 15}}},
		{"[3학년 4반 =] 7", "3학년 4반 7", []Numeral{{Value: 3, Start: 0, End: 12, Name: true}, {Value: 7, Start: 13, End: 14}}},
		{"[$35] and [班级 4 ＝]", "$35 and 班级 4", []Numeral{{Value: 35, Start: 0, End: 3, Marked: true}, {Value: 4, Start: 8, End: 16, Name: true}}},
	}
	for _, test := range tests {
		got := read(t, NewLanguage("en", wordsOf(t, "en")), test.text)
		if diff := cmp.Diff(Text{test.plain, test.want}, got, cmp.AllowUnexported(Numeral{})); diff != "" {
			t.Errorf("%s (-want +got):\n%s", test.text, diff)
		}
	}
}

func TestWrongMarks(t *testing.T) {
	for text, want := range map[string]string{
		"Lina has [8 shells.":       "stands alone",
		"Lina has 8] shells.":       "stands alone",
		"Lina has [[8] shells].":    "stands alone",
		"[Room =]":                  "does not hold one number",
		"[shells]":                  "does not hold one number",
		"[8 and 6]":                 "does not hold one number",
		"[= 8]":                     "does not hold one number",
		"[]":                        "does not hold one number",
		"[1001 shells]":             "one number up to 1000",
		"How many has she now [?]":  "does not hold one number",
		"[3.50] and [a price = $3]": "does not hold one number",
	} {
		if _, err := NewLanguage("en", nil).Read(text); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: want an error with %q, got %v", text, want, err)
		}
	}
}

// A number is known again by the word beside it.
func TestLabels(t *testing.T) {
	for text, want := range map[string]string{
		"Lina has 58 cans.":           "58 cans",
		"She pays $35 today":          "$35 today",
		"in Room 4 today":             "Room 4",
		"[Room 4 =] has":              "Room 4",
		"[8 big shells] are":          "8 big shells",
		"3 are absent":                "3 are",
		"6, then":                     "6",
		"8个贝壳在海边":                     "8个贝",
		"연필 12자루가":                    "12자루가",
		"٨ أصداف":                     "٨ أصداف",
		"7 extraordinarilylongwords":  "7 extraordinaril",
		"5":                           "5",
		"She has twenty-five kites":   "twenty-five kites",
		"Jean a 8 coquillages d'ici.": "8 coquillages",
	} {
		got := read(t, NewLanguage("en", wordsOf(t, "en")), text)
		if len(got.Numerals) != 1 || got.Label(0) != want {
			t.Errorf("%s: want %q, got %q", text, want, got.Label(0))
		}
	}
}

// A text with its marks is read again as it was meant.
func TestMark(t *testing.T) {
	tests := []struct {
		text    string
		counted []int // places
		want    string
	}{
		{"8 hats, 3 caps and 6 more", []int{0, 2}, "[8] hats, 3 caps and [6] more"},
		{"[8 hats] and [6 more]", []int{0, 1}, "8 hats and 6 more"},
		{"[2 dozen = 24] eggs, 5 break", []int{0, 1}, "[2 dozen = 24] eggs, 5 break"},
		{"2 dozen eggs, 5 break", []int{0, 1}, "2 dozen eggs, 5 break"},
		{"2 dozen eggs, 5 break, 3 roll away", []int{0, 1}, "[2 dozen] eggs, [5] break, 3 roll away"},
		{"[2 dozen = 24] eggs, 5 break, 3 roll away", []int{0, 1}, "[2 dozen = 24] eggs, [5] break, 3 roll away"},
		{"[2 dozen = 24] eggs, 5 break, 3 roll away", []int{1, 2}, "2 dozen eggs, [5] break, [3] roll away"},
		{"[Room 4 =] has 22, 3 are away", []int{1, 2}, "[Room 4 =] has 22, 3 are away"},
		{"$35, then six", []int{0, 1}, "$35, then six"},
		{"no number", nil, "no number"},
	}
	lang := NewLanguage("en", wordsOf(t, "en"))
	for _, test := range tests {
		text := read(t, lang, test.text)
		got := text.Mark(test.counted)
		if got != test.want {
			t.Errorf("%s: want %q, got %q", test.text, test.want, got)
		}
		again := read(t, lang, got)
		if diff := cmp.Diff(text.values(test.counted), again.values(again.Counted())); diff != "" {
			t.Errorf("%s: read again (-want +got):\n%s", got, diff)
		}
	}
}
