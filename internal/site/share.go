package site

import (
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

// Messages are the texts of a week, in the site's order of languages; none
// where the site has no address yet.
func Messages(in Input, date string) []Message {
	if in.Site.Address == "" {
		return nil
	}
	line := phrase.Say("share.message", phrase.Text("Link", in.Site.Address+weeklyPath(date)))
	var out []Message
	for _, tag := range in.Site.Languages {
		text := in.language(tag).Plain(line)
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
	svg, err := qrcode.SVG(f.Link, f.Link)
	return []byte(svg), err
}
