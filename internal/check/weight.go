package check

import (
	"crypto/sha256"
	"fmt"
	"maps"
	"path"
	"runtime"
	"slices"

	"golang.org/x/sync/errgroup"

	"homebuild/internal/diag"
	"homebuild/internal/site"
	"homebuild/internal/week"
	"homebuild/internal/weight"
)

// Weighed is a page or a week with the bytes it has as it travels, gzip -9.
type Weighed struct {
	Name  string `json:"name"`
	Bytes int    `json:"bytes"`
}

// weighed is a page.
type weighed struct {
	Weighed
	sum [sha256.Size]byte
}

// weigh makes every page, on all processors.
func weigh(files []site.File, rendered func(of int)) ([]weighed, error) {
	out := make([]weighed, len(files))
	var workers errgroup.Group
	workers.SetLimit(runtime.GOMAXPROCS(0))
	for i, f := range files {
		workers.Go(func() error {
			html, err := f.Render()
			if err != nil {
				return err
			}
			out[i] = weighed{Weighed{f.Path, weight.Of(html)}, sha256.Sum256(html)}
			if rendered != nil {
				rendered(len(files))
			}
			return nil
		})
	}
	return out, workers.Wait()
}

// Weights weighs the pages of one week in one language.
func Weights(in site.Input, planned *site.Planned, date, tag string) (diag.Diagnostics, error) {
	pages, err := weigh(planned.WeekPages(date, tag), nil)
	return weights(subject{in: in, pages: pages}), err
}

// weights finds pages and weeks that take long to arrive on a weak connection.
func weights(s subject) diag.Diagnostics {
	const hint = "fewer stories or a shorter note help, where the page has them; one that is a little over opens a moment later"
	byDate := map[string]week.Week{}
	for _, w := range s.in.Site.Weeks {
		byDate[w.Date] = w
	}
	at := func(code, name, text string) diag.Diagnostic {
		p := diag.Diagnostic{Text: text}
		if w, ok := byDate[site.DateOf(name)]; ok {
			p = w.Problem("stories", text, hint)
		}
		p.Code, p.Value = code, path.Dir(name)
		return p
	}
	var out diag.Diagnostics
	for _, p := range s.pages {
		if p.Bytes > weight.Page {
			out = append(out, at(diag.HeavyPage, p.Name, fmt.Sprintf("the page %s has %d bytes, compressed; it opens at once up to %d", p.Name, p.Bytes, weight.Page)))
		}
	}
	sums := weeksOf(s.pages)
	for _, name := range slices.Sorted(maps.Keys(sums)) {
		if n := sums[name]; n > weight.Week {
			out = append(out, at(diag.HeavyWeek, name, fmt.Sprintf("the week in %s has %d bytes, compressed; it should stay within %d", path.Dir(name), n, weight.Week)))
		}
	}
	return out
}

// weeksOf sums the pages of each week in each language: "es/2026-09-14".
func weeksOf(pages []weighed) map[string]int {
	out := map[string]int{}
	for _, p := range pages {
		if week, ok := weight.WeekOf(p.Name); ok {
			out[week] += p.Bytes
		}
	}
	return out
}

func heaviestWeek(pages []weighed) Weighed {
	var heaviest Weighed
	sums := weeksOf(pages)
	for _, name := range slices.Sorted(maps.Keys(sums)) {
		if sums[name] > heaviest.Bytes {
			heaviest = Weighed{name, sums[name]}
		}
	}
	return heaviest
}
