package site

import (
	"slices"

	"homebuild/internal/activity"
	"homebuild/internal/mistake"
	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/qrcode"
	"homebuild/internal/sms"
)

// Desk lists the teacher's own files, a folder a week: the answer key, the
// messages to send, the code of the link and slips to cut. They stand beside
// the published folder, never inside it.
func (p *Planned) Desk() []File {
	b := p.builder()
	for i := range b.lessons {
		b.answerKey(&b.lessons[i])
		if b.Site.Address != "" {
			b.shareKit(&b.lessons[i])
		}
	}
	return b.files
}

func (b *builder) answerKey(l *lesson) {
	own := l.week.Date + "/answer-key.html"
	b.add(own, false, madeFrom{b.of(b.school), l.sum}, func() page.View {
		v := &page.Key{Frame: b.deskFrame(own), Week: pageDate(l.week.Date), Target: l.target.CanLine()}
		for _, t := range append([]told{l.worked}, l.stories...) {
			v.Stories = append(v.Stories, l.keyStory(t))
		}
		return v
	})
}

// deskFrame is a frame without links: what lies on the desk leads nowhere.
func (b *builder) deskFrame(own string) page.Frame {
	return page.Frame{
		Language: b.school, Theme: b.Theme, Path: own,
		School: b.schoolName(b.school),
	}
}

func (l lesson) keyStory(t told) page.KeyStory {
	k := page.KeyStory{
		Story: t.Story, Kind: activity.KindName(t.Problem.Kind()), Equation: t.Problem.Equation(),
		Picture: l.pictureOf(t, picture.Solved),
	}
	first := t.FirstWays()
	for _, w := range slices.Concat(first[:min(1, len(first))], t.Ways()) {
		k.Ways = append(k.Ways, page.KeyWay{Name: w.Name.Title(), Chain: w.Chain})
	}
	for _, m := range mistake.Of(t.Problem, t.ExtraNumber) {
		if len(k.Mistakes) == mostListened {
			break
		}
		k.Mistakes = append(k.Mistakes, page.KeyMistake{Number: m.Answer, Name: m.Cause.Name(), Ask: m.Hint()})
	}
	return k
}

// mostListened keeps the key of a week on one page.
const mostListened = 4

// Message is the text to send to the families of one language.
type Message struct {
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
	b := (&Planned{in: in}).builder()
	var out []Message
	for _, lang := range b.languages {
		text := lang.Plain(phrase.Say("share.message", phrase.Text("Link", in.Site.Address+weeklyPath(date))))
		out = append(out, Message{Tag: lang.Tag(), Text: text, SMS: sms.Of(text)})
	}
	return out
}

// shareKit is everything that sends the link of a week home.
func (b *builder) shareKit(l *lesson) {
	folder, link := l.week.Date+"/", b.Site.Address+weeklyPath(l.week.Date)
	for _, m := range Messages(b.Input, l.week.Date) {
		b.file(folder+"message-"+m.Tag+".txt", false, madeFrom{m.Text}, func() ([]byte, error) { return []byte(m.Text + "\n"), nil })
	}
	b.file(folder+"link.png", false, madeFrom{link}, func() ([]byte, error) { return qrcode.PNG(link) })
	b.file(folder+"link.svg", false, madeFrom{link}, func() ([]byte, error) {
		svg, err := qrcode.SVG(link, link)
		return []byte(svg), err
	})
	own := folder + "slips.html"
	b.add(own, false, madeFrom{b.ids.all}, func() page.View {
		v := &page.Slips{Frame: b.deskFrame(own), Week: pageDate(l.week.Date), Link: link}
		for _, lang := range b.languages {
			v.Pages = append(v.Pages, page.SlipPage{Language: lang})
		}
		return v
	})
}
