package site

import (
	"fmt"

	"homebuild/internal/page"
)

// yearPage lists the weeks of a year in one language, where there are more weeks than
// its first page has room for.
type yearPage struct {
	Language *language
	Year     int
	Weeks    calendar
}

func yearPath(tag string, year int) string { return fmt.Sprintf("%s/weeks-%d.html", tag, year) }

func (p yearPage) path() string { return yearPath(p.Language.Tag(), p.Year) }

func (p yearPage) view(c *common) page.View {
	own, tag := p.path(), p.Language.Tag()
	versions := func(tag string) string { return yearPath(tag, p.Year) }
	return &page.Year{
		Layout: c.layout(p.Language, own, versions, frontPath), Year: p.Year,
		Weeks: p.Weeks.links(own, func(date string) string { return learnPath(tag, date) }),
	}
}
