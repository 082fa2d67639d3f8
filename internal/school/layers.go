package school

import (
	"cmp"
	"io/fs"
	"slices"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/site"
	"homebuild/internal/translate"
	"homebuild/internal/week"
)

// Layer is some of the pages that a language could have, in the order in which they
// are of use to families.
type Layer struct {
	Name   string             `json:"name"`   // what families get by it
	Pages  int                `json:"pages"`  // that it has
	Made   int                `json:"made"`   // of Pages, those that can be said already
	Wanted []translate.Wanted `json:"wanted"` // what they wait for, beyond what earlier layers do
}

// Words is how many English words a layer waits for.
func (l Layer) Words() int {
	n := 0
	for _, w := range l.Wanted {
		n += w.Words
	}
	return n
}

// Layers tells what a translator's evenings bring families, the next one first: the
// page of the newest week, its stories to try, what goes with them, the other weeks,
// the check pages. The weeks are the folder's, or those of the example where it has
// none.
func Layers(s *School, tag string) (*translate.Draft, []Layer, diag.Diagnostics) {
	b, problems := OpenBench(s, tag)
	if len(problems) > 0 {
		return nil, nil, problems
	}
	return b.Draft, b.Layers, nil
}

// Bench is all that a translator has before her: her file, what it still lacks, and
// the pages that it is for.
type Bench struct {
	Draft  *translate.Draft
	Layers []Layer
	Pages  []site.File // see site.Marked; none while the file has something to mend
	Marks  *i18n.Marks
}

// OpenBench opens that of a language. Problems mean that its file cannot be understood at
// all.
func OpenBench(s *School, tag string) (*Bench, diag.Diagnostics) {
	draft, problems := translate.Open(tag, s.Languages()...)
	if len(problems) > 0 {
		return nil, s.Locate(problems)
	}
	if len(draft.Problems) > 0 { // to be mended first
		return &Bench{Draft: draft}, nil
	}
	in, problems := s.inputFor(tag)
	if len(problems) > 0 {
		return nil, problems
	}
	planned, _, problems := site.Plan(in)
	if len(problems) > 0 {
		return nil, s.Locate(problems)
	}
	b := &Bench{Draft: draft, Layers: layersOf(draft, planned.Gaps(tag), newest(in)), Marks: &i18n.Marks{}}
	b.Pages = planned.Marked(tag, newest(in), b.Marks)
	return b, nil
}

// newest is the date of the week that families see first.
func newest(in site.Input) string {
	if showing := in.Site.Showing(in.On); len(showing) > 0 {
		return showing[len(showing)-1].Date
	}
	return in.Site.Weeks[0].Date
}

// layersOf sorts the pages of a language into layers.
func layersOf(draft *translate.Draft, gaps []site.PageGaps, week string) []Layer {
	layers := []struct {
		name string
		has  func(site.PageGaps) bool
	}{
		{"the page of the week " + week, func(g site.PageGaps) bool { return g.Date == week && g.Path == site.LearnPath(draft.Status.Tag, week) }},
		{"its stories to try", func(g site.PageGaps) bool { return g.Date == week && g.Layer == site.ToLearn }},
		{"its sheet of paper, the child's own story, the list of weeks", func(g site.PageGaps) bool {
			return g.Layer == site.ToBrowse || g.Date == week && g.Layer == site.ToMake
		}},
		{"the weeks after it", func(g site.PageGaps) bool { return g.Date > week && g.Layer != site.ToCheck }},
		{"earlier weeks", func(g site.PageGaps) bool { return g.Date != "" && g.Date < week && g.Layer != site.ToCheck }},
		{"the check pages", func(g site.PageGaps) bool { return true }},
	}
	out := make([]Layer, len(layers))
	sorted, asked := map[string]bool{}, map[string]bool{}
	for i, l := range layers {
		out[i].Name = l.name
		for _, g := range gaps {
			if !sorted[g.Path] && l.has(g) {
				sorted[g.Path] = true
				out[i].add(g, draft, asked)
			}
		}
	}
	return slices.DeleteFunc(out, func(l Layer) bool { return l.Pages == 0 })
}

// add counts a page, and wants the messages that it lacks and nothing before it asked
// for.
func (l *Layer) add(g site.PageGaps, draft *translate.Draft, asked map[string]bool) {
	l.Pages++
	if len(g.Lacks) == 0 {
		l.Made++
	}
	for _, id := range g.Lacks {
		if asked[id] {
			continue
		}
		asked[id] = true
		w := draft.Wanted(id)
		w.Page = g.Path
		l.Wanted = append(l.Wanted, w)
	}
}

// inputFor is what pages in the class's language and in another are made from: the
// folder's own weeks, or those of the example where it holds language files alone.
func (s *School) inputFor(tag string) (site.Input, diag.Diagnostics) {
	weeks := s
	if _, err := fs.Stat(s.files, week.SiteFile); err != nil {
		weeks = Example()
		weeks.Today = cmp.Or(s.Today, weeks.Today)
	}
	in, problems := weeks.Load()
	if len(problems) > 0 {
		return in, problems
	}
	in.Site.Languages = []string{in.Site.School}
	if tag != in.Site.School {
		in.Site.Languages = append(in.Site.Languages, tag)
	}
	if in.Catalog, problems = i18n.Load(in.Site.Languages, s.Languages()...); len(problems) > 0 {
		return in, s.Locate(problems)
	}
	return in, nil
}
