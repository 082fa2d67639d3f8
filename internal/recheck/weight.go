package recheck

import (
	"compress/gzip"
	"fmt"
	"io"
	"maps"
	"slices"
	"strings"

	"homebuild/internal/diag"
)

// Limits of weight in bytes as they travel, compressed with gzip -9. A page of
// 14,000 bytes comes with the first answer of a fresh connection: the initial
// window is 14,600 bytes (RFC 6928, section 2), less what the headers take.
const (
	MostPage = 14_000
	MostWeek = 60_000 // all pages of one week in one language
)

// Weight is what a page weighs.
type Weight struct {
	Path  string
	Bytes int
	Gzip  int
}

// counter counts what is written to it.
type counter int

func (n *counter) Write(b []byte) (int, error) {
	*n += counter(len(b))
	return len(b), nil
}

func gzipped(raw []byte) int {
	var n counter
	w, err := gzip.NewWriterLevel(&n, gzip.BestCompression)
	if err != nil {
		panic(err) // the level is gzip's own
	}
	if _, err := w.Write(raw); err != nil {
		panic(err) // a counter takes everything
	}
	if err := w.Close(); err != nil {
		panic(err)
	}
	return int(n)
}

// weigh weighs the page.
func (p *page) weigh() {
	w := Weight{Path: p.path, Bytes: len(p.raw), Gzip: gzipped(p.raw)}
	p.found.Weights = []Weight{w}
	if w.Gzip > MostPage && p.folder() != "" {
		p.add("it weighs %d bytes compressed, and should not weigh more than %d", w.Gzip, MostPage)
	}
}

// weeks weighs every week in every language.
func (c *checker) weeks(r Report) {
	weeks := r.Weeks()
	for _, week := range slices.Sorted(maps.Keys(weeks)) {
		if weeks[week] > MostWeek {
			c.problems = append(c.problems, diag.Problem{
				File: week + ".html", Text: fmt.Sprintf("its week weighs %d bytes compressed, and should not weigh more than %d", weeks[week], MostWeek),
			})
		}
	}
}

// Weeks sums the pages of each week in each language: "es/2026-09-14".
func (r Report) Weeks() map[string]int {
	out := map[string]int{}
	for _, w := range r.Weights {
		if week, ok := weekOf(w.Path); ok {
			out[week] += w.Gzip
		}
	}
	return out
}

// weekOf is the language and the date of a week's page.
func weekOf(path string) (string, bool) {
	lang, file, ok := strings.Cut(path, "/")
	if !ok || len(file) < len("2026-09-14.html") || strings.Count(file[:10], "-") != 2 {
		return "", false
	}
	return lang + "/" + file[:10], true
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
	if _, ok := weekOf(path); ok {
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
