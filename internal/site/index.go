package site

import (
	"fmt"
	"slices"

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
		return &page.Home{
			Frame: frame,
			Weeks: b.weekLinks(own, func(date string) string { return learnPath(lang.Tag(), date) }),
			Check: link(own, checkPath(lang.Tag())),
		}
	})
}

func (b *builder) front() {
	b.add("index.html", true, madeFrom{b.of(b.school), b.ids.calendar}, func() page.View {
		return &page.Front{
			Frame: b.frame(b.school, "index.html", nil, ""),
			Homes: b.versions("index.html", homePath),
			Weeks: b.weekLinks("index.html", weeklyPath),
		}
	})
	b.add("404.html", true, madeFrom{b.of(b.school)}, func() page.View {
		return &page.NotFound{
			Frame: b.frame(b.school, "404.html", nil, ""),
			Homes: b.versions("404.html", homePath),
		}
	})
}
