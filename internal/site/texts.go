package site

import (
	"slices"
	"strings"

	"homebuild/internal/readability"
	"homebuild/internal/translate"
)

// forTeachers are families of messages, and endings of ids, that no family reads
// in running text: names, fragments, and what stands on the teacher's desk.
var forTeachers = []string{"kind.", "desk.", "key.", "share.", "thing.", "picture.", "sample.", ".name-"}

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
func (p *Planned) Texts(tag string) (texts []readability.Text, names []string) {
	lang, ok := p.in.Catalog.Language(tag)
	if !ok || !lang.Whole() {
		return nil, nil
	}
	const five = 5 // one number stands for all: the words around it are the same
	seen := map[string]bool{}
	for _, s := range translate.Samples(lang) {
		if strings.HasPrefix(s.ID, "character.") {
			names = append(names, s.Text.String())
		}
		if id := s.ID + s.Gender; familyText(s) && !seen[id] && (s.N < 0 || s.N == five) {
			seen[id] = true
			texts = append(texts, readability.Text{Name: s.ID, Text: s.Text.String()})
		}
	}
	for _, l := range p.lessons {
		for _, x := range slices.Concat(l.exercises(), l.ladder) {
			var sentences []string
			for _, s := range x.Story.Sentences {
				sentences = append(sentences, lang.Plain(s.Line))
			}
			if len(sentences) > 0 {
				texts = append(texts, readability.Text{Name: l.date + " " + x.Story.Event, Text: strings.Join(sentences, " "), Story: true})
			}
		}
	}
	return texts, names
}
