package site

import "homebuild/internal/page"

// indexPage is the first page of a language.
type indexPage struct {
	Language *language
	Calendar calendar
}

func indexPath(tag string) string { return tag + "/index.html" }

func (p indexPage) path() string { return indexPath(p.Language.Tag()) }

func (p indexPage) view(c *common) page.View {
	own, tag := p.path(), p.Language.Tag()
	to := func(date string) string { return learnPath(tag, date) }
	v := &page.Index{
		Layout: c.layout(p.Language, own, indexPath, frontPath), Weeks: p.Calendar.byTopic().links(own, to),
		ByTopic: len(p.Calendar) > fewWeeks, Check: link(own, checkPath(tag)),
	}
	if c.address != "" {
		v.Feed = link(own, feedPath(tag))
	}
	return v
}
