package site

import (
	"slices"
	"sync"

	"homebuild/internal/i18n"
	"homebuild/internal/page"
	"homebuild/internal/problem"
)

// common is what every page of a site is made from.
type common struct {
	theme     *page.Theme
	address   string // where the site lives, ending in "/"; empty when not known
	indexed   bool   // search engines are welcome
	languages []*language
	class     *language // the language of the class
	checks    func() []*page.CheckPairs
	unmade    map[string]bool // paths of pages that their language cannot say yet
	sum       string          // names what every page says of all this
}

// language is a language of the site.
type language struct {
	*i18n.Language
	school     string // what the school is called in it
	characters func() *page.Cards
	settings   map[problem.Situation]*settings
	sum        string
}

// Sum names the language with all its messages, and what the school is called.
func (l *language) Sum() string { return l.sum }

func newCommon(in Input) *common {
	c := &common{theme: in.Theme, address: in.Site.Address, indexed: in.Site.Index, checks: sync.OnceValue(newChecks)}
	var others []any // what a page says of languages other than its own
	for _, tag := range in.Site.Languages {
		lang := in.language(tag)
		l := &language{Language: lang, school: in.Site.Name.In(tag, in.Site.School)}
		l.settings = map[problem.Situation]*settings{}
		for s := problem.AddTo; s <= problem.Compare; s++ {
			l.settings[s] = l.newSettings(ideas(in.Places.Only(lang.Has), s))
		}
		l.characters = sync.OnceValue(l.newCharacters)
		l.sum = digest(lang.Sum(), tag, l.school)
		c.languages = append(c.languages, l)
		if tag == in.Site.School {
			c.class = l
		}
		others = append(others, tag, l.Name(), l.RightToLeft(), l == c.class)
	}
	c.sum = digest(in.Theme.Sum(), c.address, c.indexed, others)
	return c
}

// language is one of the site's, which were all loaded.
func (in Input) language(tag string) *i18n.Language {
	l, ok := in.Catalog.Language(tag)
	if !ok {
		panic("site: language " + tag + " was not loaded")
	}
	return l
}

// layout is what every page of a language has; versions says where the same
// page stands in another language, or is nil where it stands in one only, and
// pick is the page where a language is picked.
func (c *common) layout(lang *language, own string, versions func(tag string) string, pick string) page.Layout {
	l := page.Layout{
		Language: lang.Language, Theme: c.theme, Path: own, School: lang.school,
		Address: c.address, Indexed: c.indexed,
	}
	if home := indexPath(lang.Tag()); own != home && !c.unmade[home] {
		l.Home = link(own, home)
	}
	if pick != "" && pick != own {
		l.Default = link(own, pick)
	}
	if versions != nil {
		l.Versions = c.versions(own, versions)
	}
	return l
}

// versions are a page in every language, the class's first: it is the one that the
// school surely knows of a family.
func (c *common) versions(own string, to func(tag string) string) []page.Version {
	out := make([]page.Version, 0, len(c.languages))
	for _, l := range c.languages {
		path := to(l.Tag())
		if c.unmade[path] {
			continue
		}
		v := page.Version{Language: l.Language, Href: link(own, path), Path: path, Class: l == c.class}
		if v.Class {
			out = slices.Insert(out, 0, v)
		} else {
			out = append(out, v)
		}
	}
	return out
}

// week is what the pages of a lesson have in common.
func (c *common) week(lang *language, l *lesson, path func(tag, date string) string) page.WeekPage {
	own := path(lang.Tag(), l.date)
	versions := func(tag string) string { return path(tag, l.date) }
	return page.WeekPage{
		Layout: c.layout(lang, own, versions, weeklyPath(l.date)),
		Week:   l.date, Target: l.target.CanLine(), Links: c.links(lang.Tag(), l, own),
	}
}

// deskLayout is a layout without links: what lies on the desk leads nowhere.
func (c *common) deskLayout(own string) page.Layout {
	return page.Layout{Language: c.class.Language, Theme: c.theme, Path: own, School: c.class.school}
}

// links leads from one page of a week to the others.
func (c *common) links(tag string, l *lesson, own string) page.Links {
	date, check := l.date, checkPath(tag)
	if l.numbers != nil {
		check = weekCheckPath(tag, date)
	}
	to := func(path string) string {
		if path == own {
			return ""
		}
		return c.link(own, path)
	}
	return page.Links{
		Learn: to(learnPath(tag, date)), Try: to(tryPath(tag, date)), Invent: to(inventPath(tag, date)),
		Check: to(check), Print: to(printPath(tag, date)),
	}
}
