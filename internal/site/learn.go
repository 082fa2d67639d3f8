package site

import (
	"homebuild/internal/page"
	"homebuild/internal/phrase"
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
		WeekPage: c.week(p.Language, l, learnPath), About: []phrase.Line{l.target.AboutLine()}, Minutes: p.Minutes,
		Class: p.Class.Language, Words: l.words(), WarmUp: p.WarmUp, Note: p.Note, Worked: l.walk(),
	}
}

// note is the teacher's text in the page's language, or in the class's.
func note(texts map[string]string, lang, class *language) *page.Note {
	for _, in := range []*language{lang, class} {
		if text := texts[in.Tag()]; text != "" {
			return &page.Note{Markdown: text, Tag: in.Tag(), RightToLeft: in.RightToLeft()}
		}
	}
	return nil
}
