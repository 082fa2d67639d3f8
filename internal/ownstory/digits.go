package ownstory

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"homebuild/internal/pattern"
)

// runs are digits of any script, and words with their hyphens.
var runs = pattern.Of(`\p{Nd}+|\p{L}[\p{L}\p{M}'’-]*`)

// unspaced are digits of any script, and single letters.
var unspaced = pattern.Of(`\p{Nd}+|\p{L}`)

// numerals finds the whole numbers of a plain text, whatever signs of money or of a
// unit stand at them. Digits that belong to something else, such as 3.50,
// 7:30, 1/2, 2nd or A4, are none.
func (l Language) numerals(s string) []Numeral {
	var out []Numeral
	end := 0 // of the last number
	starts, word := runs, l.wordAt
	if l.joined.Measures != "" {
		starts, word = unspaced, l.unspacedAt
	}
	for _, run := range starts().FindAllStringIndex(s, -1) {
		if run[0] < end { // a later word of "treinta y uno"
			continue
		}
		n, ok := Numeral{}, false
		if first, _ := utf8.DecodeRuneInString(s[run[0]:]); unicode.IsDigit(first) {
			n, ok = digitsAt(s, run[0], run[1])
		} else {
			n, ok = word(s, run[0])
		}
		if ok {
			n = l.dozens(s, n)
			out, end = append(out, n), n.End
		}
	}
	return out
}

// dozens takes the word in that makes twelves of the number before it: "2 dozen".
func (l Language) dozens(s string, n Numeral) Numeral {
	behind := strings.TrimLeft(s[n.End:], " ")
	for _, word := range l.joined.Dozens {
		if len(behind) < len(word) || !strings.EqualFold(behind[:len(word)], word) {
			continue
		}
		next, _ := utf8.DecodeRuneInString(behind[len(word):])
		if l.joined.Measures != "" || !unicode.IsLetter(next) {
			n.Value, n.End = 12*n.Value, len(s)-len(behind)+len(word)
			break
		}
	}
	return n
}

// digitsAt reads the digits between two places.
func digitsAt(s string, start, end int) (Numeral, bool) {
	value, ok := number(s[start:end])
	from, to := withSigns(s, start, end)
	return Numeral{Value: value, Start: start, End: end}, ok && alone(s, from, to)
}

// withSigns are digits with the signs of their money and unit: "$35", "60cm".
func withSigns(s string, start, end int) (from, to int) {
	if before, size := utf8.DecodeLastRuneInString(s[:start]); unicode.Is(unicode.Sc, before) {
		start -= size
	}
	return start, end + len(units().FindString(s[end:]))
}

// units are signs that stand at the digits: of money in any script, and of measures
// (SI Brochure, 9th edition, tables 2 and 7, and 8; those of the United States by
// NIST Handbook 44, appendix C; from memory).
var units = pattern.Of(`^(?:\p{Sc}|(?:mm|cm|dm|km|mg|kg|ml|mL|cl|dl|min|in|ft|yd|mi|oz|lb|m|g|l|L)\b)`)

// nameBefore is the word with a capital that stands before a place, "Room" in "Room
// 4"; inside says that it does not begin a sentence, where any word has a capital.
func nameBefore(s string, at int) (word string, inside bool) {
	from := wordBefore(s, at)
	first, _ := utf8.DecodeRuneInString(s[from:])
	if from == at || s[at-1] != ' ' || !unicode.IsUpper(first) {
		return "", false
	}
	earlier, _ := utf8.DecodeLastRuneInString(strings.TrimRight(s[:from], " "))
	return s[from:at], from > 0 && s[from-1] == ' ' && unicode.IsLetter(earlier)
}

// findNames marks the numbers behind names: words with a capital that stand before a
// number inside a sentence, wherever they stand before one.
func (t Text) findNames() {
	names := map[string]bool{}
	for _, n := range t.Numerals {
		if word, inside := nameBefore(t.Plain, n.Start); inside {
			names[word] = true
		}
	}
	for i, n := range t.Numerals {
		word, _ := nameBefore(t.Plain, n.Start)
		t.Numerals[i].behindName = !n.Word && names[word]
	}
}

// mostRead is where numbers are no longer read: a telephone number is not counted
// with. Numbers above problem.Largest are read, so that they can be told of.
const mostRead = 1_000_000

// number reads digits of any script.
func number(digits string) (int, bool) {
	n := 0
	for _, c := range digits {
		if n = n*10 + digit(c); n > mostRead {
			return 0, false
		}
	}
	return n, true
}

// digit is the value of a decimal digit. The ten digits of a script stand together
// and in order (The Unicode Standard, 4.6 "Numeric Value").
func digit(c rune) int {
	before := 0
	for unicode.IsDigit(c - 1 - rune(before)) {
		before++
	}
	return before % 10
}

// joints are signs that make one thing of the digits on both sides: 3.50, 7:30,
// 1/2.
const joints = ".,:/٫٬"

// alone reports whether digits are not part of something longer.
func alone(s string, start, end int) bool {
	before, beforeSize := utf8.DecodeLastRuneInString(s[:start])
	after, afterSize := utf8.DecodeRuneInString(s[end:])
	switch {
	case unicode.Is(unicode.Latin, before) || unicode.Is(unicode.Latin, after): // A4, 2nd
		return false
	case strings.ContainsRune("%°-−", before) || strings.ContainsRune("%°", after):
		return false
	case strings.ContainsRune(joints, before):
		earlier, _ := utf8.DecodeLastRuneInString(s[:start-beforeSize])
		return !unicode.IsDigit(earlier)
	case strings.ContainsRune(joints, after):
		later, _ := utf8.DecodeRuneInString(s[end+afterSize:])
		return !unicode.IsDigit(later)
	}
	return true
}
