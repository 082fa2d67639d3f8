package site

import (
	"slices"

	"homebuild/internal/i18n"
	"homebuild/internal/page"
)

// slipsPage is the link of a week on paper slips to cut.
type slipsPage struct {
	Languages []*language
	Date      string
	Link      string
}

// sayingSlips are the languages that have a page of the week, and words for the slips.
func (c *common) sayingSlips(date string) []*language {
	return slices.DeleteFunc(slices.Clone(c.languages), func(l *language) bool {
		return c.unmade[learnPath(l.Tag(), date)] || !l.Has("share.slip")
	})
}

func (p slipsPage) path() string { return p.Date + "/slips.html" }

func (p slipsPage) view(c *common) page.View {
	languages := make([]*i18n.Language, len(p.Languages))
	for i, l := range p.Languages {
		languages[i] = l.Language
	}
	return &page.Slips{Layout: c.deskLayout(p.path()), Link: p.Link, Languages: languages}
}
