package readability

import (
	"strings"
	"unicode"
)

// ends are the marks that end a sentence. Unicode: Arabic question mark, Urdu
// full stop, danda, Ethiopic full stop and question mark, ideographic and
// fullwidth marks.
const ends = ".?!…؟۔।።፧。？！"

// Sentences splits a text. Something without an end mark, such as a button, is
// not a sentence and is left out.
func Sentences(text string) []string {
	var out []string
	runes := []rune(text)
	start := 0
	for i, r := range runes {
		if !strings.ContainsRune(ends, r) || inEquation(runes, i) {
			continue
		}
		if i+1 < len(runes) && strings.ContainsRune(ends, runes[i+1]) {
			continue // the last of several marks ends the sentence
		}
		if s := strings.TrimSpace(string(runes[start : i+1])); len(Words(s)) > 0 {
			out = append(out, s)
		}
		start = i + 1
	}
	return out
}

// inEquation reports whether the mark at i is the unknown of an equation, as in
// 8 + ? = 14.
func inEquation(runes []rune, i int) bool {
	if runes[i] != '?' {
		return false
	}
	rest := strings.TrimLeftFunc(string(runes[i+1:]), unicode.IsSpace)
	return rest != "" && strings.ContainsAny(rest[:1], "=+-") || strings.HasPrefix(rest, "−")
}

// Words splits a text into words and numbers.
func Words(text string) []string {
	var out []string
	runes := []rune(text)
	start := -1
	for i := 0; i <= len(runes); i++ {
		if i < len(runes) && inWord(runes, i) {
			if start < 0 {
				start = i
			}
			continue
		}
		if start >= 0 {
			out = append(out, strings.ReplaceAll(string(runes[start:i]), "’", "'"))
			start = -1
		}
	}
	return out
}

// inWord reports whether the rune at i belongs to a word: a letter or a digit, or
// an apostrophe or hyphen between two of them.
func inWord(runes []rune, i int) bool {
	letter := func(i int) bool {
		return i >= 0 && i < len(runes) && (unicode.IsLetter(runes[i]) || unicode.IsMark(runes[i]) || unicode.IsDigit(runes[i]))
	}
	return letter(i) || strings.ContainsRune("'’-", runes[i]) && letter(i-1) && letter(i+1)
}

// isNumber reports whether a word is written in digits.
func isNumber(word string) bool {
	return strings.IndexFunc(word, func(r rune) bool { return !unicode.IsDigit(r) }) < 0
}
