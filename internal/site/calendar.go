package site

import (
	"cmp"
	"slices"

	"homebuild/internal/activity"
	"homebuild/internal/page"
	"homebuild/internal/phrase"
)

// calendar is what indexes say of the weeks, newest first.
type calendar []listedWeek

type listedWeek struct {
	date   string
	target phrase.Line
	place  int // of the target in the list of targets; one spelled out stands last
}

func (p *Planned) calendar() (c calendar) {
	for _, l := range p.shown {
		place := slices.IndexFunc(p.in.Targets, func(t activity.Target) bool { return t.ID == l.target.ID })
		if place < 0 {
			place = len(p.in.Targets)
		}
		c = append(c, listedWeek{l.date, l.target.CanLine(), place})
	}
	slices.Reverse(c)
	return c
}

// links leads from a page to the weeks.
func (c calendar) links(own string, to func(date string) string) []page.WeekLink {
	out := make([]page.WeekLink, len(c))
	for i, w := range c {
		out[i] = page.WeekLink{Week: w.date, Target: w.target, Href: link(own, to(w.date))}
	}
	return out
}

// fewWeeks is how many weeks are found at a glance.
const fewWeeks = 4

// byTopic leaves this week at the head and sorts the earlier ones by what is
// learned, easiest first, unless they are few.
func (c calendar) byTopic() calendar {
	if len(c) <= fewWeeks {
		return c
	}
	sorted := slices.Clone(c)
	slices.SortStableFunc(sorted[1:], func(x, y listedWeek) int { return cmp.Compare(x.place, y.place) })
	return sorted
}
