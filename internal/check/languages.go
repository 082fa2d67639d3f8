package check

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/site"
	"homebuild/internal/week"
)

// languages says which language keeps what out of every page, and which are
// drafts.
func languages(s subject) diag.Diagnostics {
	var out diag.Diagnostics
	for _, tag := range s.in.Site.Languages {
		if !s.in.Chooses(tag) {
			out = append(out, diag.Diagnostic{
				File: week.SiteFile, Text: tag + " does not tell stories of every kind yet; it has the pages of weeks whose stories it tells",
				Hint: "\"homebuild language status\" says what it cannot tell; who knows the language can write it",
				Code: diag.TellsFew, Value: tag,
			})
			continue
		}
		if missing := missingIn(s, tag); len(missing) > 0 {
			out = append(out, diag.Diagnostic{
				File: week.SiteFile, Text: fmt.Sprintf("%s leaves out %s; so no language of this site uses them", tag, strings.Join(missing, "; ")),
				Hint: "the stories use the others; who knows the language can write what is missing",
				Code: diag.LeavesOut, Value: tag,
			})
		}
	}
	for _, lang := range s.in.Catalog.Languages() {
		if unused := lang.Unused(); len(unused) > 0 {
			out = append(out, diag.Diagnostic{
				File: unused[0].File, Line: unused[0].Line, Text: diag.Amount(len(unused), "text", "texts") + " of no page left out, this one first",
				Hint: fmt.Sprintf("\"homebuild language check %s\" says which, and what may have been meant", lang.Tag()),
			})
		}
	}
	drafts, partly := unread(s)
	if len(drafts) > 0 {
		out = append(out, diag.Diagnostic{
			File: week.SiteFile, Text: "no fluent reader has signed the words of " + strings.Join(drafts, ", ") + " yet; the pages say so",
			Hint: "ask somebody who knows the language well to read a page",
			Code: diag.Draft,
		})
	}
	if len(partly) > 0 {
		out = append(out, diag.Diagnostic{
			File: week.SiteFile, Text: "some words of " + strings.Join(partly, ", ") + " are newer than their signature; the pages say so",
			Hint: "\"homebuild language check\" says which; a fluent reader reads them and signs again",
			Code: diag.Newer,
		})
	}
	return out
}

// Language says what families of one language get otherwise than the others, without
// making any page: the codes of what a check would find.
func Language(in site.Input, tag string) []string {
	lang, ok := in.Catalog.Language(tag)
	if !ok {
		return nil
	}
	var out []string
	switch {
	case !in.Chooses(tag):
		out = append(out, diag.TellsFew)
	case len(in.Places.Only(lang.Has).Events()) < len(in.Places.Events()):
		out = append(out, diag.LeavesOut)
	}
	switch {
	case lang.Draft():
		out = append(out, diag.Draft)
	case lang.PartlyRead():
		out = append(out, diag.Newer)
	}
	return out
}

// unread are the languages that no fluent reader has signed, and those of which some
// words are newer than that.
func unread(s subject) (drafts, partly []string) {
	for _, lang := range s.in.Catalog.Languages() {
		name := fmt.Sprintf("%s (%s)", lang.Tag(), lang.Name())
		switch {
		case lang.Draft():
			drafts = append(drafts, name)
		case lang.PartlyRead():
			partly = append(partly, name)
		}
	}
	return drafts, partly
}

// missingIn says which stories a language does not tell: the places of which it
// tells nothing, and single events.
func missingIn(s subject, tag string) []string {
	var places, events []string
	all, told := s.in.Places, s.in.Places.Only(func(id string) bool { return !slices.Contains(s.in.Catalog.Without(id), tag) })
	for i, p := range all {
		if len(told[i].Events) == 0 {
			places = append(places, p.ID)
			continue
		}
		for _, e := range p.Events {
			if !slices.Contains(told[i].Events, e) {
				events = append(events, e.ID)
			}
		}
	}
	var out []string
	if len(places) > 0 {
		out = append(out, "all that happens in: "+some(places))
	}
	if len(events) > 0 {
		out = append(out, "events: "+some(events))
	}
	return out
}

// some names the first few of a list and counts the rest.
func some(words []string) string { return diag.Some(words, 6) }
