package site

import (
	"bytes"
	"encoding/xml"
)

// feedFile tells of new weeks. It is an Atom feed as RFC 4287 has it: id, title
// and updated on the feed and on every entry, an author on the feed (section
// 4.1, from memory). It needs full addresses, so a site that does not know its
// own has none.
type feedFile struct {
	XMLName xml.Name    `xml:"http://www.w3.org/2005/Atom feed"`
	Lang    string      `xml:"xml:lang,attr"`
	ID      string      `xml:"id"`
	Title   string      `xml:"title"`
	Updated string      `xml:"updated"`
	Author  string      `xml:"author>name"`
	Links   []feedLink  `xml:"link"`
	Entries []feedEntry `xml:"entry"`
}

type feedEntry struct {
	ID      string   `xml:"id"`
	Title   string   `xml:"title"`
	Updated string   `xml:"updated"`
	Link    feedLink `xml:"link"`
}

type feedLink struct {
	Rel  string `xml:"rel,attr,omitempty"`
	Href string `xml:"href,attr"`
}

// newsInFeed is how many weeks a feed tells of: a year's.
const newsInFeed = 52

func feedPath(tag string) string { return tag + "/feed.xml" }

// newFeed tells of weeks, newest first; shown is the day from which families see
// each, by its date.
func newFeed(address string, lang *language, weeks calendar, shown map[string]string) feedFile {
	tag := lang.Tag()
	own := address + feedPath(tag)
	f := feedFile{
		Lang: tag, ID: own, Title: lang.school + " · " + lang.Word("index.title"), Author: lang.school,
		Links: []feedLink{{Rel: "self", Href: own}, {Href: address + indexPath(tag)}},
	}
	// Everything is a function of the files, so the day from which families see a
	// week stands for the time.
	for _, w := range weeks[:min(len(weeks), newsInFeed)] {
		href := address + learnPath(tag, w.date)
		f.Entries = append(f.Entries, feedEntry{
			ID: href, Title: lang.Plain(w.target), Updated: shown[w.date] + "T00:00:00Z", Link: feedLink{Href: href},
		})
	}
	for _, e := range f.Entries {
		f.Updated = max(f.Updated, e.Updated)
	}
	return f
}

func (f feedFile) path() string { return feedPath(f.Lang) }

func (f feedFile) render() ([]byte, error) { return encodeXML(f) }

// encodeXML writes a document with its declaration.
func encodeXML(document any) ([]byte, error) {
	var buf bytes.Buffer
	buf.WriteString(xml.Header)
	e := xml.NewEncoder(&buf)
	e.Indent("", " ")
	if err := e.Encode(document); err != nil {
		return nil, err
	}
	return buf.Bytes(), nil
}
