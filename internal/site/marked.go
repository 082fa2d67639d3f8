package site

import (
	"slices"

	"homebuild/internal/i18n"
)

// Marked are the pages of a language for somebody who writes it: each message stands
// between marks, and what is still to be written is said in English. Those of the week
// with the date come first. They are for the translator alone and never published; one
// goroutine renders them.
func (p *Planned) Marked(tag, date string, marks *i18n.Marks) []File {
	in := p.in
	in.Catalog = in.Catalog.With(in.language(tag).Marked(in.Catalog.Source(), marks))
	in.Site.Languages = slices.Compact([]string{in.Site.School, tag})
	l := &lister{common: newCommon(in)}
	lang := l.languages[len(l.languages)-1]
	order := []int{p.place(date)}
	for i := range p.lessons {
		if i != order[0] {
			order = append(order, i)
		}
	}
	var listed calendar
	for _, i := range order {
		p.weekPages(l, lang, p.lessons[i], in.Site.Weeks[i])
		listed = append(listed, p.listed(p.lessons[i]))
	}
	l.page(indexPage{lang, listed.recent(), nil})
	l.eachCheckPage(lang, l.page)
	return l.files
}
