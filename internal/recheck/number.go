package recheck

import (
	"strings"
	"unicode"

	"golang.org/x/net/html"
)

// digit gives the value of a decimal digit of any script. Unicode guarantees
// that the ten digits of a script stand in order and together (The Unicode
// Standard, 4.6 "Numeric Value").
func digit(r rune) (int, bool) {
	for _, t := range unicode.Nd.R16 {
		if rune(t.Lo) <= r && r <= rune(t.Hi) {
			return int(r-rune(t.Lo)) % 10, true
		}
	}
	for _, t := range unicode.Nd.R32 {
		if rune(t.Lo) <= r && r <= rune(t.Hi) {
			return int(r-rune(t.Lo)) % 10, true
		}
	}
	return 0, false
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

// numbers reads the numbers of a text, in order.
func numbers(s string) []int {
	var out []int
	open := false
	for _, r := range clean(s) {
		d, ok := digit(r)
		switch {
		case !ok:
			open = false
		case open:
			out[len(out)-1] = out[len(out)-1]*10 + d
		default:
			out, open = append(out, d), true
		}
	}
	return out
}

// told are the numbers of the marked runs below n. A run without a digit, a
// number word or a dual, is counted in hidden.
func told(n *html.Node) (seen []int, hidden int) {
	for _, run := range all(n, both(tag("b"), class("n"))) {
		if found := numbers(text(run)); len(found) > 0 {
			seen = append(seen, found...)
		} else {
			hidden++
		}
	}
	return seen, hidden
}
