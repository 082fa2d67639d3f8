package site

import (
	"homebuild/internal/page"
	"homebuild/internal/phrase"
)

// printPage is the week on one sheet of paper.
type printPage struct {
	Language, Class *language
	Lesson          *lesson
	Answers         bool              // they stand on the sheet
	Words           map[string]string // the class's own
}

func printPath(tag, date string) string { return tag + "/" + date + "-print.html" }

func (p printPage) path() string { return printPath(p.Language.Tag(), p.Lesson.date) }

func (p printPage) view(c *common) page.View {
	l := p.Lesson
	v := &page.Print{
		WeekPage: c.week(p.Language, l, printPath), Scene: page.Scene{Place: l.scene().Place}, Words: l.words(p.Words), Class: p.Class.Language,
		Worked: l.walk(), Answers: p.Answers,
	}
	for _, e := range l.stories {
		v.Stories = append(v.Stories, e.Story)
	}
	for _, rung := range l.rungs() {
		stories, _ := l.on(rung)
		on := page.PrintRung{Words: rungWords[rung]}
		for _, e := range stories {
			on.Stories = append(on.Stories, e.Story)
		}
		v.Ladder = append(v.Ladder, on)
	}
	v.Blank = l.frame().story(phrase.Blank("Who", ""), phrase.Blank("With", ""))
	if c.address != "" {
		v.WeekURL = c.address + weeklyPath(l.date)
	}
	return v
}
