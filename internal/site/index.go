package site

import (
	"cmp"
	"encoding/xml"
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/i18n"
	"homebuild/internal/page"
)

func pageDate(date string) page.Date {
	var d page.Date
	if _, err := fmt.Sscanf(date, "%d-%d-%d", &d.Year, &d.Month, &d.Day); err != nil {
		panic("site: " + date + " is not a date") // week files are checked on reading
	}
	return d
}

// weekLinks lists the weeks newest first, linked from a page.
func (b *builder) weekLinks(own string, to func(date string) string) []page.WeekLink {
	var out []page.WeekLink
	for _, l := range slices.Backward(b.lessons) {
		out = append(out, page.WeekLink{
			Date: pageDate(l.week.Date), Target: l.target.CanLine(), Href: link(own, to(l.week.Date)),
		})
	}
	return out
}

// weekly is the link a teacher shares.
func (b *builder) weekly(l *lesson) {
	own := weeklyPath(l.week.Date)
	b.add(own, true, madeFrom{b.ids.all, l.listed()}, func() page.View {
		to := func(tag string) string { return learnPath(tag, l.week.Date) }
		return &page.Weekly{
			Frame: b.frame(b.school, own, nil, ""), Week: pageDate(l.week.Date),
			Target: l.target.CanLine(), Versions: b.versions(own, to),
		}
	})
}

func (b *builder) home(lang *i18n.Language) {
	own := homePath(lang.Tag())
	b.add(own, true, madeFrom{b.of(lang), b.ids.calendar}, func() page.View {
		frame := b.frame(lang, own, homePath, "index.html")
		if b.Site.Address != "" {
			frame.Feed = link(own, feedPath(lang.Tag()))
		}
		weeks := b.weekLinks(own, func(date string) string { return learnPath(lang.Tag(), date) })
		return &page.Home{
			Frame: frame, Weeks: weeks, ByTarget: b.byTarget(weeks), Check: link(own, checkPath(lang.Tag())),
		}
	})
}

func (b *builder) front() {
	b.add("index.html", true, madeFrom{b.ids.all, b.ids.calendar}, func() page.View {
		return &page.Front{
			Frame: b.frame(b.school, "index.html", nil, ""),
			Homes: b.versions("index.html", homePath),
			Weeks: b.weekLinks("index.html", weeklyPath),
		}
	})
	b.add("404.html", true, madeFrom{b.ids.all}, func() page.View {
		return &page.NotFound{
			Frame: b.frame(b.school, "404.html", nil, ""),
			Homes: b.versions("404.html", homePath),
		}
	})
}

// fewWeeks is how many weeks are found at a glance.
const fewWeeks = 4

// byTarget sorts week links, which are newest first, by what is learned: in the
// order of the list of targets, a target spelled out last.
func (b *builder) byTarget(weeks []page.WeekLink) []page.WeekLink {
	if len(weeks) <= fewWeeks {
		return nil
	}
	place := map[string]int{}
	for i, t := range b.Targets {
		place[t.ID] = i - len(b.Targets)
	}
	at := map[page.Date]int{}
	for _, l := range b.lessons {
		at[pageDate(l.week.Date)] = place[l.target.ID]
	}
	out := slices.Clone(weeks)
	slices.SortStableFunc(out, func(x, y page.WeekLink) int { return cmp.Compare(at[x.Date], at[y.Date]) })
	return out
}

// sitemap lists every page for search engines, where the teacher wants that and
// the site knows its address (sitemaps.org protocol 0.9, from memory).
func (b *builder) sitemap() {
	if !b.Site.Index || b.Site.Address == "" {
		return
	}
	var pages []string
	for _, f := range b.files {
		if strings.HasSuffix(f.Path, ".html") && f.Path != "404.html" {
			pages = append(pages, f.Path)
		}
	}
	b.file("sitemap.xml", true, madeFrom{b.Site.Address, strings.Join(pages, "\n")}, func() ([]byte, error) {
		type entry struct {
			Location string `xml:"loc"`
		}
		list := struct {
			XMLName xml.Name `xml:"http://www.sitemaps.org/schemas/sitemap/0.9 urlset"`
			Pages   []entry  `xml:"url"`
		}{}
		for _, p := range pages {
			list.Pages = append(list.Pages, entry{b.Site.Address + p})
		}
		return encodeXML(list)
	})
}
