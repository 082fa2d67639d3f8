package i18n

import (
	"strconv"
	"strings"
	"unicode/utf8"
)

// ending is a text whose start is the one form that fits the sound before it.
type ending func(before, text string) string

// endings are those of a language by its tag.
var endings = map[string]ending{"ko": withParticle, "so": withArticle}

// particle is a Korean particle that has one form behind a consonant and another
// behind a vowel, as a language file writes both.
type particle struct {
	both, consonant, vowel string
	asVowel                rune // a consonant behind which the form of vowels stands; 0 for none
}

// particles are those that can stand behind a name or a number (Korean orthography;
// from memory).
var particles = []particle{
	{both: "은(는)", consonant: "은", vowel: "는"},
	{both: "이(가)", consonant: "이", vowel: "가"},
	{both: "을(를)", consonant: "을", vowel: "를"},
	{both: "과(와)", consonant: "과", vowel: "와"},
	{both: "이에요(예요)", consonant: "이에요", vowel: "예요"},
	{both: "(으)로", consonant: "으로", vowel: "로", asVowel: 'ㄹ'},
}

// withParticle is a text with the one form of the particle at its start that fits
// what stands before it. Behind a line to write on, or in other scripts, both forms
// stay.
func withParticle(before, text string) string {
	for _, p := range particles {
		rest, ok := strings.CutPrefix(text, p.both)
		if !ok {
			continue
		}
		switch final, known := finalOf(before); {
		case !known:
			return text
		case final == 0 || final == p.asVowel:
			return p.vowel + rest
		default:
			return p.consonant + rest
		}
	}
	return text
}

// digitFinals are the consonants that the digits end in when a number is read: 영
// (십, 백 and 천 end in one as well), 일, 이, 삼, 사, 오, 육, 칠, 팔, 구.
var digitFinals = [10]rune{0: 'ㅇ', 1: 'ㄹ', 3: 'ㅁ', 6: 'ㄱ', 7: 'ㄹ', 8: 'ㄹ'}

// finalOf is the consonant that a word or number is spoken to end in; 0 for a vowel.
// Only whether there is one, and whether it is ㄹ, is told truly.
func finalOf(word string) (final rune, known bool) {
	last, _ := utf8.DecodeLastRuneInString(word)
	switch {
	case '0' <= last && last <= '9':
		return digitFinals[last-'0'], true
	case last < '가' || last > '힣':
		return 0, false
	}
	// A syllable is 28 finals apart from the next vowel, none first, ㄹ the eighth
	// (The Unicode Standard, 3.12 "Conjoining Jamo Behavior").
	switch (last - '가') % 28 {
	case 0:
		return 0, true
	case 8:
		return 'ㄹ', true
	}
	return 'ㅇ', true
}

// article is the Somali article behind a number, as a language file writes it.
const article = "-ka(da, ta)"

// withArticle is a text with the article at its start as the number before it is
// spoken: kowda, afarta, tobanka are 1-da, 4-ta, 10-ka, and kow iyo labaatanka 21-ka
// (Somali orthography; from memory).
func withArticle(before, text string) string {
	rest, ok := strings.CutPrefix(text, article)
	if !ok {
		return text
	}
	n, err := strconv.Atoi(before)
	switch n %= 100; {
	case err != nil:
		return text
	case n == 4 || n == 5:
		return "-ta" + rest
	case 1 <= n && n <= 8:
		return "-da" + rest
	}
	return "-ka" + rest
}
