package site

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/i18n"
	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/story"
)

// sampleNumbers are the numbers of the tellings of each frame; they fit every
// kind. The first is the bigger, and a kind that needs two leaves the last out.
var sampleNumbers = [][3]int{{3, 1, 1}, {5, 2, 2}, {12, 11, 1}, {21, 5, 11}}

// sampleExtra is a number that nobody needs, in the last telling.
const sampleExtra = 8

// stories tells every frame several times, with other numbers, things and
// people.
func (in SampleInput) stories() page.SamplePart {
	part := page.SamplePart{ID: "stories", Title: "Stories"}
	for _, f := range in.Stock.Frames {
		if in.Draft.Language.Has("story." + f.ID) {
			part.Rows = append(part.Rows, in.story(f))
		}
	}
	return part
}

func (in SampleInput) story(f story.Frame) page.SampleRow {
	row := page.SampleRow{ID: "story." + f.ID, Story: true}
	for _, s := range in.tellings(f) {
		text, err := in.whole(s)
		if err != nil {
			row.Fault = err.Error()
			continue
		}
		row.Said = append(row.Said, text)
		if row.English == "" {
			row.English = in.english(s)
		}
	}
	return row
}

// tellings tells one frame with each of the sample's numbers, about somebody of
// each gender in turn.
func (in SampleInput) tellings(f story.Frame) []story.Story {
	stock := in.Stock.Only(in.Draft.Language.Has)
	stock.Frames = []story.Frame{f}
	kind, _ := f.Kind()
	teller := story.NewTeller(stock, "sample")
	genders := in.genders(stock.People)
	var out []story.Story
	for i, numbers := range sampleNumbers {
		p, err := problem.New(kind, numbers[:2]...)
		if err != nil {
			p, err = problem.New(kind, numbers[:]...)
		}
		if err != nil {
			panic(fmt.Sprintf("site: %v do not fit %v", numbers, kind)) // the numbers are ours
		}
		r := story.Request{Problem: p, InWords: i == 1, Week: f.ID}
		if i == len(sampleNumbers)-1 {
			r.ExtraNumber = sampleExtra
		}
		s, err := about(teller, r, func(s story.Story) bool { return in.Draft.Language.Gender(s.A) == genders[i%len(genders)] })
		if err == nil { // too little is written to tell it yet
			out = append(out, s)
		}
	}
	return out
}

// about tells a story until it is about the right person; people take turns, so
// that is soon.
func about(teller *story.Teller, r story.Request, right func(story.Story) bool) (s story.Story, err error) {
	for ; r.Place < 40; r.Place++ {
		if s, err = teller.Tell(r); err != nil || right(s) {
			break
		}
	}
	return s, err
}

// genders lists the genders of the people, each once.
func (in SampleInput) genders(people []string) []string {
	out := []string{}
	for _, p := range people {
		if g := in.Draft.Language.Gender(p); !slices.Contains(out, g) {
			out = append(out, g)
		}
	}
	if len(out) == 0 {
		return []string{""}
	}
	return out
}

// whole says a story with its answer.
func (in SampleInput) whole(s story.Story) (i18n.Text, error) {
	var out i18n.Text
	for _, line := range linesOf(s) {
		text, err := in.Draft.Language.Try(line)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", line.ID, err)
		}
		if len(out) > 0 {
			out = append(out, i18n.Run{Kind: i18n.RunPlain, Text: " "})
		}
		out = append(out, text...)
	}
	return out, nil
}

func (in SampleInput) english(s story.Story) string {
	var sentences []string
	for _, line := range linesOf(s) {
		sentences = append(sentences, in.Draft.English(line))
	}
	return strings.Join(sentences, " ")
}

func linesOf(s story.Story) []phrase.Line {
	var lines []phrase.Line
	for _, sentence := range s.Sentences {
		lines = append(lines, sentence.Line)
	}
	return append(lines, s.Answer)
}

// inFrame reports whether a message belongs to a frame that is told whole.
func (in SampleInput) inFrame(id string) bool {
	return slices.ContainsFunc(in.Stock.Frames, func(f story.Frame) bool { return strings.HasPrefix(id, "story."+f.ID+".") })
}
