package site

import (
	"cmp"
	"slices"
	"sync"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/output"
	"homebuild/internal/page"
	"homebuild/internal/story"
	"homebuild/internal/week"
)

// Input is everything a site is made from.
type Input struct {
	Site    week.Site
	Catalog *i18n.Catalog
	Targets []activity.Target
	Places  story.Places
	Theme   *page.Theme
	WarmUps []WarmUp
	// On is the day that the pages are made for: weeks that families do not see
	// on it are planned, and have no pages. Empty shows every week.
	On string
	// Program names the bytes of the program, which every page depends on;
	// without it files have no keys.
	Program string
	// Planner, if any, plans the weeks, for somebody who plans often: not for several
	// callers at a time.
	Planner *activity.Planner
}

// File is one file of the site, not yet rendered.
type File = output.File

// Planned is a site whose weeks are worked out, not yet listed as files.
type Planned struct {
	in       Input
	lessons  []*lesson // of the weeks of the site, in their order: oldest first
	requests []activity.Request
	unmade   func() map[string]bool // paths of pages that their language cannot say; worked out once
}

func newPlanned(in Input, lessons []*lesson, requests []activity.Request) *Planned {
	p := &Planned{in: in, lessons: lessons, requests: requests}
	p.unmade = sync.OnceValue(p.findUnmade)
	return p
}

// Plan works out every week. Problems are for the teacher to mend; when there
// are any, nothing is planned. Notices do not stop a build.
func Plan(in Input) (p *Planned, notices, problems diag.Diagnostics) {
	lessons, requests, notices, problems := plan(in)
	if len(problems) > 0 {
		return nil, notices, problems
	}
	return newPlanned(in, lessons, requests), notices, nil
}

// Request is what the mathematics was asked for the i-th week.
func (p *Planned) Request(i int) activity.Request { return p.requests[i] }

// Assemble plans a site and lists its pages.
func Assemble(in Input) (files []File, notices, problems diag.Diagnostics) {
	p, notices, problems := Plan(in)
	if len(problems) > 0 {
		return nil, notices, problems
	}
	return p.Pages(), notices, nil
}

func (p *Planned) lister() *lister {
	c := newCommon(p.in)
	if c.unmade = p.unmade(); len(c.unmade) > 0 {
		c.sum = digest(c.sum, c.unmade)
	}
	return &lister{common: c, program: p.in.Program}
}

// shown yields the weeks that families see, with their lessons.
func (p *Planned) shown(yield func(week.Week, *lesson) bool) {
	for i, w := range p.in.Site.Weeks {
		if w.Shows(p.in.On) && !yield(w, p.lessons[i]) {
			return
		}
	}
}

// Choices are the stories of a week that were chosen, not written by the teacher,
// the worked one first and those of the ladder last: what it takes to tell them
// again.
func (p *Planned) Choices(date string) []week.KeptStory {
	i, found := slices.BinarySearchFunc(p.lessons, date, func(l *lesson, date string) int { return cmp.Compare(l.date, date) })
	if !found {
		return nil
	}
	var out []week.KeptStory
	for _, e := range slices.Concat(p.lessons[i].exercises(), p.lessons[i].ladder) {
		if e.Given {
			continue
		}
		kept := week.KeptStory{Choice: e.Story.Choice(), Rung: e.Rung}
		if (e.Returns || e.Rung != activity.WeeksOwn) && p.in.Target(e.Of) != nil {
			kept.Of = e.Of
		}
		out = append(out, kept)
	}
	return out
}

// Pages lists the files to publish: pages first, those of one week together,
// then the indexes that link to them. At least one week must show.
func (p *Planned) Pages() []File {
	l := p.lister()
	for w, lesson := range p.shown {
		for _, lang := range l.languages {
			p.weekPages(l, lang, lesson, w)
		}
	}
	for _, lang := range l.languages {
		l.eachCheckPage(lang, l.page)
	}
	pages := len(l.files)
	shown := map[string]string{}
	for w, lesson := range p.shown {
		shown[w.Date] = w.ShowFrom
		l.page(weeklyPage{l.languages, lesson.date, lesson.target.CanLine()})
	}
	calendar := p.calendar()
	for _, lang := range l.languages {
		own := calendar.only(func(w listedWeek) bool { return !l.unmade[learnPath(lang.Tag(), w.date)] })
		l.index(lang, own, calendar.years())
		if l.address != "" && !l.unmade[feedPath(lang.Tag())] {
			l.data(newFeed(l.address, lang, own, shown))
		}
	}
	l.page(frontPage{l.languages, calendar})
	l.page(notFoundPage{l.languages})
	if l.indexed && l.address != "" {
		l.data(newSitemap(l.address, l.files))
	}
	for i := range l.files[pages:] {
		l.files[pages+i].Index = true
	}
	return l.files
}

// index lists the first page of a language, and those of years, which every language
// has.
func (l *lister) index(lang *language, weeks calendar, years []int) {
	l.page(indexPage{lang, weeks, years})
	for _, y := range years {
		l.page(yearPage{lang, y, weeks.of(y)})
	}
}

// weekPages lists the pages of one week in one language.
func (p *Planned) weekPages(l *lister, lang *language, of *lesson, w week.Week) {
	l.eachWeekPage(lang, of, p.whole(l, lang, of, w), l.page)
}

func (l *lister) eachWeekPage(lang *language, of *lesson, whole wholeFile, page func(pageSource)) {
	page(whole.Learn)
	first := 0
	for place, end := range pagesToTry(of.stories) {
		page(tryPage{lang, of, place, first, end})
		first = end
	}
	for place, rungs := range of.pagesOfSteps() {
		page(stepsPage{lang, of, place, rungs})
	}
	page(whole.Invent)
	if of.numbers != nil {
		page(weekCheckPage{lang, of})
	}
	page(whole.Print)
}

func (l *lister) eachCheckPage(lang *language, page func(pageSource)) {
	page(checkIndexPage{lang})
	for first := range checkLargest + 1 {
		page(checkPage{lang, first})
	}
}

// whole are the pages of one week in one language.
func (p *Planned) whole(l *lister, lang *language, of *lesson, w week.Week) wholeFile {
	return wholeFile{
		Learn:  learnPage{lang, l.class, of, w.Minutes, warmUp(p.in.WarmUps, w.WarmUp, of), !w.HasNote, l.note(w, lang), p.in.Site.Words},
		Try:    tryPage{lang, of, 0, 0, len(of.stories)},
		Invent: inventPage{lang, of, lang.settings[of.situation()]},
		Print:  printPage{lang, l.class, of, p.in.Site.Answers != week.AnswersLink, p.in.Site.Words},
	}
}

// Desk lists the teacher's own files, a folder a week: the answer key, the
// messages to send, the code of the link and slips to cut; and, for the newest
// week that shows and for others that are asked for, the week in one file for
// each language, to be sent, and the sheets of all languages, to be printed. They
// stand beside the published folder, never inside it.
func (p *Planned) Desk(send ...string) []File {
	l := p.lister()
	if showing := p.in.Site.Showing(p.in.On); len(showing) > 0 {
		send = append(send, showing[len(showing)-1].Date)
	}
	for i, lesson := range p.lessons {
		l.page(keyPage{l.class, lesson})
		for _, m := range p.Messages(lesson.date) {
			l.data(m)
		}
		if slices.Contains(send, lesson.date) {
			sheets := sheetsPage{Date: lesson.date}
			for _, lang := range l.languages {
				whole := p.whole(l, lang, lesson, p.in.Site.Weeks[i])
				l.page(whole)
				if !l.unmade[whole.Print.path()] {
					sheets.Sheets = append(sheets.Sheets, whole.Print)
				}
			}
			l.page(sheets)
		}
		if l.address == "" {
			continue
		}
		address := l.address + weeklyPath(lesson.date)
		l.data(codePNG{lesson.date, address})
		l.data(codeSVG{lesson.date, address})
		l.page(slipsPage{l.sayingSlips(lesson.date), lesson.date, address})
	}
	return l.files
}
