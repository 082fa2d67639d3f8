package recheck

import (
	"fmt"
	"io"
	"maps"
	"slices"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/weight"
)

// Weight is what a page weighs.
type Weight struct {
	Path  string
	Bytes int
	Gzip  int
}

// weigh weighs the page.
func (p *page) weigh() {
	w := Weight{Path: p.path, Bytes: len(p.raw), Gzip: weight.Of(p.raw)}
	p.found.Weights = []Weight{w}
	if w.Gzip > weight.Page && p.folder() != "" {
		p.add("it weighs %d bytes compressed, and should not weigh more than %d", w.Gzip, weight.Page)
	}
}

// weeks weighs every week in every language.
func (c *checker) weeks(r Report) {
	weeks := r.Weeks()
	for _, week := range slices.Sorted(maps.Keys(weeks)) {
		if weeks[week] > weight.Week {
			c.problems = append(c.problems, diag.Problem{
				File: week + ".html", Text: fmt.Sprintf("its week weighs %d bytes compressed, and should not weigh more than %d", weeks[week], weight.Week),
			})
		}
	}
}

// Weeks sums the pages of each week in each language: "es/2026-09-14".
func (r Report) Weeks() map[string]int {
	out := map[string]int{}
	for _, w := range r.Weights {
		if week, ok := weight.WeekOf(w.Path); ok {
			out[week] += w.Gzip
		}
	}
	return out
}

// sort of page, for the table.
func kindOf(path string) string {
	switch {
	case strings.Contains(path, "-try"):
		return "try"
	case strings.HasSuffix(path, printEnd):
		return "print"
	case strings.HasSuffix(path, "-story.html"):
		return "story"
	case strings.Contains(path, "/check/"):
		return "check"
	}
	if _, ok := weight.WeekOf(path); ok {
		return "learn"
	}
	return "index"
}

// Table writes the heaviest page of each sort in each language, and the
// heaviest week.
func (r Report) Table(out io.Writer) {
	heaviest := map[string]map[string]Weight{}
	for _, w := range r.Weights {
		lang, _, ok := strings.Cut(w.Path, "/")
		if !ok {
			lang = "top"
		}
		if heaviest[lang] == nil {
			heaviest[lang] = map[string]Weight{}
		}
		if kind := kindOf(w.Path); w.Gzip > heaviest[lang][kind].Gzip {
			heaviest[lang][kind] = w
		}
	}
	fmt.Fprintf(out, "%-10s %-7s %7s %7s  %s\n", "language", "page", "bytes", "gzip", "the heaviest")
	for _, lang := range slices.Sorted(maps.Keys(heaviest)) {
		for _, kind := range slices.Sorted(maps.Keys(heaviest[lang])) {
			w := heaviest[lang][kind]
			fmt.Fprintf(out, "%-10s %-7s %7d %7d  %s\n", lang, kind, w.Bytes, w.Gzip, w.Path)
		}
	}
	weeks := r.Weeks()
	most := map[string]string{}
	for _, week := range slices.Sorted(maps.Keys(weeks)) {
		lang, _, _ := strings.Cut(week, "/")
		if weeks[week] > weeks[most[lang]] {
			most[lang] = week
		}
	}
	for _, lang := range slices.Sorted(maps.Keys(most)) {
		fmt.Fprintf(out, "%-10s %-7s %7s %7d  %s\n", lang, "week", "", weeks[most[lang]], most[lang])
	}
}
