package page

import "homebuild/internal/phrase"

// Index is the first page of a language: this week and earlier ones.
type Index struct {
	Layout
	This    WeekLink
	Earlier []Topic
	Years   []YearLink // of weeks that are on no list here, newest first
	Check   string     // link to the check pages; empty for none
}

// Topic is the earlier weeks that have something in common.
type Topic struct {
	Name  phrase.Line // empty where all earlier weeks stand together
	Weeks []WeekLink
}

// WeekLink is a week with its page.
type WeekLink struct {
	Week   string // its first day: "2026-09-14"
	Target phrase.Line
	Href   string
}

// byTopic tells that the earlier weeks stand by what is learned.
func (v *Index) byTopic() bool { return !isZero(v.Earlier[0].Name) }

// indexKind is that of all pages that lead to others.
var indexKind = &kind{class: "index", css: []string{"base.css", "work.css", "index.css"}}
