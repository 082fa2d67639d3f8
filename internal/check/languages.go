package check

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/week"
)

// shown is how many names are told before "and 3 more".
const shown = 6

// languages says which language keeps what out of every page, and which are
// drafts.
func languages(s subject) []Finding {
	var out []Finding
	for _, tag := range s.in.Site.Languages {
		if missing := missingIn(s, tag); len(missing) > 0 {
			out = append(out, Finding{About: Languages, Problem: diag.Problem{
				File: week.SiteFile, Text: fmt.Sprintf("%s leaves out %s; so no language of this site uses them", tag, strings.Join(missing, "; ")),
				Hint: "the stories use the others; who knows the language can write what is missing",
			}})
		}
	}
	if drafts := draftsOf(s); len(drafts) > 0 {
		out = append(out, Finding{About: Languages, Problem: diag.Problem{
			File: week.SiteFile, Text: "no fluent reader has signed the words of " + strings.Join(drafts, ", ") + " yet; the pages say so",
			Hint: "ask somebody who knows the language well to read a page",
		}})
	}
	return out
}

func draftsOf(s subject) []string {
	var drafts []string
	for _, lang := range s.in.Catalog.Languages() {
		if lang.Draft() {
			drafts = append(drafts, fmt.Sprintf("%s (%s)", lang.Tag(), lang.Name()))
		}
	}
	return drafts
}

// missingIn says what a language has no words for: "people: Omar, Nila".
func missingIn(s subject, tag string) []string {
	var out []string
	add := func(what, prefix string, ids []string) {
		ids = slices.DeleteFunc(ids, func(id string) bool {
			return !slices.Contains(s.in.Catalog.Without(prefix+id), tag)
		})
		if len(ids) > 0 {
			out = append(out, what+": "+some(ids))
		}
	}
	var stories, things, people, extras []string
	for _, f := range s.in.Stock.Frames {
		stories = append(stories, f.ID)
	}
	for _, t := range s.in.Stock.Things {
		things = append(things, strings.TrimPrefix(t.ID, "thing."))
	}
	for _, p := range s.in.Stock.People {
		people = append(people, strings.TrimPrefix(p, "person."))
	}
	for _, e := range s.in.Stock.Extras {
		extras = append(extras, e.ID)
	}
	add("wordings of stories", "story.", stories)
	add("things to count", "thing.", things)
	add("people", "person.", people)
	add("sentences that are not needed", "story.extra.", extras)
	return out
}

// some names the first few of a list and counts the rest.
func some(words []string) string {
	if len(words) <= shown {
		return strings.Join(words, ", ")
	}
	return fmt.Sprintf("%s and %d more", strings.Join(slices.Clone(words[:shown]), ", "), len(words)-shown)
}
