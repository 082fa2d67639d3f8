package site

import "homebuild/internal/page"

// frontPage is the first page of the site.
type frontPage struct {
	Languages []*language
	Calendar  calendar
}

const frontPath = "index.html"

func (p frontPage) path() string { return frontPath }

func (p frontPage) view(c *common) page.View {
	return &page.Front{
		Layout:    c.layout(c.class, frontPath, nil, ""),
		Languages: c.versions(frontPath, indexPath),
		Weeks:     p.Calendar.recent().links(frontPath, weeklyPath),
	}
}
