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
func languages(l looked) []Finding {
	held := map[string]*heldBack{}
	for _, tag := range l.in.Site.Languages {
		held[tag] = &heldBack{}
	}
	look := func(id string, note func(*heldBack)) {
		for _, tag := range l.in.Catalog.Without(id) {
			note(held[tag])
		}
	}
	for _, f := range l.in.Stock.Frames {
		look("story."+f.ID, func(h *heldBack) { h.stories = append(h.stories, f.ID) })
	}
	for _, t := range l.in.Stock.Things {
		look(t.ID, func(h *heldBack) { h.things = append(h.things, strings.TrimPrefix(t.ID, "thing.")) })
	}
	for _, p := range l.in.Stock.People {
		look(p, func(h *heldBack) { h.people = append(h.people, strings.TrimPrefix(p, "person.")) })
	}
	for _, e := range l.in.Stock.Extras {
		look("story.extra."+e.ID, func(h *heldBack) { h.extras = append(h.extras, e.ID) })
	}
	var out []Finding
	for _, tag := range l.in.Site.Languages {
		if text := held[tag].String(); text != "" {
			out = append(out, Finding{About: Languages, Problem: diag.Problem{
				File: week.SiteFile, Text: fmt.Sprintf("%s leaves out %s; so no language of this site uses them", tag, text),
				Hint: "the stories use the others; who knows the language can write what is missing",
			}})
		}
	}
	if drafts := draftsOf(l); len(drafts) > 0 {
		out = append(out, Finding{About: Languages, Problem: diag.Problem{
			File: week.SiteFile, Text: "no fluent reader has signed the words of " + strings.Join(drafts, ", ") + " yet; the pages say so",
			Hint: "ask somebody who knows the language well to read a page",
		}})
	}
	return out
}

func draftsOf(l looked) []string {
	var drafts []string
	for _, lang := range l.in.Catalog.Languages() {
		if lang.Draft() {
			drafts = append(drafts, fmt.Sprintf("%s (%s)", lang.Tag(), lang.Name()))
		}
	}
	return drafts
}

// heldBack is what a language has no words for.
type heldBack struct{ stories, things, people, extras []string }

// String lists what is held back, and is empty for nothing.
func (h *heldBack) String() string {
	var parts []string
	for _, p := range []struct {
		what string
		ids  []string
	}{
		{"wordings of stories", h.stories}, {"things to count", h.things}, {"people", h.people}, {"sentences that are not needed", h.extras},
	} {
		if len(p.ids) > 0 {
			parts = append(parts, fmt.Sprintf("%s: %s", p.what, some(p.ids)))
		}
	}
	return strings.Join(parts, "; ")
}

// some names the first few of a list and counts the rest.
func some(words []string) string {
	if len(words) <= shown {
		return strings.Join(words, ", ")
	}
	return fmt.Sprintf("%s and %d more", strings.Join(slices.Clone(words[:shown]), ", "), len(words)-shown)
}
