package site

import (
	"strings"

	"homebuild/internal/translate"
)

// ReadText is something that a family reads, for measuring how hard it is.
type ReadText struct {
	Name  string // the id of a message, or a week and a story's frame
	Text  string
	Story bool // for the child; else for the family
}

// forTeachers are families of messages, and endings of ids, that no family reads
// in running text: names, fragments, and what stands on the teacher's desk.
var forTeachers = []string{"kind.", "desk.", "key.", "share.", "story.", "thing.", "person.", "picture.", "sample.", ".name-"}

func familyText(s translate.Sample) bool {
	for _, x := range forTeachers {
		if strings.HasPrefix(s.ID, x) {
			return false
		}
	}
	return !(strings.HasPrefix(s.ID, "mistake.") && strings.HasSuffix(s.ID, ".name"))
}

// Texts are every message to families and every story of the site's weeks in one
// of its languages, and the names of people, which are easy words.
func (p *Planned) Texts(tag string) (texts []ReadText, names []string) {
	lang, ok := p.in.Catalog.Language(tag)
	if !ok {
		return nil, nil
	}
	const five = 5 // one number stands for all: the words around it are the same
	seen := map[string]bool{}
	for _, s := range translate.Samples(lang) {
		if strings.HasPrefix(s.ID, "person.") {
			names = append(names, s.Text.String())
		}
		if id := s.ID + s.Gender; familyText(s) && !seen[id] && (s.N < 0 || s.N == five) {
			seen[id] = true
			texts = append(texts, ReadText{Name: s.ID, Text: s.Text.String()})
		}
	}
	for _, l := range p.lessons {
		for _, x := range append([]told{l.worked}, l.stories...) {
			var sentences []string
			for _, s := range x.Story.Sentences {
				sentences = append(sentences, lang.Plain(s.Line))
			}
			if len(sentences) > 0 {
				texts = append(texts, ReadText{Name: l.week.Date + " " + x.Story.Frame, Text: strings.Join(sentences, " "), Story: true})
			}
		}
	}
	return texts, names
}
