package recheck

import (
	"slices"
	"testing"
)

func TestNumbers(t *testing.T) {
	tests := []struct {
		text, why string
		want      []int
	}{
		{"Put 3 with 7 to make 10.", "in order", []int{3, 7, 10}},
		// The zeros of CLDR 48's numbering systems arab, arabext, deva, beng,
		// thai, mymr and khmr (common/supplemental/numberingSystems.xml).
		{"٧ و ١٢", "arab", []int{7, 12}},
		{"۷ اور ۱۲", "arabext", []int{7, 12}},
		{"७ और १२", "deva", []int{7, 12}},
		{"৭ ১২ ๗ ๑๒ ၇ ၁၂ ៧ ១២", "beng, thai, mymr, khmr", []int{7, 12, 7, 12, 7, 12, 7, 12}},
		{"\u2066٧ + ٤\u2069", "marks of direction are no text", []int{7, 4}},
		{"七个贝壳", "a number word is no digit", nil},
	}
	for _, test := range tests {
		if got := numbers(test.text); !slices.Equal(got, test.want) {
			t.Errorf("numbers(%q), %s: want %v, got %v", test.text, test.why, test.want, got)
		}
	}
}

func TestEquations(t *testing.T) {
	tests := []struct {
		text  string
		holds bool
		x     int // for the only "?"; -1 for none
		why   string
	}{
		{"7 + 4 = 11", true, -1, "a sum"},
		{"7 + 4 = 12", false, -1, "a wrong sum"},
		{"7 + 4 = 7 + 3 + 1 = 10 + 1 = 11", true, -1, "a chain"},
		{"7 + 4 = 7 + 3 + 2 = 10 + 1 = 11", false, -1, "a chain wrong in the middle"},
		{"4 − 9 + 10 = 5", false, -1, "on the way it is less than nothing"},
		{"? + 4 = 11", false, 7, "the start is asked"},
		{"15 − ? = 6", false, 9, "what is taken is asked"},
		{"? − 7 = 6", false, 13, "the start of taking away is asked"},
		{"11 = ?", false, 11, "turned round"},
		{"9 + ? = 4", false, -1, "no whole number"},
		{"٧ + ٤ = ?", false, 11, "other digits"},
	}
	for _, test := range tests {
		q, err := read(test.text)
		if err != nil {
			t.Errorf("read(%q): %v", test.text, err)
			continue
		}
		if got := q.asked() == 0 && q.holds(); got != test.holds {
			t.Errorf("%q holds, %s: want %t, got %t", test.text, test.why, test.holds, got)
		}
		x, ok := q.solve()
		if !ok {
			x = -1
		}
		if x != test.x {
			t.Errorf("solve(%q), %s: want %d, got %d", test.text, test.why, test.x, x)
		}
	}
	for _, text := range []string{"", "7 +", "+ 7", "7 - 4 = 3", "7 4", "7 + 4 = ", "x + 4 = 9", "7 + 4 = 11."} {
		if q, err := read(text); err == nil {
			t.Errorf("read(%q): want an error, got %v", text, q)
		}
	}
}
