package school

import (
	"cmp"
	"regexp"
	"slices"
	"strings"
	"unicode"

	"homebuild/internal/diag"
	"homebuild/internal/site"
	"homebuild/internal/translate"
)

// Found is where words of a page come from.
type Found struct {
	translate.Place
	Said string // as the page says it
	Page string // the first one that does; empty where no week of the folder says it
}

// mostFound is as many as one looks through.
const mostFound = 8

// fewLetters are too few to know a message by when it is part of what was looked for.
const fewLetters = 6

// Find tells which messages say some words of a page, in whatever numbers and things:
// the nearest first. The words may be part of a sentence or go over several.
func (s *School) Find(tag, words string) ([]Found, diag.Diagnostics) {
	draft, problems := translate.Open(tag, s.Languages()...)
	if len(problems) > 0 {
		return nil, s.Locate(problems)
	}
	in, problems := s.inputFor(tag)
	if len(problems) > 0 {
		return nil, problems
	}
	planned, _, problems := site.Plan(in)
	if len(problems) > 0 {
		return nil, s.Locate(problems)
	}
	var all []Found
	for _, x := range planned.Sayings(tag) {
		all = append(all, Found{draft.Place(x.ID), x.Text, x.Path})
	}
	for _, p := range draft.Places() { // what none of these weeks says
		all = append(all, Found{Place: p, Said: anyPlace.ReplaceAllString(p.Text, "0")})
	}
	return nearest(all, plainWords(words)), nil
}

var (
	anyPlace  = regexp.MustCompile(`\{\{[^}]*\}\}`)
	anyNumber = regexp.MustCompile(`\p{Nd}+|_{2,}`)
)

// nearest are those that say the words, the nearest first, each message once.
func nearest(all []Found, wanted string) []Found {
	near := map[string]int{} // by what is said
	of := func(f Found) int {
		n, known := near[f.Said]
		if !known {
			n = nearness(plainWords(f.Said), wanted)
			near[f.Said] = n
		}
		return n
	}
	all = slices.DeleteFunc(all, func(f Found) bool { return of(f) == 0 })
	slices.SortStableFunc(all, func(a, b Found) int { return cmp.Compare(of(b), of(a)) })
	var out []Found
	for _, f := range all {
		if len(out) < mostFound && !slices.ContainsFunc(out, func(have Found) bool { return have.ID == f.ID }) {
			out = append(out, f)
		}
	}
	return out
}

// typed are quotation marks and apostrophes as keyboards have them.
var typed = strings.NewReplacer("’", "'", "‘", "'", "“", `"`, "”", `"`, "„", `"`)

// plainWords are words without what differs between a page and what people type of it:
// numbers, spaces, signs that turn the direction, capitals, the shape of quotation marks.
func plainWords(text string) string {
	text = strings.Map(func(c rune) rune {
		if unicode.Is(unicode.Bidi_Control, c) {
			return -1
		}
		return unicode.ToLower(c)
	}, text)
	return strings.Join(strings.Fields(typed.Replace(anyNumber.ReplaceAllString(text, "0"))), " ")
}

// nearness says how near a text is to what was looked for: the same, a text that has
// it, or the longer part of it; 0 for none of these.
func nearness(text, wanted string) int {
	const same, around = 3 << 20, 2 << 20
	switch {
	case wanted == "" || text == "":
		return 0
	case text == wanted:
		return same
	case strings.Contains(text, wanted):
		return around - len(text)
	case len([]rune(text)) >= fewLetters && strings.Contains(wanted, text):
		return len(text)
	}
	return 0
}
