package site

import "homebuild/internal/page"

// notFoundPage is what a web server shows for an address that does not exist.
type notFoundPage struct{ Languages []*language }

const notFoundPath = "404.html"

func (p notFoundPage) path() string { return notFoundPath }

func (p notFoundPage) view(c *common) page.View {
	return &page.NotFound{
		Layout:    c.layout(c.class, notFoundPath, nil, ""),
		Languages: c.versions(notFoundPath, indexPath),
	}
}
