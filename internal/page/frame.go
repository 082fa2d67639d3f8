package page

import (
	"fmt"
	"path"

	"homebuild/internal/phrase"
)

// policy is the page's content security: its own style and nothing else.
func (s *sheet) policy() string {
	return "default-src 'none'; style-src '" + s.style().hash + "'; base-uri 'none'; form-action 'none'"
}

func (s *sheet) style() style { return s.Theme.styles[s.kind] }

// absolute is a relative link as a full address, where the site's is known:
// search engines want alternates written out.
func (s *sheet) absolute(href string) string {
	if s.Address == "" {
		return href
	}
	return s.Address + path.Join(path.Dir(s.Path), href)
}

func (s *sheet) here(v Version) bool { return v.Language.Tag() == s.Language.Tag() }

// others counts the versions that are neither this one nor the class's.
func (s *sheet) others() int {
	n := 0
	for _, v := range s.Versions {
		if !v.Class && !s.here(v) {
			n++
		}
	}
	return n
}

// String is the date as machines read it (ISO 8601): 2026-09-14.
func (d Date) String() string { return fmt.Sprintf("%04d-%02d-%02d", d.Year, d.Month, d.Day) }

// weekOf is "Week of September 14, 2026"; each language orders the parts, and
// says the first of a month as it likes.
func weekOf(d Date) phrase.Line {
	if d.Day == 1 {
		return phrase.Say("page.week-first", phrase.Message("Month", id("month.", d.Month)), phrase.Number("Year", d.Year))
	}
	return phrase.Say("page.week",
		phrase.Message("Month", id("month.", d.Month)),
		phrase.Number("Day", d.Day), phrase.Number("Year", d.Year))
}

// title is what the browser's tab says.
func (s *sheet) title(l phrase.Line) string { return s.Language.Plain(l) + " · " + s.School }
