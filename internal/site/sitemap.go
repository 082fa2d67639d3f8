package site

import (
	"encoding/xml"
	"strings"
)

// sitemapFile lists every page for search engines, where the teacher wants that
// and the site knows its address (sitemaps.org protocol 0.9, from memory).
type sitemapFile struct {
	XMLName xml.Name       `xml:"http://www.sitemaps.org/schemas/sitemap/0.9 urlset"`
	Pages   []sitemapEntry `xml:"url"`
}

type sitemapEntry struct {
	Location string `xml:"loc"`
}

func newSitemap(address string, files []File) (s sitemapFile) {
	for _, f := range files {
		if strings.HasSuffix(f.Path, ".html") && f.Path != notFoundPath {
			s.Pages = append(s.Pages, sitemapEntry{address + f.Path})
		}
	}
	return s
}

func (s sitemapFile) path() string { return "sitemap.xml" }

func (s sitemapFile) render() ([]byte, error) { return encodeXML(s) }
