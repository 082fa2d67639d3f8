package desk

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/check"
	"homebuild/internal/diag"
	"homebuild/internal/picture"
	"homebuild/internal/site"
)

// pagesOf are the endings of the paths of a week's pages, by their names in
// [PageOf].
var pagesOf = map[string]string{"learn": ".html", "try": "-try.html", "invent": "-story.html", "paper": "-print.html", "numbers": "-check.html"}

// Page is one page as families get it: see [Calls].
func (d *Desk) Page(of PageOf) (Page, error) {
	s, err := d.open(of.Date)
	if err != nil {
		return Page{}, err
	}
	plan := s.plan
	if plan == nil || slices.Contains(s.left, of.Date) {
		return Page{}, wrong(s.findings())
	}
	if of.Look != "" {
		in, problems := s.Input, diag.Diagnostics(nil)
		if in.Theme, problems = d.school.Theme(of.Look); len(problems) > 0 {
			return Page{}, refuse(of.Date, problems[0])
		}
		in.Site.Weeks = without(in.Site.Weeks, s.left)
		plan = plan.With(in)
	}
	var file site.File
	switch ending, known := pagesOf[of.Page]; {
	case of.Page == "key":
		file, _ = plan.Key(of.Date)
	case known:
		files := plan.WeekPages(of.Date, of.Tag)
		at := slices.IndexFunc(files, func(f site.File) bool { return strings.HasSuffix(f.Path, of.Date+ending) })
		if at < 0 {
			return Page{}, refuse(of.Date, diag.Diagnostic{Text: fmt.Sprintf("the week has no such page in %q", of.Tag), Code: codeNoPage})
		}
		file = files[at]
	default:
		return Page{}, fmt.Errorf("no page is called %q", of.Page)
	}
	if file.Render == nil {
		return Page{}, wrong(s.findings())
	}
	html, err := file.Render()
	return Page{HTML: string(html)}, err
}

// drawn is the class's picture for stories.
func (s *sheet) drawn() picture.Kind {
	if kind, ok := picture.ParseKind(s.Picture); ok {
		return kind
	}
	if len(s.target.Pictures) > 0 {
		return s.target.Pictures[0]
	}
	return picture.BarModel
}

// Check weighs the pages of a week in a language: see [Calls].
func (d *Desk) Check(of CheckOf) ([]Finding, error) {
	s, err := d.open(of.Date)
	if err != nil {
		return nil, err
	}
	if len(s.exercises()) == 0 {
		return nil, wrong(s.findings())
	}
	heavy, err := check.Weights(s.Input, s.plan, of.Date, of.Tag)
	var out []Finding
	for _, p := range heavy {
		out = append(out, s.finding(p, false))
	}
	return out, err
}
