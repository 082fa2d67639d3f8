package pofile

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"homebuild/internal/i18n"
	"homebuild/internal/pattern"
)

// most is the number up to which an expression is held against the plural rule.
const most = 1000

// pluralForms is the head's Plural-Forms for categories: how many there are, and an
// expression that says for a number n which one is its.
func pluralForms(rule *i18n.Plurals, categories []i18n.Category) string {
	var asked []i18n.Category // those that some whole number has
	for _, c := range categories {
		if rule.Needs(c) {
			asked = append(asked, c)
		}
	}
	var b strings.Builder
	for _, c := range asked[:len(asked)-1] {
		fmt.Fprintf(&b, "%s ? %d : ", condition(rule, c), slices.Index(categories, c))
	}
	return fmt.Sprintf("nplurals=%d; plural=%s%d;", len(categories), b.String(), slices.Index(categories, asked[len(asked)-1]))
}

// condition is true for the numbers of a category. CLDR's rules look at a number as a
// whole where it is small, and else at its last digits: so does it.
func condition(rule *i18n.Plurals, c i18n.Category) string {
	small, later := map[int]bool{}, map[int]bool{} // by the last two digits
	for n := range 100 {
		small[n] = rule.Of(n) == c
		later[n] = rule.Of(100+n) == c
	}
	ever := lastDigits(later)
	if ever != "" {
		ever += but("n", func(n int) bool { return later[n] && !small[n] })
	}
	once := spans("n", func(n int) bool { return small[n] && !later[n] }, 100)
	switch {
	case ever == "":
		return once
	case once == "":
		return ever
	}
	return ever + " || " + once
}

// lastDigits is true for numbers that end in one of some pairs of digits: by the last
// digit and exceptions, or pair by pair, whichever is shorter; empty for no number.
func lastDigits(in map[int]bool) string {
	ends := map[int]bool{}
	for n := range 100 {
		ends[n%10] = ends[n%10] || in[n]
	}
	byPair := spans("n%100", func(n int) bool { return in[n] }, 100)
	byEnd := spans("n%10", func(n int) bool { return ends[n] }, 10)
	if except := but("n%100", func(n int) bool { return ends[n%10] && !in[n] }); except != "" {
		if strings.Contains(byEnd, "||") {
			byEnd = "(" + byEnd + ")"
		}
		byEnd += except
	}
	if len(byPair) <= len(byEnd) {
		return byPair
	}
	return byEnd
}

// span are numbers from one to another.
type span struct{ first, last int }

func spansOf(in func(int) bool, below int) []span {
	var out []span
	for n := 0; n < below; n++ {
		if !in(n) {
			continue
		}
		s := span{n, n}
		for s.last+1 < below && in(s.last+1) {
			s.last++
		}
		out = append(out, s)
		n = s.last
	}
	return out
}

// spans is true for the numbers of a set below some limit.
func spans(what string, in func(int) bool, below int) string {
	var or []string
	for _, s := range spansOf(in, below) {
		if s.first == s.last {
			or = append(or, fmt.Sprintf("%s==%d", what, s.first))
		} else {
			or = append(or, fmt.Sprintf("%s>=%d && %s<=%d", what, s.first, what, s.last))
		}
	}
	return strings.Join(or, " || ")
}

// but takes the numbers of a set below 100 out.
func but(what string, out func(int) bool) string {
	var b strings.Builder
	for _, s := range spansOf(out, 100) {
		if s.first == s.last {
			fmt.Fprintf(&b, " && %s!=%d", what, s.first)
		} else {
			fmt.Fprintf(&b, " && (%s<%d || %s>%d)", what, s.first, what, s.last)
		}
	}
	return b.String()
}

// headForms takes a Plural-Forms apart.
var headForms = pattern.Of(`^\s*nplurals\s*=\s*(\d+)\s*;\s*plural\s*=\s*([^;]+?)\s*;?\s*$`)

// categoriesOf are the categories of msgstr[0], msgstr[1] and so on, by asking the
// head's expression for each number. A form that no number takes is of the categories
// that no number has, in their order.
func categoriesOf(head string, rule *i18n.Plurals, categories []i18n.Category) ([]i18n.Category, error) {
	m := headForms().FindStringSubmatch(head)
	if m == nil || len(m[2]) > 1000 {
		return nil, errors.New("the head has no Plural-Forms that can be read")
	}
	count, _ := strconv.Atoi(m[1])
	which, err := compile(m[2])
	if err != nil || count < 1 || count > len(i18n.Categories()) {
		return nil, errors.New("the head has no Plural-Forms that can be read")
	}
	out := slices.Repeat([]i18n.Category{none}, count)
	for n := range most + 1 {
		at, c := which(n), rule.Of(n)
		if at < 0 || at >= count || out[at] != none && out[at] != c {
			return nil, fmt.Errorf("by the head's Plural-Forms %d has the form %d, and so has a number of another kind", n, at)
		}
		out[at] = c
	}
	for i := range out {
		for _, c := range categories {
			if out[i] == none && !rule.Needs(c) && !slices.Contains(out, c) {
				out[i] = c
			}
		}
	}
	return out, nil
}

// none marks a form that no category has.
const none = i18n.Other + 1
