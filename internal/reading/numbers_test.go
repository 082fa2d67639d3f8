package reading

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

// Number words as each language puts them together. The forms are those of the
// spell-out rules of Unicode CLDR (common/rbnf, "spellout-cardinal"), from memory;
// septante and nonante are those of Belgium and Switzerland.
func TestNumberWords(t *testing.T) {
	tests := []struct {
		tag, text string
		want      []int
		why       string
	}{
		{"en", "twenty one, thirty-five and ninety", []int{21, 35, 90}, "with and without a hyphen"},
		{"es", "treinta y uno, cuarenta y dos, veintitrés", []int{31, 42, 23}, "joined by a word from thirty on"},
		{"es", "veinte y tres", []int{20, 3}, "twenty is not joined by a word"},
		{"es", "ciento veinticinco, doscientas treinta y una", []int{125, 231}, "hundreds, both genders"},
		{"fr", "vingt et un, trente-deux, soixante et onze", []int{21, 32, 71}, "sixty goes on to nineteen"},
		{"fr", "quatre-vingts, quatre-vingt-dix-sept, quatre-vingt-un", []int{80, 97, 81}, "four twenties"},
		{"fr", "septante-trois, nonante, cent vingt", []int{73, 90, 120}, "other countries' tens; hundreds"},
		{"fr", "quatre, vingt", []int{4, 20}, "a comma parts them"},
		{"pt", "vinte e três, trinta e duas, cento e vinte e cinco", []int{23, 32, 125}, "joined by a word each time"},
		{"pt", "quatorze, dezasseis, dezesseis", []int{14, 16, 16}, "both sides of the ocean"},
	}
	for _, test := range tests {
		text, err := NewReader(test.tag, numberWords(test.tag)).Mark(test.text)
		if err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(test.want, text.Values()); diff != "" {
			t.Errorf("%s: %s: %s (-want +got):\n%s", test.tag, test.text, test.why, diff)
		}
	}
}

// A word that says "a" as well as "one", or "both" as well as "two", is not
// counted with, and is no number that would be left over.
func TestNumbersThatDoNotCount(t *testing.T) {
	tests := []struct{ tag, text string }{
		{"es", "Lina tiene 8 conchas en una caja. Un día encuentra 6 más. ¿Cuántas conchas tiene ahora?"},
		{"fr", "Lina a 8 coquillages dans une boîte. Un jour, elle en trouve 6 de plus. Combien de coquillages a-t-elle maintenant ?"},
		{"pt", "Lina tem 8 conchas numa caixa. Um dia ela encontra mais 6. Quantas conchas ela tem agora?"},
	}
	for _, test := range tests {
		r := NewReader(test.tag, numberWords(test.tag))
		text, err := r.Mark(test.text)
		if err != nil {
			t.Fatal(err)
		}
		got := r.Read(text)
		if want := "add-to-result 8 + 6 = ?"; got.Certainty == CannotTell || Line(got.Problem) != want || len(got.Extra) > 0 {
			t.Errorf("%s: %s: want %s and nothing left over, got %s %s %v (%s)", test.tag, test.text, want, got.Certainty, Line(got.Problem), got.Extra, got.Why)
		}
	}
}
