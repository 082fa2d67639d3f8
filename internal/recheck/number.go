package recheck

import (
	"strconv"
	"strings"
	"unicode"

	"golang.org/x/net/html"

	"homebuild/internal/pattern"
)

// digit gives the value of a decimal digit of any script. Unicode guarantees
// that the ten digits of a script stand in order and together (The Unicode
// Standard, 4.6 "Numeric Value").
func digit(r rune) (int, bool) {
	if !unicode.IsDigit(r) {
		return 0, false
	}
	zero := r
	for unicode.IsDigit(zero - 1) {
		zero--
	}
	return int(r-zero) % 10, true
}

// clean drops the marks that only steer the direction of writing, and the soft
// hyphen.
func clean(s string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\u200e', r == '\u200f', r == '\u061c', r == '\u00ad', r >= '\u202a' && r <= '\u202e', r >= '\u2066' && r <= '\u2069':
			return -1
		}
		return r
	}, s)
}

// european writes the digits of any script as European ones.
func european(s string) string {
	return strings.Map(func(r rune) rune {
		if d, ok := digit(r); ok {
			return rune('0' + d)
		}
		return r
	}, clean(s))
}

var number = pattern.Of(`[0-9]+`)

// numbers reads the numbers of a text, in order.
func numbers(s string) []int {
	var out []int
	for _, word := range number().FindAllString(european(s), -1) {
		if n, err := strconv.Atoi(word); err == nil {
			out = append(out, n)
		}
	}
	return out
}

// told are the numbers of the marked runs below n. A run without a digit, a
// number word or a dual, is counted in hidden.
func told(n *html.Node) (seen []int, hidden int) {
	for _, run := range all(n, "b.n") {
		if found := numbers(text(run)); len(found) > 0 {
			seen = append(seen, found...)
		} else {
			hidden++
		}
	}
	return seen, hidden
}
