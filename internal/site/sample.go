package site

import (
	"bytes"
	"slices"
	"strings"

	"homebuild/internal/activity"
	"homebuild/internal/estimate"
	"homebuild/internal/i18n"
	"homebuild/internal/mistake"
	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/story"
	"homebuild/internal/strategy"
	"homebuild/internal/translate"
)

// SampleInput is what the sample of a language is made from.
type SampleInput struct {
	Draft   *translate.Draft
	English *i18n.Language // the language of the page around the texts
	Theme   *page.Theme
	Targets []activity.Target
	Places  story.Places
}

// samplePath is where the sample of a language lies on the desk.
func samplePath(tag string) string { return "sample-" + tag + ".html" }

// Sample is the page on which a fluent reader reads a whole language once. A
// language that is half done shows what is written so far.
func Sample(in SampleInput) File {
	own := samplePath(in.Draft.Status.Tag)
	return File{Path: own, Render: func() ([]byte, error) {
		var b bytes.Buffer
		err := page.Render(&b, in.view(own))
		return b.Bytes(), err
	}}
}

func (in SampleInput) view(own string) *page.Sample {
	s := in.Draft.Status
	return &page.Sample{
		Layout: page.Layout{Language: in.English, Theme: in.Theme, Path: own, School: "homebuild"},
		Tag:    s.Tag, Name: s.Name, RightToLeft: in.Draft.Language.RightToLeft(), Turned: in.Draft.Language.EquationsRightToLeft(),
		Done: s.Done, Total: s.Total, Stale: s.Stale, Reviewed: s.Reviewed,
		Problems: in.Draft.Problems, Advice: in.Draft.Advice,
		Parts: append(in.stories(), in.messages()...),
	}
}

type samplePart struct {
	id, title string
	families  []string
}

// sampleParts are the parts of the page after the stories, by the families of
// messages that stand in them; what is in none stands with the pages' words.
var sampleParts = []samplePart{
	{"pages", "The pages", nil},
	{"things", "Things to count", []string{"thing"}},
	{"people", "Characters and places", []string{"character", "setting"}},
	{"ways", "Ways to work it out and to check", []string{"strategy", "estimate", "sense"}},
	{"help", "Help for a wrong number", []string{"mistake", "reply"}},
	{"pictures", "Pictures, for people who listen", []string{"picture"}},
	{"targets", "Goals and kinds of stories", []string{"target", "kind"}},
}

// messages are all messages but the sentences of the stories, which are told whole.
func (in SampleInput) messages() []page.SamplePart {
	parts := make([]page.SamplePart, len(sampleParts))
	for i, p := range sampleParts {
		parts[i] = page.SamplePart{ID: p.id, Title: p.title}
	}
	worked := in.worked()
	for _, s := range translate.Samples(in.Draft.Language) {
		family, _, _ := strings.Cut(s.ID, ".")
		at := max(0, slices.IndexFunc(sampleParts, func(p samplePart) bool { return slices.Contains(p.families, family) }))
		if line, ok := worked[s.ID]; ok && s.Fault == "" && s.N < 0 {
			s.Line = line
			s.Text, s.Fault = in.say(line)
		}
		in.add(&parts[at], s)
	}
	return parts
}

// add gives a message its row, or one more form in the row it has.
func (in SampleInput) add(part *page.SamplePart, s translate.Sample) {
	if last := len(part.Rows) - 1; last >= 0 && part.Rows[last].ID == s.ID && s.Fault == "" {
		part.Rows[last].Said = append(part.Rows[last].Said, s.Text)
		return
	}
	row := page.SampleRow{ID: s.ID, Note: in.Draft.Note(s.ID), English: in.Draft.English(s.Line), Fault: s.Fault}
	if s.Fault == "" {
		row.Said = []i18n.Text{s.Text}
	}
	part.Rows = append(part.Rows, row)
}

func (in SampleInput) say(line phrase.Line) (i18n.Text, string) {
	text, err := in.Draft.Language.Try(line)
	if err != nil {
		return nil, err.Error()
	}
	return text, ""
}

// worked are the sentences of the mathematics with the numbers of a real
// calculation.
func (in SampleInput) worked() map[string]phrase.Line {
	lines := map[string]phrase.Line{}
	for _, list := range [][]phrase.Line{
		strategy.Lines(), estimate.Lines(), mistake.Lines(), picture.Lines(), activity.Lines(in.Targets),
	} {
		for _, line := range list {
			lines[line.ID] = line
		}
	}
	return lines
}
