package site

import (
	"homebuild/internal/page"
	"homebuild/internal/phrase"
)

// weeklyPage is the link that a teacher shares: the week in every language.
type weeklyPage struct {
	Languages []*language
	Date      string
	Target    phrase.Line
}

func weeklyPath(date string) string { return date + ".html" }

func (p weeklyPage) path() string { return weeklyPath(p.Date) }

func (p weeklyPage) view(c *common) page.View {
	own := p.path()
	return &page.Weekly{
		Layout: c.layout(c.class, own, nil, ""), Week: p.Date, Target: p.Target,
		Languages: c.versions(own, func(tag string) string { return learnPath(tag, p.Date) }),
	}
}
