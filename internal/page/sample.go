package page

import (
	"github.com/a-h/templ"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
)

// Sample is everything that a language says, on one page that a fluent reader
// reads once. It lies on the desk and speaks English, as the command line does:
// who translates reads en.toml. The language of its layout is English.
type Sample struct {
	Layout
	Tag         string
	Name        string // the language's own name
	RightToLeft bool   // the direction of its texts
	Turned      bool   // equations run from right to left, too
	Done, Total int    // messages with a text, of those it needs
	Stale       int    // messages whose English has changed since
	Reviewed    string // who signed it and when; empty for a draft
	Problems    diag.Diagnostics
	Advice      diag.Diagnostics
	Parts       []SamplePart
}

// SamplePart is a part of the page with a heading of its own.
type SamplePart struct {
	ID, Title string
	Rows      []SampleRow
}

// SampleRow is a message, or a whole story, said in all its forms.
type SampleRow struct {
	ID      string
	Note    string // what the translator was told about it
	English string
	Said    []i18n.Text
	Fault   string // why it cannot be said yet
	Story   bool   // each of Said is a whole story
}

// runs marks a text up as the pages do.
func (v *Sample) runs(text i18n.Text) templ.Component {
	return raw(func(m *markup) {
		for _, r := range text {
			m.run(v.Turned, r)
		}
	})
}

var sampleKind = &kind{class: "sample", css: []string{"base.css", "work.css", "tiles.css", "sample.css"}}
