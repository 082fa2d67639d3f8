package site

import (
	"bytes"
	"encoding/xml"

	"homebuild/internal/i18n"
)

// An Atom feed as RFC 4287 has it: id, title and updated on the feed and on
// every entry, an author on the feed (section 4.1, from memory).
type atomFeed struct {
	XMLName xml.Name    `xml:"http://www.w3.org/2005/Atom feed"`
	Lang    string      `xml:"xml:lang,attr"`
	ID      string      `xml:"id"`
	Title   string      `xml:"title"`
	Updated string      `xml:"updated"`
	Author  string      `xml:"author>name"`
	Links   []atomLink  `xml:"link"`
	Entries []atomEntry `xml:"entry"`
}

type atomEntry struct {
	ID      string   `xml:"id"`
	Title   string   `xml:"title"`
	Updated string   `xml:"updated"`
	Link    atomLink `xml:"link"`
}

type atomLink struct {
	Rel  string `xml:"rel,attr,omitempty"`
	Href string `xml:"href,attr"`
}

func feedPath(tag string) string { return tag + "/feed.xml" }

// feed tells of new weeks. It needs full addresses, so a site that does not
// know its own has none.
func (b *builder) feed(lang *i18n.Language) {
	if b.Site.Address == "" {
		return
	}
	own := feedPath(lang.Tag())
	b.file(own, true, madeFrom{b.Site.Address, b.of(lang), b.ids.calendar}, func() ([]byte, error) {
		return encodeXML(b.atom(lang, own))
	})
}

func (b *builder) atom(lang *i18n.Language, own string) atomFeed {
	school := b.Site.Name.In(lang.Tag(), b.Site.School)
	f := atomFeed{
		Lang: lang.Tag(), ID: b.Site.Address + own, Title: school + " · " + lang.Word("index.title"), Author: school,
		Links: []atomLink{{Rel: "self", Href: b.Site.Address + own}, {Href: b.Site.Address + homePath(lang.Tag())}},
	}
	for i := len(b.lessons) - 1; i >= 0; i-- {
		l := b.lessons[i]
		href := b.Site.Address + learnPath(lang.Tag(), l.week.Date)
		f.Entries = append(f.Entries, atomEntry{
			ID: href, Title: lang.Plain(l.target.CanLine()), Updated: l.week.Date + "T00:00:00Z", Link: atomLink{Href: href},
		})
	}
	// Everything is a function of the files, so a week's own date stands for the
	// time; a feed without weeks keeps the start of the epoch.
	f.Updated = "1970-01-01T00:00:00Z"
	if len(f.Entries) > 0 {
		f.Updated = f.Entries[0].Updated
	}
	return f
}

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
