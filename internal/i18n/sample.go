package i18n

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// SampleNumbers are the numbers that a sample shows: they meet every plural
// category of CLDR 48 that a number from 0 to 100 can have, in most languages.
var SampleNumbers = []int{0, 1, 2, 3, 5, 11, 21, 100}

// Sample is one message said, for a page on which a fluent reader sees them all.
type Sample struct {
	ID     string
	Gender string // of the person it is about, where the message has gender forms
	N      int    // the number in it; -1 where there is none
	Line   phrase.Line
	Text   Text
	Fault  string // why it cannot be said; empty in a language that was loaded
}

// Samples says every message of a language in every form, in the order of its
// file. A place that could hold anything shows its own name.
func Samples(l *Language) []Sample {
	s := sampler{lang: l}
	person, character := firstPerson(l, "person", ""), firstPerson(l, "character", "")
	for _, id := range l.order {
		if in := family(id); in == "words" || lastKey(id) == "gender" {
			continue
		}
		m := l.messages[id]
		about, who := "person", person
		if family(id) != "story" {
			about, who = "character", character
		}
		if m.byGender == nil {
			s.message(id, "", m, who)
			continue
		}
		for _, g := range genders {
			if form, who := m.byGender[g], firstPerson(l, about, g); form != nil && who != "" {
				s.message(id, g, form, who)
			}
		}
	}
	return s.samples
}

type sampler struct {
	lang    *Language
	samples []Sample
}

func (s *sampler) message(id, gender string, m *ready, subject string) {
	switch {
	case m.plural == nil && m.text == nil:
		s.samples = append(s.samples, Sample{ID: id, Gender: gender, N: -1, Line: phrase.Say(id), Fault: "it is not written yet"})
		return
	case m.plural == nil && (family(id) != "story" || !hasQuantity(m.text)):
		s.say(id, gender, -1, m.text, subject)
		return
	}
	for _, n := range SampleNumbers {
		t := m.text
		if m.plural != nil {
			t = m.plural[s.lang.plural.of(n)]
		}
		s.say(id, gender, n, t, subject)
	}
}

func hasQuantity(t template) bool {
	return slices.ContainsFunc(t, func(s segment) bool { return slices.Contains(quantityPlaces, s.place) })
}

func (s *sampler) say(id, gender string, n int, t template, subject string) {
	line := phrase.Line{ID: id, Subject: subject}
	for _, seg := range t {
		if seg.place != "" {
			line.Values = append(line.Values, s.value(id, seg, n, subject))
		}
	}
	if n >= 0 {
		line.Values = append(line.Values, phrase.Number("N", n))
	}
	sample := Sample{ID: id, Gender: gender, N: n, Line: line}
	var err error
	if sample.Text, err = s.lang.try(line); err != nil {
		sample.Fault = err.Error()
	}
	s.samples = append(s.samples, sample)
}

// value fills a place of a sample: by the first person or thing of the file
// where the place is theirs, and by the place's own name otherwise.
func (s *sampler) value(id string, seg segment, n int, subject string) phrase.Value {
	thing := firstBlock(s.lang, "thing")
	switch {
	case isPerson(id, seg.place) && subject != "":
		if seg.place == "B" {
			subject = otherPerson(s.lang, subject)
		}
		return phrase.Person(seg.place, subject)
	case seg.place == gapPlace:
		return phrase.Blank(gapPlace, "")
	case seg.place == "N" && n < 0:
		return phrase.Blank("N", "")
	case seg.place == "N":
		return phrase.Number("N", n)
	case seg.place == askPlace && thing != "":
		return phrase.Asked(askPlace, thing)
	case family(id) == "story" && slices.Contains(quantityPlaces, seg.place) && thing != "":
		return phrase.Counted(seg.place, thing, n)
	case seg.place == "Equation":
		return phrase.Equation("Equation", problem.Equal(problem.Sum(8, 6).Asking(1), problem.Number(14)))
	}
	return phrase.Text(seg.place, "("+seg.place+")")
}

// firstBlock is the first block of a family in the order of the file.
func firstBlock(l *Language, in string) string {
	for _, id := range l.order {
		if family(id) == in {
			return block(id)
		}
	}
	return ""
}

// firstPerson is the first of a family of people with a gender; with any
// gender when it is empty.
func firstPerson(l *Language, in, gender string) string {
	for _, id := range l.order {
		if p := l.people[block(id)]; p != nil && family(id) == in && (gender == "" || p.gender == gender) {
			return block(id)
		}
	}
	return ""
}

func otherPerson(l *Language, than string) string {
	for _, id := range l.order {
		if in := block(id); l.people[in] != nil && family(in) == family(than) && in != than {
			return in
		}
	}
	return than
}
