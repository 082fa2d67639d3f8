package i18n

import (
	"strconv"
	"strings"
	"testing"

	"golang.org/x/text/unicode/norm"
)

func TestWithParticle(t *testing.T) {
	tests := []struct{ before, text, want string }{
		{"미나", "은(는) 셋", "는 셋"},
		{"준", "은(는) 셋", "은 셋"},
		{"준", "이(가)", "이"},
		{"9", "이(가)", "가"},
		{"12", "이(가)", "가"},
		{"13", "과(와) 4", "과 4"},
		{"4", "과(와) 13", "와 13"},
		{"100", "을(를)", "을"},
		{"45", "을(를)", "를"},
		{"7", "(으)로", "로"},
		{"6", "(으)로", "으로"},
		{"10", "(으)로", "으로"},
		{"서울", "(으)로", "로"},
		{"15", "이에요(예요).", "예요."},
		{"____", "을(를)", "을(를)"},
		{"Ann", "은(는)", "은(는)"},
		{"", "은(는)", "은(는)"},
		{"준", " 은(는)", " 은(는)"},
	}
	for _, test := range tests {
		if got := withParticle(test.before, test.text); got != test.want {
			t.Errorf("%q + %q: want %q, got %q", test.before, test.text, test.want, got)
		}
	}
}

// The article of a day is that of the last word of its number: kowda, labada, saddexda,
// afarta, shanta, lixda, toddobada, siddeedda, sagaalka, tobanka, and kow iyo tobanka,
// kow iyo labaatanka (from memory).
func TestWithArticle(t *testing.T) {
	days := strings.Fields("1-da 2-da 3-da 4-ta 5-ta 6-da 7-da 8-da 9-ka 10-ka 11-ka 14-ka 18-ka 20-ka 21-ka 24-ka 26-ka 30-ka 31-ka")
	for _, day := range days {
		before, _, _ := strings.Cut(day, "-")
		if got := before + withArticle(before, "-ka(da, ta) Maarso"); got != day+" Maarso" {
			t.Errorf("want %s, got %q", day, got)
		}
	}
	for _, before := range []string{"", "Sahra", "____"} {
		if got := withArticle(before, article); got != article {
			t.Errorf("behind %q the article became %q", before, got)
		}
	}
	if got := withArticle("4", " Maarso"); got != " Maarso" {
		t.Errorf("another text became %q", got)
	}
}

// The last consonant of every syllable is that of its decomposition (The Unicode
// Standard, 3.12; normal form D by golang.org/x/text), and that of every number
// is the one of its last word, as CLDR spells it (common/rbnf/ko.xml,
// "spellout-cardinal-sinokorean").
func TestFinalOf(t *testing.T) {
	const firstFinal, rieul, lastFinal = 'ᆨ', 'ᆯ', 'ᇂ' // U+11A8, U+11AF, U+11C2
	spoken := func(word string) rune {
		letters := []rune(norm.NFD.String(word))
		switch last := letters[len(letters)-1]; {
		case last == rieul:
			return 'ㄹ'
		case firstFinal <= last && last <= lastFinal:
			return 'ㅇ'
		}
		return 0
	}
	same := func(word string, want rune) {
		got, known := finalOf(word)
		if !known || (got == 0) != (want == 0) || (got == 'ㄹ') != (want == 'ㄹ') {
			t.Errorf("%s: want %q, got %q", word, want, got)
		}
	}
	for c := '가'; c <= '힣'; c++ {
		same(string(c), spoken(string(c)))
	}
	ones := []string{"영", "일", "이", "삼", "사", "오", "육", "칠", "팔", "구"}
	for n := range 1001 {
		word := ones[n%10]
		switch {
		case n == 1000:
			word = "천"
		case n > 0 && n%100 == 0:
			word = "백"
		case n > 0 && n%10 == 0:
			word = "십"
		}
		same(strconv.Itoa(n), spoken(word))
	}
}
