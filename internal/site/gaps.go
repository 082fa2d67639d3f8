package site

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/problem"
	"homebuild/internal/story"
	"homebuild/internal/week"
)

// A language has the pages that it can say all of. What a page needs is found by
// making it: the language tells what it is asked for and does not have.

// PageGaps are the messages that a language lacks for one of its pages.
type PageGaps struct {
	Path  string
	Date  string // of the week whose page it is; empty for pages of all weeks
	Layer Layer
	Lacks []string // ids, each once, in the order of the page
	Held  bool     // whether the language holds a story of the week back
}

// Waits reports whether the page cannot be made yet.
func (g PageGaps) Waits() bool { return len(g.Lacks) > 0 || g.Held }

// Layer says when a page is worth a translator's evening.
type Layer uint8

// The layers, in their order.
const (
	ToLearn  Layer = iota + 1 // learn and try
	ToMake                    // the sheet of paper, the child's own story, the week to send
	ToBrowse                  // the first page of the language
	ToCheck                   // any two numbers
)

// Gaps lists what a language lacks for each of its pages, also those of weeks to
// come, oldest week first.
func (p *Planned) Gaps(tag string) []PageGaps {
	var lacks []string
	in := p.in
	in.Catalog = in.Catalog.With(in.language(tag).Telling(func(id string) { lacks = append(lacks, id) }))
	in.Site.Languages = slices.Compact([]string{in.Site.School, tag})
	l := &lister{common: newCommon(in)}
	lang := l.languages[len(l.languages)-1]
	var out []PageGaps
	held := false // whether a story of the week is
	try := func(date string, layer Layer, page pageSource) {
		lacks = nil
		if _, err := l.append(nil, page); err != nil {
			panic(fmt.Sprintf("site: %s: %v", page.path(), err))
		}
		out = append(out, PageGaps{page.path(), date, layer, firstOfEach(lacks), held})
	}
	var told calendar // weeks that can be learned from, newest first
	for i, of := range p.lessons {
		w := in.Site.Weeks[i]
		held = of.heldBy(lang.Language)
		l.eachWeekPage(lang, of, p.whole(l, lang, of, w), func(page pageSource) { try(w.Date, layerOf(page), page) })
		try(w.Date, ToMake, p.whole(l, lang, of, w))
		first := slices.IndexFunc(out, func(g PageGaps) bool { return g.Path == learnPath(tag, w.Date) })
		if w.Shows(p.in.On) && !out[first].Waits() {
			told = slices.Insert(told, 0, p.listed(of))
		}
	}
	held = false
	if len(told) > 0 {
		try("", ToBrowse, indexPage{lang, told, nil})
	} else { // a list of weeks waits for the first of them
		try("", ToBrowse, indexPage{lang, calendar{p.listed(p.lessons[0])}, nil})
		index := &out[len(out)-1]
		index.Lacks, index.Held = append(index.Lacks, out[0].Lacks...), out[0].Held
	}
	l.eachCheckPage(lang, func(page pageSource) { try("", ToCheck, page) })
	return out
}

func layerOf(page pageSource) Layer {
	switch page.(type) {
	case learnPage, tryPage, stepsPage:
		return ToLearn
	case weekCheckPage:
		return ToCheck
	}
	return ToMake
}

// firstOfEach leaves out what was there before.
func firstOfEach(ids []string) []string {
	seen := map[string]bool{}
	return slices.DeleteFunc(slices.Clone(ids), func(id string) bool {
		again := seen[id]
		seen[id] = true
		return again
	})
}

// findUnmade finds the paths of the pages that languages cannot say.
func (p *Planned) findUnmade() map[string]bool {
	var out map[string]bool
	choosing, _ := p.in.choosing()
	for _, tag := range p.in.Site.Languages {
		if tag == p.in.Site.School || p.in.language(tag).Whole() && slices.Contains(choosing, tag) && !p.in.language(tag).HoldsBack() {
			continue
		}
		if out == nil {
			out = map[string]bool{}
		}
		for _, g := range p.Gaps(tag) {
			if g.Waits() {
				out[g.Path] = true
			}
		}
		if out[indexPath(tag)] {
			out[feedPath(tag)] = true
			for _, y := range p.calendar().years() {
				out[yearPath(tag, y)] = true
			}
		}
	}
	return out
}

// choosing are the languages that have a say in which stories are told, and the events
// that all of them tell: the class's own, and each that leaves stories of every kind to
// tell. Of the others a week has a page where they tell its stories.
func (in Input) choosing() (tags []string, told story.Places) {
	told = in.Places
	others := slices.DeleteFunc(slices.Clone(in.Site.Languages), func(tag string) bool { return tag == in.Site.School })
	for i, tag := range append([]string{in.Site.School}, others...) {
		lang, ok := in.Catalog.Language(tag)
		if !ok {
			continue
		}
		tells := func(id string) bool { return lang.Has(id) && !lang.Holds(id) }
		if fewer := told.Only(tells); i == 0 || len(told.Lost(fewer)) == 0 {
			tags, told = append(tags, tag), fewer
		}
	}
	return tags, told
}

// held tells which kinds of stories a language with a say in them holds back; nil where
// none does.
func (in Input) held() func(problem.Kind) bool {
	if !slices.ContainsFunc(in.Site.Languages, func(tag string) bool { return in.language(tag).HoldsBack() }) {
		return nil
	}
	choosing, _ := in.choosing()
	return func(k problem.Kind) bool {
		return slices.ContainsFunc(choosing, func(tag string) bool { return in.language(tag).HoldsKind(k) })
	}
}

// unheld is a target without the kinds of stories that are held back; false, and as it
// is, where no kind would be left.
func unheld(t activity.Target, held func(problem.Kind) bool) (activity.Target, bool) {
	if held == nil {
		return t, true
	}
	kinds := slices.DeleteFunc(slices.Clone(t.Kinds), held)
	if len(kinds) == 0 {
		return t, false
	}
	t.Kinds = kinds
	return t, true
}

// heldBy reports whether a language holds a story of the lesson back.
func (l *lesson) heldBy(lang *i18n.Language) bool {
	return slices.ContainsFunc(slices.Concat(l.exercises(), l.ladder), func(e exercise) bool {
		return e.Story.Own == nil && (lang.Holds(e.Story.Event) || lang.HoldsKind(e.Problem.Kind()))
	})
}

// Chooses reports whether a language has a say in which stories are told.
func (in Input) Chooses(tag string) bool {
	tags, _ := in.choosing()
	return slices.Contains(tags, tag)
}

// Withheld tells which languages do not have all pages yet, and why.
func (p *Planned) Withheld() diag.Diagnostics {
	unmade := p.unmade()
	var out diag.Diagnostics
	for _, tag := range p.in.Site.Languages {
		weeks, shown := 0, 0
		for w := range p.shown {
			shown++
			if !unmade[learnPath(tag, w.Date)] {
				weeks++
			}
		}
		own := 0
		for path := range unmade {
			if isOf(path, tag) {
				own++
			}
		}
		waiting, hint := "texts are still to be written", "homebuild language next "+tag+" says which"
		if lang := p.in.language(tag); lang.Whole() && lang.HoldsBack() {
			waiting, hint = "it holds stories back until a fluent reader has signed it", "hold in its file says which"
		}
		if own > 0 {
			out = append(out, diag.Diagnostic{
				File: week.SiteFile, Text: fmt.Sprintf("%s has its page in %d of %d weeks so far, and %d pages wait: %s", withName(p.in.language(tag)), weeks, shown, own, waiting),
				Hint: hint,
			})
		}
	}
	return out
}

// isOf reports whether a page is one of a language's.
func isOf(path, tag string) bool { return strings.HasPrefix(path, tag+"/") }

func withName(l *i18n.Language) string { return fmt.Sprintf("%s (%s)", l.Tag(), l.Name()) }
