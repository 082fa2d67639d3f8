package recheck

import (
	"fmt"
	"maps"
	"slices"

	"homebuild/internal/diag"
	"homebuild/internal/weight"
)

// weigh weighs the page: one of no week only as far as to know that it is light enough.
func (p *page) weigh() {
	if _, ok := weight.WeekOf(p.path); !ok && weight.Fits(p.raw) {
		return
	}
	if p.weight = weight.Of(p.raw); p.weight > weight.Page && p.folder() != "" {
		p.add("it weighs %d bytes compressed, and should not weigh more than %d", p.weight, weight.Page)
	}
}

// weeks weighs every week in every language.
func (c *checker) weeks() {
	sums := map[string]int{}
	for _, p := range c.pages {
		if week, ok := weight.WeekOf(p.path); ok {
			sums[week] += p.weight
		}
	}
	for _, week := range slices.Sorted(maps.Keys(sums)) {
		if sums[week] > weight.Week {
			c.problems = append(c.problems, diag.Diagnostic{
				File: week + ".html", Text: fmt.Sprintf("its week weighs %d bytes compressed, and should not weigh more than %d", sums[week], weight.Week),
			})
		}
	}
}
