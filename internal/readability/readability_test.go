package readability

import (
	"fmt"
	"strings"
	"testing"
)

// Published formulas, worked by other programs or by hand.
func TestFormulas(t *testing.T) {
	tests := []struct {
		name string
		got  float64
		want string
		why  string
	}{
		{"Spache, hard words", Spache(30, 2, 6), "4.114", `the npm package "spache-formula" 2.0.1 gives the same`},
		{"Spache, easy words", Spache(30, 2, 0), "2.474", `the npm package "spache-formula" 2.0.1 gives the same`},
		{"Flesch-Kincaid, hard", FleschKincaid(13, 1, 26), "13.080", `the npm package "flesch-kincaid" 2.0.1 gives the same`},
		{"Flesch-Kincaid, easy", FleschKincaid(60, 10, 72), "0.910", "worked by hand: 0.39 x 6 + 11.8 x 1.2 - 15.59; the same package agrees"},
		{"Szigriszt", Szigriszt(100, 10, 200), "72.235", `worked by hand: 206.835 - 62.3 x 2 - 10; "fairly easy"`},
	}
	for _, tt := range tests {
		if got := fmt.Sprintf("%.3f", tt.got); got != tt.want {
			t.Errorf("%s: want %s, got %s (%s)", tt.name, tt.want, got, tt.why)
		}
	}
}

func TestCounting(t *testing.T) {
	tests := []struct {
		name, text string
		sentences  []string
		words      int
		why        string
	}{
		{"two sentences", "Lina has 8 shells. How many now?", []string{"Lina has 8 shells.", "How many now?"}, 7, "a number is a word"},
		{"equation", "Turn it round: 6 + ? = 14. Then add.", []string{"Turn it round: 6 + ? = 14.", "Then add."}, 7, "the unknown ends nothing"},
		{"equation that ends with it", "First: 5 + 4 = ?. Then add 2.", []string{"First: 5 + 4 = ?.", "Then add 2."}, 6, "of two marks the last one ends"},
		{"button", "Next story", nil, 2, "no mark, no sentence"},
		{"inner marks", "It's a make-ten story.", []string{"It's a make-ten story."}, 4, "apostrophe and hyphen stay inside"},
		{"Spanish", "¿Cuántas hay? ¡Bien!", []string{"¿Cuántas hay?", "¡Bien!"}, 3, ""},
		{"Arabic", "كم لديها؟ عدّوا.", []string{"كم لديها؟", "عدّوا."}, 3, "U+061F"},
		{"Chinese", "有三个。对吗？", []string{"有三个。", "对吗？"}, 2, "U+3002, U+FF1F"},
	}
	for _, tt := range tests {
		if got := Sentences(tt.text); strings.Join(got, "|") != strings.Join(tt.sentences, "|") {
			t.Errorf("%s: want sentences %q, got %q (%s)", tt.name, tt.sentences, got, tt.why)
		}
		if got := Words(tt.text); len(got) != tt.words {
			t.Errorf("%s: want %d words, got %q (%s)", tt.name, tt.words, got, tt.why)
		}
	}
}

// Syllables as a Spanish dictionary parts the words, from memory.
func TestSpanishSyllables(t *testing.T) {
	for word, want := range map[string]int{
		"sol": 1, "casa": 2, "árbol": 2, "país": 2, "ciudad": 2, "leer": 2, "aéreo": 4, "guerra": 2, "queso": 2,
		"pingüino": 3, "día": 2, "hay": 1, "muy": 1, "rey": 1, "reyes": 2, "ahora": 3, "suma": 2, "cuántos": 2,
		"baúl": 2, "y": 1, "seis": 1, "juego": 2, "niño": 2, "agua": 2, "oído": 3, "12": 1,
	} {
		if got := SpanishSyllables(word); got != want {
			t.Errorf("%s: want %d syllables, got %d", word, want, got)
		}
	}
}

func TestEasyWords(t *testing.T) {
	easy := easyWords([]string{"Nila"})
	for word, want := range map[string]bool{
		"boat": true, "boats": true, "Boat": true, "stopped": true, "running": true, "making": true, "happier": true,
		"Nila": true, "Nila's": true, "14": true, "lantern": false, "friendly": false,
	} {
		if got := easy.has(word); got != want {
			t.Errorf("%s: easy %t, want %t", word, got, want)
		}
	}
	if n := len(easy); n < 1000 {
		t.Errorf("only %d easy words were read", n)
	}
}

func TestTexts(t *testing.T) {
	long := "One two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen."
	var strange strings.Builder // 26 sentences of words on no list
	for c := 'a'; c <= 'z'; c++ {
		fmt.Fprintf(&strange, "Qu%cv qo%cvx qi%cvz que%cvo. ", c, c, c, c)
	}
	hard := strings.Repeat("Extraordinary mathematical considerations necessitate deliberation. ", 25)
	tests := []struct {
		name, tag string
		texts     []Text
		want      string
		why       string
	}{
		{"long sentence", "en", []Text{{Name: "a", Text: long}}, "a: a sentence has 16 words", ""},
		{"long in a story", "en", []Text{{Name: "s", Text: "Nila has one two three four five six seven eight nine ten eleven twelve shells.", Story: true}}, "s: a sentence has 15 words", "a story has shorter ones"},
		{"hard, but short", "en", []Text{{Text: "Extraordinary mathematical considerations."}}, "", "fewer words than a formula needs"},
		{"hard", "en", []Text{{Text: hard}}, ": the family texts are for grade", ""},
		{"hard story", "en", []Text{{Text: strange.String(), Story: true}}, ": the stories are for grade", ""},
		{"hard in Spanish", "es", []Text{{Text: strings.Repeat("Extraordinarias consideraciones matemáticas imprescindibles. ", 30)}}, ": the family texts score", ""},
		{"long in Spanish", "es", []Text{{Text: long}}, "", "only the formula holds Spanish up"},
		{"another language", "so", []Text{{Text: long + hard}}, "", "there is no formula"},
	}
	for _, tt := range tests {
		var got []string
		for _, m := range Texts(tt.tag, tt.texts).Misses {
			got = append(got, m.Name+": "+m.Why)
		}
		joined := strings.Join(got, "\n")
		if !strings.HasPrefix(joined, tt.want) || tt.want == "" && joined != "" {
			t.Errorf("%s: want %q, got %q (%s)", tt.name, tt.want, joined, tt.why)
		}
	}
}
