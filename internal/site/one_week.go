package site

import (
	"slices"

	"homebuild/internal/activity"
	"homebuild/internal/picture"
	"homebuild/internal/story"
	"homebuild/internal/week"
)

// Exercise is a story of a week worked out, for a teacher to look at.
type Exercise struct {
	Story   story.Story
	Picture picture.Picture  // with its unknown open
	Returns *activity.Target // of the earlier week that it brings back; nil for its own week's
}

// Exercises are the stories of a week, the worked one first; none for a date that
// has no week.
func (p *Planned) Exercises(date string) []Exercise {
	l := p.lesson(date)
	if l == nil {
		return nil
	}
	var out []Exercise
	for _, e := range l.exercises() {
		x := Exercise{Story: e.Story, Picture: l.pictureOf(e, picture.Open)}
		if e.Returns {
			x.Returns = p.in.Target(e.Of)
		}
		out = append(out, x)
	}
	return out
}

func (p *Planned) lesson(date string) *lesson {
	if i := p.place(date); i >= 0 {
		return p.lessons[i]
	}
	return nil
}

// place is that of a week among all of them; -1 for none.
func (p *Planned) place(date string) int {
	return slices.IndexFunc(p.lessons, func(l *lesson) bool { return l.date == date })
}

// With are the same weeks, worked out already, with other words of the teacher's or
// in another look: what no story follows from.
func (p *Planned) With(in Input) *Planned { return newPlanned(in, p.lessons, p.requests) }

// WeekPages are the pages of one week in one of the site's languages, whether or
// not families see it: to learn, to try, to invent, to check, the sheet of paper.
func (p *Planned) WeekPages(date, tag string) []File {
	l := p.lister()
	p.ofWeek(l, date, tag, p.weekPages)
	return l.files
}

// Whole is a week in one language, in one file to be sent.
func (p *Planned) Whole(date, tag string) (f File, ok bool) {
	l := p.lister()
	p.ofWeek(l, date, tag, func(l *lister, lang *language, of *lesson, w week.Week) { l.page(p.whole(l, lang, of, w)) })
	if len(l.files) == 0 {
		return File{}, false
	}
	return l.files[0], true
}

// Key is the answer key of a week.
func (p *Planned) Key(date string) (f File, ok bool) {
	of := p.lesson(date)
	if of == nil {
		return File{}, false
	}
	l := p.lister()
	l.page(keyPage{l.class, of})
	return l.files[0], true
}

func (p *Planned) ofWeek(l *lister, date, tag string, list func(*lister, *language, *lesson, week.Week)) {
	for i, w := range p.in.Site.Weeks {
		for _, lang := range l.languages {
			if w.Date == date && lang.Tag() == tag {
				list(l, lang, p.lessons[i], w)
			}
		}
	}
}

// Slips are the link of a week on paper slips to cut; false where the site has no
// address.
func (p *Planned) Slips(date string) (f File, ok bool) {
	l := p.lister()
	if l.address == "" || p.lesson(date) == nil {
		return File{}, false
	}
	l.page(slipsPage{l.sayingSlips(date), date, l.address + weeklyPath(date)})
	return l.files[0], true
}
