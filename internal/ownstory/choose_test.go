package ownstory

import (
	"errors"
	"slices"
	"strings"
	"testing"
)

const shells = "Lina has 8 shells. She finds 6 more. How many shells does she have now?"

// What a teacher wrote, held against her text: the places of its numbers, or what
// is wrong and at which setting.
func TestChoose(t *testing.T) {
	tests := []struct {
		name, text string
		wish       Wish
		want       []int  // places
		setting    string // of what is wrong
		wrong      string
	}{
		{"as offered", shells, Wish{Kind: "add-to-result 8 + 6 = ?"}, []int{0, 1}, "", ""},
		{"the kind alone", shells, Wish{Kind: "add-to-result"}, []int{0, 1}, "", ""},
		{"its number", shells, Wish{Number: 1}, []int{0, 1}, "", ""},
		{"an equation that one kind alone writes", shells, Wish{Equation: "8 - ? = 6"}, []int{0, 1}, "", ""},
		{"an equation of what happens", shells, Wish{Happens: "joins", Equation: "8 + 6 = ?"}, []int{0, 1}, "", ""},
		{"all that can be said", shells, Wish{"joins", "add-to-result", 1, "8 + 6 = ?"}, []int{0, 1}, "", ""},
		{"numbers the other way round", shells, Wish{Kind: "compare-bigger-more", Equation: "6 + 8 = ?"}, []int{1, 0}, "", ""},
		{"another equation of the table", shells, Wish{Kind: "compare-difference-more 8 - 6 = ?"}, []int{0, 1}, "", ""},
		{"signs of a word processor", shells, Wish{Kind: "take-from-result", Equation: " 8 – 6 ＝ ？ "}, []int{0, 1}, "", ""},
		{"without spaces", shells, Wish{Happens: "joins", Equation: "8+6=?"}, []int{0, 1}, "", ""},
		{"digits of Arabic", shells, Wish{Happens: "joins", Equation: "٨ + ٦ = ؟"}, []int{0, 1}, "", ""},
		{"a line to write on", shells, Wish{Happens: "joins", Equation: "8 + 6 = __"}, []int{0, 1}, "", ""},
		{"one number written twice", "8, and 6 more", Wish{Equation: "8 + 8 + 6 = ?"}, []int{0, 1}, "", ""},
		{"the same number twice", "8 and 8", Wish{Kind: "together-total 8 + 8 = ?"}, []int{0, 1}, "", ""},
		{"marked before others", "8 hats, [8 shells] and [6 more]", Wish{Number: 1}, []int{1, 2}, "", ""},
		{"digits before words", "Three children, 3 hats and 6 more", Wish{Kind: "add-to-result 3 + 6 = ?"}, []int{1, 2}, "", ""},
		{"an equation of other numbers than those that count", "Two have 8, 6 and 4", Wish{Happens: "joins", Equation: "2 + 4 = ?"}, []int{0, 3}, "", ""},

		{"nothing", shells, Wish{}, nil, "text", "waits for you to say what happens; numbers that count: 8 shells, 6 more"},
		{"what happens", shells, Wish{Happens: "joins"}, nil, "text", "waits for you to say what it asks"},
		{"nothing, where few fit", "8, 6 and 4", Wish{}, nil, "text", "waits for you to say what it asks"},
		{"an equation of many kinds", shells, Wish{Equation: "8 - 6 = ?"}, nil, "equation", `6 kinds of story write "8 - 6 = ?"`},
		{"an equation of many kinds that compare", shells, Wish{Happens: "compared", Equation: "8 - 6 = ?"}, nil, "equation", `4 kinds of story write "8 - 6 = ?"`},
		{"another happening", shells, Wish{Happens: "join"}, nil, "happens", `"join" is not what can happen`},
		{"what cannot happen", "10 kites", Wish{Happens: "joins"}, nil, "happens", `do not fit a story in which "joins"; numbers that count: 10 kites`},
		{"two that differ", shells, Wish{Happens: "leaves", Kind: "add-to-result"}, nil, "kind", `add-to-result is a story in which "joins"`},
		{"two numbers that differ", shells, Wish{Kind: "add-to-change", Number: 1}, nil, "choice", "choice 1 is add-to-result"},
		{"no such number", shells, Wish{Number: 24}, nil, "choice", "there is no choice 24"},
		{"a number below zero", shells, Wish{Number: -1}, nil, "choice", "there is no choice -1"},
		{"too few for the kind", "10 kites", Wish{Kind: "add-to-result"}, nil, "kind", "do not fit the kind add-to-result"},
		{"too few for the number", "10 kites", Wish{Number: 1}, nil, "choice", "do not fit the kind add-to-result"},
		{"other number", shells, Wish{Happens: "joins", Equation: "8 + 7 = ?"}, nil, "equation", "does not tell what the equation needs: 7"},
		{"two others", shells, Wish{Kind: "add-to-result 9 + 7 = ?"}, nil, "equation", "needs: 9, 7"},
		{"number told once", shells, Wish{Kind: "add-to-result 8 + 8 = ?"}, nil, "equation", "needs: 8"},
		{"equation of another kind", shells, Wish{Kind: "take-from-start 8 + 6 = ?"}, nil, "equation", "no story of the kind take-from-start writes"},
		{"equation of another happening", shells, Wish{Happens: "leaves", Equation: "8 + 6 = ?"}, nil, "equation", `no story in which "leaves" writes`},
		{"no sample of small numbers", "2 and 2", Wish{Kind: "take-then-take 2 - 2 = ?"}, nil, "equation", "writes"},
		{"part bigger than whole", shells, Wish{Equation: "6 - 8 = ?"}, nil, "equation", "no kind of story writes"},
		{"solved", shells, Wish{Equation: "8 + 6 = 14"}, nil, "equation", "no kind of story writes"},
		{"numbers alone", shells, Wish{Equation: "8 6"}, nil, "equation", "writes"},
		{"in words", shells, Wish{Equation: "eight and six"}, nil, "equation", "writes"},
		{"many numbers", shells, Wish{Equation: strings.Repeat("8 + ", 200) + "6 = ?"}, nil, "equation", "writes"},
		{"no kind", shells, Wish{Kind: "add-to-reslt 8 + 6 = ?"}, nil, "kind", `"add-to-reslt" is not a kind`},
		{"yes", shells, Wish{Kind: "yes"}, nil, "kind", `"yes" is not a kind`},
		{"mark not used", "[3] days ago. " + shells, Wish{Equation: "8 - ? = 6"}, nil, "equation", `"3" is marked as a number that counts`},
		{"no difference", "8 and 8", Wish{Kind: "compare-difference-more 8 + ? = 8"}, nil, "equation", "both amounts are the same"},
		{"too many pairs", "Lina has 300.", Wish{Equation: "300 = ? + ?"}, nil, "equation", "too many ways"},
		{"too large", "900 and 800", Wish{Kind: "add-to-result 900 + 800 = ?"}, nil, "equation", "1700 is larger than 1000"},
	}
	for _, test := range tests {
		got, err := read(t, NewLanguage("en", wordsOf(t, "en")), test.text).Choose(test.wish)
		var wrong *Error
		switch {
		case test.wrong == "" && (err != nil || !slices.Equal(got.Places, test.want)):
			t.Errorf("%s: want the places %v, got %v, %v", test.name, test.want, got.Places, err)
		case test.wrong != "" && (!errors.As(err, &wrong) || !strings.Contains(wrong.Text, test.wrong) || wrong.Setting != test.setting || wrong.Hint == ""):
			t.Errorf("%s: want an error of %s with %q, got %+v", test.name, test.setting, test.wrong, err)
		}
	}
}

// Every line that an error asks for is an answer: written as it stands, it is not
// asked for again.
func TestAskedLinesAnswer(t *testing.T) {
	lang := NewLanguage("en", wordsOf(t, "en"))
	answered := 0
	for _, story := range []string{"10", shells, "4 and 13", "13, 6 and 4", "4, 6 and 13", "500 and 250", "9 and 9"} {
		text := read(t, lang, story)
		queue := []Wish{{}, {Equation: "8 - 6 = ?"}, {Equation: "8 + 6 = ?"}}
		for len(queue) > 0 {
			w := queue[0]
			queue = queue[1:]
			_, err := text.Choose(w)
			var ask *Error
			if !errors.As(err, &ask) {
				answered++
				continue
			}
			if w.Kind != "" {
				t.Errorf("%s: %+v is asked for, and wrong: %v", story, w, err)
			}
			asked := strings.Split(ask.Hint, "\n    ")[1:]
			if len(asked) > MostShown {
				t.Errorf("%s: %+v: %d lines are asked for, want at most %d", story, w, len(asked), MostShown)
			}
			for i, line := range asked {
				setting, meaning, _ := strings.Cut(line, "#")
				key, value, _ := strings.Cut(setting, "=")
				value = strings.Trim(value, ` "`)
				next := w
				switch strings.TrimSpace(key) {
				case "happens":
					next.Happens = value
				case "kind":
					next.Kind = value
					if c, err := text.Choose(next); err != nil || !strings.HasSuffix(meaning, c.Asks()+" "+c.Answer()) {
						t.Errorf("%s: %s is chosen as %s: %v", story, line, c.Line(), err)
					}
				default:
					t.Errorf("%s: line %d is no setting: %s", story, i, line)
				}
				queue = append(queue, next)
			}
		}
	}
	if answered < 60 {
		t.Errorf("%d lines answer, want some 60", answered)
	}
}
