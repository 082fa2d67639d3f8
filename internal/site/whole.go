package site

import "homebuild/internal/page"

// wholeFile is everything of a week in one language, in one file: to be sent
// where there is no address, by mail, in a chat or on a stick. It leads nowhere
// but to the site's own address, where it has one.
type wholeFile struct {
	Learn  learnPage
	Try    tryPage // of all stories
	Invent inventPage
	Print  printPage
}

// WholePath is where the file to send stands on the desk.
func WholePath(tag, date string) string { return date + "/to-send/" + date + "-" + tag + ".html" }

func (p wholeFile) path() string { return WholePath(p.Learn.Language.Tag(), p.Learn.Lesson.date) }

func (p wholeFile) view(c *common) page.View {
	lang := p.Learn.Language
	layout := page.Layout{Language: lang.Language, Theme: c.theme, Path: p.Learn.path(), School: lang.school}
	v := &page.Whole{
		Learn: p.Learn.view(c).(*page.Learn), Try: p.Try.view(c).(*page.Try),
		Invent: p.Invent.view(c).(*page.Invent), Print: p.Print.view(c).(*page.Print),
	}
	v.WeekPage = v.Learn.WeekPage
	weekPages := []*page.WeekPage{&v.WeekPage, &v.Learn.WeekPage, &v.Try.WeekPage, &v.Invent.WeekPage, &v.Print.WeekPage}
	if rungs := p.Learn.Lesson.rungs(); len(rungs) > 0 {
		v.Steps = stepsPage{lang, p.Learn.Lesson, 0, rungs}.view(c).(*page.Steps)
		weekPages = append(weekPages, &v.Steps.WeekPage)
	}
	for i := range v.Try.Ladder {
		v.Try.Ladder[i].Href = "#" + v.Try.Ladder[i].Words.ID
	}
	for _, w := range weekPages {
		w.Layout, w.Links = layout, page.Parts()
	}
	v.Learn.Links.Learn, v.Try.Links.Try, v.Invent.Links.Invent, v.Print.Links.Print = "", "", "", ""
	v.Invent.Strip, v.Invent.Pairs = nil, nil // they lead to pages that are not here
	return v
}
