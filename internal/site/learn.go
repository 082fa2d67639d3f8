package site

import (
	"slices"

	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/week"
)

// learnPage is the week's main page in one language.
type learnPage struct {
	Language, Class *language
	Lesson          *lesson
	Minutes         int
	WarmUp          *page.WarmUp
	Note            *page.Note
}

func learnPath(tag, date string) string { return tag + "/" + date + ".html" }

func (p learnPage) path() string { return learnPath(p.Language.Tag(), p.Lesson.date) }

func (p learnPage) view(c *common) page.View {
	l := p.Lesson
	return &page.Learn{
		WeekPage: c.week(p.Language, l, learnPath), About: []phrase.Line{l.target.AboutLine()}, Minutes: p.Minutes, Counters: l.counted(),
		Class: p.Class.Language, Words: l.words(), WarmUp: p.WarmUp, Note: p.Note, Worked: l.walk(),
	}
}

// counted reports whether the week's numbers can all be laid out with small things.
func (l *lesson) counted() bool {
	return !slices.ContainsFunc(l.exercises(), func(e exercise) bool { return largest(e) > mostDots })
}

// note is the teacher's text in the page's language, or in the class's, or in
// any that she wrote. Until she has written one, families read a greeting in
// their own language.
func (l *lister) note(w week.Week, lang *language) *page.Note {
	in := func(of *language, text string) *page.Note {
		return &page.Note{Markdown: text, Tag: of.Tag(), Name: of.Name(), RightToLeft: of.RightToLeft()}
	}
	if !w.HasNote {
		return in(lang, lang.Word("learn.note.greeting"))
	}
	for _, of := range append([]*language{lang, l.class}, l.languages...) {
		if text := w.Notes[of.Tag()]; text != "" {
			return in(of, text)
		}
	}
	return nil
}
