package reading

import (
	"cmp"
	"maps"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// rule says what words a few words stand for: "del" for "de el".
type rule struct{ from, to []string }

// rules are the longest first; "^" stands for the beginning of a sentence.
func rules(table map[string]string) []rule {
	var out []rule
	for _, from := range slices.Sorted(maps.Keys(table)) {
		out = append(out, rule{strings.Fields(from), strings.Fields(table[from])})
	}
	slices.SortStableFunc(out, func(a, b rule) int { return len(b.from) - len(a.from) })
	return out
}

// rewrite replaces words by those that they stand for, so that the rest of the
// reader meets each thing in one form only.
func (c *cues) rewrite(s []token) []token {
	if len(c.rules) == 0 {
		return s
	}
	var out []token
	for i := 0; i < len(s); {
		n, to := 1, []string(nil)
		for _, rule := range c.rules {
			from, first := rule.from, rule.from[0] == "^"
			if first {
				from = from[1:]
			}
			if (!first || i == 0) && startsWith(s[i:], from) > 0 {
				n, to = len(from), rule.to
				break
			}
		}
		if to == nil {
			out = append(out, s[i])
		}
		for j, word := range to {
			out = append(out, token{text: word, low: word, numeral: -1, capital: j == 0 && s[i].capital})
		}
		i += n
	}
	return out
}

// word makes the tokens of a written word: "d'Omar" is two, and so is
// "reste-t-il".
func (c *cues) word(text string) []token {
	text = strings.ReplaceAll(text, "’", "'")
	low := lower(text)
	if len(low) != len(text) {
		text = low
	}
	for _, start := range longest(c.Elisions) {
		if rest, ok := strings.CutPrefix(low, start); ok && rest != "" {
			return append(c.plain(text, c.Elisions[start]), c.word(text[len(start):])...)
		}
	}
	for _, end := range longest(c.Enclitics) {
		if rest, ok := strings.CutSuffix(low, end); ok && rest != "" {
			return append(c.word(text[:len(rest)]), c.plain("", c.Enclitics[end])...)
		}
	}
	return c.plain(text, strings.Trim(low, "'-"))
}

func (c *cues) plain(text, low string) []token {
	first, _ := utf8.DecodeRuneInString(text)
	return []token{{text: text, low: low, numeral: -1, capital: unicode.IsUpper(first)}}
}

// longest lists the keys of a table, the longest first.
func longest(table map[string]string) []string {
	return slices.SortedStableFunc(maps.Keys(table), func(a, b string) int { return cmp.Or(len(b)-len(a), strings.Compare(a, b)) })
}
