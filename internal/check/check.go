package check

import (
	"slices"

	"homebuild/internal/diag"
	"homebuild/internal/site"
)

// About is what a finding is about.
type About string

// The parts of a report, in its order.
const (
	Files     About = "files"     // what cannot be built
	Plan      About = "plan"      // what the week's mathematics could not give
	Languages About = "languages" // what a language holds back
	Notes     About = "notes"     // what the teacher writes to families
	Weight    About = "weight"    // how long a page takes to arrive
	Published About = "published" // what is in the published folder
)

// Parts lists them.
func Parts() []About { return []About{Plan, Languages, Notes, Weight, Published} }

// Finding is one thing to know, or to mend before families see it.
type Finding struct {
	About About `json:"about"`
	diag.Diagnostic
	Mend bool `json:"mend"`
}

// Report is what was checked and what was found.
type Report struct {
	Weeks     int            `json:"weeks"`
	Languages []string       `json:"languages"`
	Pages     int            `json:"pages"`
	Findings  []Finding      `json:"findings"`
	Heaviest  Weighed        `json:"heaviest-page"`
	Week      Weighed        `json:"heaviest-week"` // in one language: "es/2026-09-14"
	Reading   []ReadingLevel `json:"-"`

	pages []weighed
}

// ToMend lists what is to be mended before families see it.
func (r Report) ToMend() diag.Diagnostics {
	var out diag.Diagnostics
	for _, f := range r.Findings {
		if f.Mend {
			out = append(out, f.Diagnostic)
		}
	}
	return out
}

// subject is what is checked: the files, and what was made of them.
type subject struct {
	in      site.Input
	notices diag.Diagnostics
	pages   []weighed
}

// checks are those that are made, one for each thing that can go wrong. A new
// one is a function and a line here.
var checks = []struct {
	about About
	find  func(subject) diag.Diagnostics
}{
	{Plan, func(s subject) diag.Diagnostics { return s.notices }}, // what the plan of the year could not meet
	{Plan, days}, {Languages, languages}, {Notes, notes}, {Notes, copied}, {Notes, hardNotes}, {Weight, weights},
}

// Site checks a school. Problems are those of Assemble, and keep everything else
// from being checked. The function rendered, if any, is called after each page
// with how many there are, by several callers at a time.
func Site(in site.Input, rendered func(of int)) (Report, diag.Diagnostics, error) {
	planned, notices, problems := site.Plan(in)
	if len(problems) > 0 {
		return Report{}, problems, nil
	}
	files := planned.Pages()
	pages, err := weigh(files, rendered)
	if err != nil {
		return Report{}, nil, err
	}
	r := Report{Weeks: len(in.Site.Weeks), Languages: in.Site.Languages, Pages: len(files), Week: heaviestWeek(pages), pages: pages}
	r.Heaviest = slices.MaxFunc(pages, func(a, b weighed) int { return a.Bytes - b.Bytes }).Weighed
	r.Reading = readingLevels(planned, in.Site.Languages)
	for _, check := range checks {
		for _, d := range check.find(subject{in, notices, pages}) {
			r.Findings = append(r.Findings, Finding{About: check.about, Diagnostic: d})
		}
	}
	return r, nil, nil
}
