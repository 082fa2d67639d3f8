package site

import (
	"fmt"
	"strings"

	"homebuild/internal/i18n"
	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/story"
)

// mostTellings is how often a tale is told in the sample.
const mostTellings = 4

// stories tells every tale with the numbers that try a language hardest: each
// event of the language, for each kind of story that it tells.
func (in SampleInput) stories() []page.SamplePart {
	var parts []page.SamplePart
	for _, place := range in.Places.Only(in.Draft.Language.Has) {
		part := page.SamplePart{ID: place.ID, Title: "Stories: " + in.English.Plain(phrase.Say("setting."+place.ID+".name"))}
		for _, e := range place.Events {
			for _, text := range e.Always() {
				part.Rows = append(part.Rows, in.alone(e, text.Key))
			}
			for _, k := range e.Kinds {
				part.Rows = append(part.Rows, in.story(e, k))
			}
		}
		if len(part.Rows) > 0 {
			parts = append(parts, part)
		}
	}
	return parts
}

// alone says a text of an event that is in no story.
func (in SampleInput) alone(e *story.Event, key string) page.SampleRow {
	line := phrase.Say(e.Message(key))
	row := page.SampleRow{ID: line.ID, English: in.Draft.English(line)}
	text, fault := in.say(line)
	if row.Fault = fault; fault == "" {
		row.Said = []i18n.Text{text}
	}
	return row
}

// story tells a tale several times.
func (in SampleInput) story(e *story.Event, k problem.Kind) page.SampleRow {
	row := page.SampleRow{ID: e.Message(k.String()), Note: in.Draft.EventNote(e.Message("")), Story: true}
	for i, c := range e.Trials(k, mostTellings) {
		s, err := in.Places.Tell(c, i == 1)
		if err != nil {
			panic(fmt.Sprintf("site: %v of %s: %v", c.Problem, c.Event, err)) // the numbers are the event's
		}
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

// whole says a story with its answer and what that settles.
func (in SampleInput) whole(s story.Story) (i18n.Text, error) {
	var out i18n.Text
	for _, line := range linesOf(s) {
		text, err := in.Draft.Language.Try(line)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", line.ID, err)
		}
		if len(out) > 0 {
			out = append(out, i18n.Run{Kind: i18n.RunPlain, Text: in.Draft.Language.Between()})
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

// linesOf are all sentences of a story, the answer and what it settles last.
func linesOf(s story.Story) []phrase.Line {
	var lines []phrase.Line
	for _, sentence := range s.Sentences {
		lines = append(lines, sentence.Line)
	}
	return append(lines, s.AnswerFrame, s.Answer, s.So)
}
