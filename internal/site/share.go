package site

import (
	"path"
	"slices"
	"strings"

	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/qrcode"
	"homebuild/internal/sms"
)

// Message is the text to send to the families of one language.
type Message struct {
	Date string // of the week
	Tag  string
	Text string
	SMS  sms.Count
}

// Messages are the texts of a week to the families that have a page of it, in the
// site's order of languages: with the
// link, or, where the site has no address, with the name of the file that goes
// with them. There must be such a week.
func (p *Planned) Messages(date string) []Message {
	i := slices.IndexFunc(p.lessons, func(l *lesson) bool { return l.date == date })
	site, unmade := p.in.Site, p.unmade()
	var out []Message
	for _, tag := range site.Languages {
		lang, sent := p.in.language(tag), learnPath(tag, date)
		id, with := "share.link", phrase.Text("Link", site.Address+weeklyPath(date))
		if site.Address == "" {
			sent = WholePath(tag, date)
			id, with = "share.file", phrase.Text("File", path.Base(sent))
		}
		if unmade[sent] {
			continue
		}
		if !lang.Has(id) { // the teacher's own words may stay in the school's language
			lang = p.in.language(site.School)
		}
		text := lang.Plain(phrase.Say(id, phrase.Text("School", site.Name.In(tag, site.School)),
			phrase.Text("Can", lang.Plain(p.lessons[i].target.CanLine())), phrase.Text("Time", lang.Plain(page.AboutMinutes(site.Weeks[i].Minutes))), with))
		text = strings.ReplaceAll(text, "\u00a0", " ") // which would make a message of letters twice as long
		out = append(out, Message{Date: date, Tag: tag, Text: text, SMS: sms.Of(text)})
	}
	return out
}

func (m Message) path() string { return m.Date + "/message-" + m.Tag + ".txt" }

func (m Message) render() ([]byte, error) { return []byte(m.Text + "\n"), nil }

// codePNG and codeSVG are the code of a week's link, to be photographed.
type (
	codePNG struct{ Date, Link string }
	codeSVG struct{ Date, Link string }
)

func (f codePNG) path() string { return f.Date + "/link.png" }
func (f codeSVG) path() string { return f.Date + "/link.svg" }

func (f codePNG) render() ([]byte, error) { return qrcode.PNG(f.Link) }

func (f codeSVG) render() ([]byte, error) {
	code, err := qrcode.Of(f.Link)
	if err != nil {
		return nil, err
	}
	return []byte(code.SVG(f.Link)), nil
}
