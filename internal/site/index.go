package site

import "homebuild/internal/page"

// indexPage is the first page of a language.
type indexPage struct {
	Language *language
	Calendar calendar
	Years    []int // with pages of their own
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
	for _, t := range p.Calendar.recent()[1:].topics() {
		v.Earlier = append(v.Earlier, page.Topic{Name: t.name, Weeks: t.weeks.links(own, to)})
	}
	for _, y := range p.Years {
		if len(p.Calendar.of(y)) > 0 {
			v.Years = append(v.Years, page.YearLink{Year: y, Href: link(own, yearPath(tag, y))})
		}
	}
	if c.address != "" {
		v.Feed = link(own, feedPath(tag))
	}
	return v
}
