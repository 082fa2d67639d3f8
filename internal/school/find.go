package school

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"unicode"

	"homebuild/internal/diag"
	"homebuild/internal/pattern"
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
// the nearest first. The words may be part of a sentence or go over several. It looks
// through a language, "es", or through a page of it and those that belong to it, by the
// name at its foot: "es/2026-09-14". Without words it gives all that this page says, in
// its order.
func Find(s *School, in, words string) ([]Found, diag.Diagnostics) {
	tag, _, onPage := strings.Cut(in, "/")
	name, words := strings.TrimSuffix(in, pageEnding), plainWords(words)
	on := func(path string) bool {
		return !onPage || path == name+pageEnding || words != "" && strings.HasPrefix(path, name)
	}
	draft, problems := translate.Open(tag, s.Languages()...)
	if len(problems) > 0 {
		return nil, s.Locate(problems)
	}
	input, problems := s.inputFor(tag)
	if len(problems) > 0 {
		return nil, problems
	}
	planned, _, problems := site.Plan(input)
	if len(problems) > 0 {
		return nil, s.Locate(problems)
	}
	var all []Found
	for _, x := range planned.Sayings(tag, on) {
		if x.Path != "" || !onPage { // titles of other pages are said before the first page
			all = append(all, Found{draft.Place(x.ID), x.Text, x.Path})
		}
	}
	switch {
	case onPage && len(all) == 0:
		return nil, noPage(tag, name, planned.Pages())
	case onPage && words == "":
		return all, nil
	case !onPage:
		for _, p := range draft.Places() { // what none of these weeks says
			all = append(all, Found{Place: p, Said: anyPlace().ReplaceAllString(p.Text, "0")})
		}
	}
	return nearest(all, words), nil
}

const pageEnding = ".html"

// noPage says that a page is not there, and which it may be.
func noPage(tag, name string, all []site.File) diag.Diagnostics {
	var names []string
	for _, f := range all {
		if strings.HasPrefix(f.Path, tag+"/") {
			names = append(names, strings.TrimSuffix(f.Path, pageEnding))
		}
	}
	return diag.Diagnostics{{
		Text: fmt.Sprintf("%s has no page %q", tag, name),
		Hint: diag.Suggest(name, names, "look at the foot of the page, or give the language and some words: homebuild language find "+tag+` "words of the page"`),
	}}
}

var (
	anyPlace  = pattern.Of(`\{\{[^}]*\}\}`)
	anyNumber = pattern.Of(`\p{Nd}+|_{2,}`)
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
	return strings.Join(strings.Fields(typed.Replace(anyNumber().ReplaceAllString(text, "0"))), " ")
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
