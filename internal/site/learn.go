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
	Greets          bool // where the teacher has written no note
	Note            *page.Note
	Words           map[string]string // the class's own
}

// LearnPath is where the page of a week stands in a language.
func LearnPath(tag, date string) string { return learnPath(tag, date) }

func learnPath(tag, date string) string { return tag + "/" + date + ".html" }

func (p learnPage) path() string { return learnPath(p.Language.Tag(), p.Lesson.date) }

func (p learnPage) view(c *common) page.View {
	l, note := p.Lesson, p.Note
	if p.Greets {
		note = noteIn(p.Language, p.Language.Word("learn.note.greeting"))
	}
	return &page.Learn{
		WeekPage: c.week(p.Language, l, learnPath), About: []phrase.Line{l.target.AboutLine()}, Minutes: p.Minutes, Counters: l.counted(),
		Class: p.Class.Language, Words: l.words(p.Words), WarmUp: p.WarmUp, Note: note, Notes: l.notes.get(func() *page.Notes { return new(page.Notes) }), Worked: l.walk(),
	}
}

// counted reports whether the week's numbers can all be laid out with small things.
func (l *lesson) counted() bool {
	return !slices.ContainsFunc(l.exercises(), func(e exercise) bool { return largest(e) > mostDots })
}

func noteIn(of *language, text string) *page.Note {
	return &page.Note{Markdown: text, Tag: of.Tag(), Name: of.Name(), RightToLeft: of.RightToLeft()}
}

// note is the teacher's text in the page's language, or in the class's, or in
// any that she wrote; nil for none: until she has written one, families read a
// greeting in their own language.
func (l *lister) note(w week.Week, lang *language) *page.Note {
	for _, of := range append([]*language{lang, l.class}, l.languages...) {
		if text := w.Notes[of.Tag()]; text != "" {
			return noteIn(of, text)
		}
	}
	return nil
}
