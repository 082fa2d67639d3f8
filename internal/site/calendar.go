package site

import (
	"cmp"
	"slices"
	"strconv"

	"homebuild/internal/activity"
	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// calendar is what indexes say of the weeks, newest first.
type calendar []listedWeek

type listedWeek struct {
	date   string
	target phrase.Line
	place  int // of the target in the list of targets; one spelled out stands last
	within int // the range of its numbers: 10, 20, 100 or 1000
}

func (p *Planned) calendar() (c calendar) {
	for _, l := range p.shown {
		c = append(c, p.listed(l))
	}
	slices.Reverse(c)
	return c
}

func (p *Planned) listed(l *lesson) listedWeek {
	place := slices.IndexFunc(p.in.Targets, func(t activity.Target) bool { return t.ID == l.target.ID })
	if place < 0 {
		place = len(p.in.Targets)
	}
	return listedWeek{l.date, l.target.CanLine(), place, problem.RangeOf(l.target.Within)}
}

// only keeps some of the weeks.
func (c calendar) only(keep func(listedWeek) bool) (kept calendar) {
	for _, w := range c {
		if keep(w) {
			kept = append(kept, w)
		}
	}
	return kept
}

// links leads from a page to the weeks.
func (c calendar) links(own string, to func(date string) string) []page.WeekLink {
	out := make([]page.WeekLink, len(c))
	for i, w := range c {
		out[i] = page.WeekLink{Week: w.date, Target: w.target, Href: link(own, to(w.date))}
	}
	return out
}

// onIndex is how many weeks stand on an index, which is opened on phones: more than a
// school year has, however long it is.
const onIndex = 60

// recent are the weeks that stand on an index.
func (c calendar) recent() calendar { return c[:min(len(c), onIndex)] }

// years are those of the weeks that an index has no room for, newest first.
func (c calendar) years() (all []int) {
	for _, w := range c[len(c.recent()):] {
		if y := w.year(); len(all) == 0 || all[len(all)-1] != y {
			all = append(all, y)
		}
	}
	return all
}

// of are the weeks that begin in a year.
func (c calendar) of(year int) calendar {
	return c.only(func(w listedWeek) bool { return w.year() == year })
}

func (w listedWeek) year() int {
	y, _ := strconv.Atoi(w.date[:4]) // week files are checked on reading
	return y
}

// fewWeeks is how many earlier weeks are found at a glance.
const fewWeeks = 3

// topic is some of the weeks under a name, which is empty where all weeks stand
// together.
type topic struct {
	name  phrase.Line
	weeks calendar
}

// topics sorts weeks by what is learned, easiest first: each once, under the range
// of its numbers. A few stay together as they are.
func (c calendar) topics() (all []topic) {
	if len(c) <= fewWeeks {
		if len(c) > 0 {
			all = append(all, topic{weeks: c})
		}
		return all
	}
	sorted := slices.Clone(c)
	slices.SortStableFunc(sorted, func(x, y listedWeek) int {
		return cmp.Or(cmp.Compare(x.within, y.within), cmp.Compare(x.place, y.place))
	})
	for i, w := range sorted {
		if i == 0 || w.within != sorted[i-1].within {
			all = append(all, topic{name: phrase.Say("index.within", phrase.Number("Within", w.within))})
		}
		t := &all[len(all)-1]
		t.weeks = append(t.weeks, w)
	}
	return all
}
