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
		Layout: c.layout(p.Language, own, indexPath, frontPath), This: p.Calendar[:1].links(own, to)[0],
		Check: c.link(own, checkPath(tag)),
	}
	for _, t := range p.Calendar[1:].topics() {
		v.Earlier = append(v.Earlier, page.Topic{Name: t.name, Weeks: t.weeks.links(own, to)})
	}
	if c.address != "" {
		v.Feed = link(own, feedPath(tag))
	}
	return v
}
