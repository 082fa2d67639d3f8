package check

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"fmt"
	"maps"
	"path"
	"regexp"
	"runtime"
	"slices"

	"golang.org/x/sync/errgroup"

	"homebuild/internal/diag"
	"homebuild/internal/recheck"
	"homebuild/internal/site"
	"homebuild/internal/week"
)

// Weighed is a page or a week with the bytes it has as it travels, gzip -9.
type Weighed struct {
	Name  string
	Bytes int
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
			n, err := compressed(html)
			out[i] = weighed{Weighed{f.Path, n}, sha256.Sum256(html)}
			if rendered != nil {
				rendered(len(files))
			}
			return err
		})
	}
	return out, workers.Wait()
}

func compressed(data []byte) (int, error) {
	var b bytes.Buffer
	w, err := gzip.NewWriterLevel(&b, gzip.BestCompression)
	if err != nil {
		return 0, err
	}
	if _, err := w.Write(data); err != nil {
		return 0, err
	}
	if err := w.Close(); err != nil {
		return 0, err
	}
	return b.Len(), nil
}

// inWeek finds the language and the date in the path of a week's page.
var inWeek = regexp.MustCompile(`^(?:([^/]+)/)?(\d{4}-\d{2}-\d{2})[-.]`)

// weights finds pages and weeks that take long to arrive on a weak connection.
func weights(s subject) []Finding {
	const hint = "ask for fewer stories, or shorten the note"
	byDate := map[string]week.Week{}
	for _, w := range s.in.Site.Weeks {
		byDate[w.Date] = w
	}
	at := func(name, text string) Finding {
		if m := inWeek.FindStringSubmatch(name); m != nil {
			return Finding{About: Weight, Problem: byDate[m[2]].Problem("stories", text, hint)}
		}
		return Finding{About: Weight, Problem: diag.Problem{Text: text}}
	}
	var out []Finding
	for _, p := range s.pages {
		if p.Bytes > recheck.MostPage {
			out = append(out, at(p.Name, fmt.Sprintf("the page %s has %d bytes, compressed; it opens at once up to %d", p.Name, p.Bytes, recheck.MostPage)))
		}
	}
	sums := weeksOf(s.pages)
	for _, name := range slices.Sorted(maps.Keys(sums)) {
		if n := sums[name]; n > recheck.MostWeek {
			out = append(out, at(name+".", fmt.Sprintf("the week in %s has %d bytes, compressed; it should stay within %d", path.Dir(name), n, recheck.MostWeek)))
		}
	}
	return out
}

// weeksOf sums the pages of each week in each language: "es/2026-09-14".
func weeksOf(pages []weighed) map[string]int {
	out := map[string]int{}
	for _, p := range pages {
		if m := inWeek.FindStringSubmatch(p.Name); m != nil && m[1] != "" {
			out[m[1]+"/"+m[2]] += p.Bytes
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
