package site

import (
	"homebuild/internal/i18n"
	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/story"
	"homebuild/internal/strategy"
)

// weekPages lists the pages of one week in one language.
func (b *builder) weekPages(lang *i18n.Language, l *lesson) {
	b.learn(lang, l)
	b.try(lang, l)
	b.own(lang, l)
	b.print(lang, l)
}

// weekFrame is the frame of a week's page, with the same page in the other
// languages.
func (b *builder) weekFrame(lang *i18n.Language, l *lesson, path func(tag, date string) string) page.Frame {
	return b.frame(lang, path(lang.Tag(), l.week.Date),
		func(tag string) string { return path(tag, l.week.Date) }, weeklyPath(l.week.Date))
}

// links leads from one page of the week to the others.
func (b *builder) links(lang *i18n.Language, l *lesson, own string) page.Links {
	tag, date := lang.Tag(), l.week.Date
	to := func(path string) string {
		if path == own {
			return ""
		}
		return link(own, path)
	}
	return page.Links{
		Learn: to(learnPath(tag, date)), Try: to(tryPath(tag, date)), Own: to(ownPath(tag, date)),
		Check: to(checkPath(tag)), Print: to(printPath(tag, date)),
	}
}

func (b *builder) learn(lang *i18n.Language, l *lesson) {
	own := learnPath(lang.Tag(), l.week.Date)
	from := madeFrom{b.of(lang), b.of(b.school), l.sum, l.week.Minutes, b.warmUp(l), b.note(lang, l)}
	b.add(own, false, from, func() page.View {
		v := &page.Learn{
			Frame: b.weekFrame(lang, l, learnPath), Week: pageDate(l.week.Date),
			Target: l.target.CanLine(), Minutes: l.week.Minutes, Class: b.school, Words: l.words(), WarmUp: b.warmUp(l),
			Note: b.note(lang, l), Worked: l.walk(), Links: b.links(lang, l, own),
		}
		v.About = append(v.About, l.target.AboutLine())
		return v
	})
}

// note is the teacher's text in the page's language, or in the class's.
func (b *builder) note(lang *i18n.Language, l *lesson) *page.Note {
	for _, in := range []*i18n.Language{lang, b.school} {
		if text := l.week.Notes[in.Tag()]; text != "" {
			return &page.Note{Markdown: text, Tag: in.Tag(), RightToLeft: in.RightToLeft()}
		}
	}
	return nil
}

// walk is the worked story with everything its steps show.
func (l lesson) walk() page.Worked {
	t := l.worked
	w := page.Worked{
		Story: t.Story, Growing: l.growing(t), Equations: equations(t.Problem),
		Solved: l.pictureOf(t, picture.Solved), Sense: sense(t),
	}
	w.First, w.Way = workings(t)
	if ways := t.Ways(); len(ways) > 1 && t.Problem.Pairs() == nil {
		another := working(ways[1])
		w.Another = &another
	}
	return w
}

// workings are the best way to the answer and, for a two-step story, that of
// its first step, each under its own equation.
func workings(t told) (first *page.Working, way page.Working) {
	if all, ok := picture.AllPairs(t.Problem); ok { // nothing to calculate: find every pair
		return nil, page.Working{Steps: []page.Step{{Say: all.Describe(), Picture: all}}}
	}
	if ways := t.Ways(); len(ways) > 0 {
		way = working(ways[0])
	}
	steps, ways := t.Problem.Steps(), t.FirstWays()
	if len(steps) < 2 || len(ways) == 0 {
		return nil, way
	}
	w := working(ways[0])
	w.Asks, way.Asks = steps[0].Solving(), steps[1].Solving()
	return &w, way
}

// growing is the picture as the story goes on, under the sentences that made it
// grow.
func (l lesson) growing(t told) []page.Panel {
	var known, question []phrase.Line
	for _, s := range t.Story.Sentences {
		switch s.Role {
		case story.Known:
			known = append(known, s.Line)
		case story.Question:
			question = append(question, s.Line)
		}
	}
	panels := []page.Panel{{Picture: l.pictureOf(t, picture.FirstPart), Caption: known[:1]}}
	if len(known) > 1 {
		panels = append(panels, page.Panel{Picture: l.pictureOf(t, picture.SecondPart), Caption: known[1:]})
	}
	return append(panels, page.Panel{Picture: l.pictureOf(t, picture.Open), Caption: question})
}

// working is a way with its pictures, each beside the step it shows.
func working(w strategy.Way) page.Working {
	out := page.Working{Name: w.Name.Title(), Why: w.Name.About(), Chain: w.Chain}
	for _, s := range w.Steps {
		out.Steps = append(out.Steps, page.Step{Say: s.Say, Equation: s.Equation, Picture: s.Picture})
	}
	return out
}
