package site

import (
	"homebuild/internal/i18n"
	"homebuild/internal/page"
)

// slipsPage is the link of a week on paper slips to cut.
type slipsPage struct {
	Languages []*language
	Date      string
	Link      string
}

func (p slipsPage) path() string { return p.Date + "/slips.html" }

func (p slipsPage) view(c *common) page.View {
	languages := make([]*i18n.Language, len(p.Languages))
	for i, l := range p.Languages {
		languages[i] = l.Language
	}
	return &page.Slips{Layout: c.deskLayout(p.path()), Link: p.Link, Languages: languages}
}
