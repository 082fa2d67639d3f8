package page

import "homebuild/internal/phrase"

// Index is the first page of a language: this week and earlier ones.
type Index struct {
	Layout
	Weeks []WeekLink // this week, then the earlier ones, each once
	// ByTopic tells that the earlier weeks stand by what is learned, easiest first,
	// and not newest first.
	ByTopic bool
	Check   string // link to the check pages; empty for none
}

// WeekLink is a week with its page.
type WeekLink struct {
	Week   string // its first day: "2026-09-14"
	Target phrase.Line
	Href   string
}

// indexKind is that of all pages that lead to others.
var indexKind = &kind{class: "index", css: []string{"base.css", "work.css", "index.css"}}
