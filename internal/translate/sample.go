package translate

import (
	"strings"

	"homebuild/internal/i18n"
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
	Text   i18n.Text
	Fault  string // why it cannot be said; empty in a language that was loaded
}

// Samples says every message of a language in every form, in the order of its
// file. A place that could hold anything shows its own name. The sentences of
// events are not among them: who reads them reads whole stories.
func Samples(l *i18n.Language) []Sample {
	s := sampler{lang: l}
	somebody := map[string]string{} // by gender
	for _, g := range append([]string{""}, i18n.Genders...) {
		somebody[g] = Somebody(l, g)
	}
	for _, f := range l.Forms() {
		family, _, _ := strings.Cut(f.ID, ".")
		if family == "words" || strings.HasSuffix(f.ID, ".gender") {
			continue
		}
		who := somebody[f.Gender]
		switch {
		case f.Gender != "" && who == "": // nobody has that gender
		case !f.Written:
			s.samples = append(s.samples, Sample{ID: f.ID, Gender: f.Gender, N: -1, Line: phrase.Say(f.ID), Fault: "it is not written yet"})
		case f.Plural:
			for _, n := range SampleNumbers {
				s.say(f, who, n)
			}
		default:
			s.say(f, who, -1)
		}
	}
	return s.samples
}

type sampler struct {
	lang    *i18n.Language
	samples []Sample
}

// Somebody is the first character of a language with a gender, or with any gender
// when that is empty; empty where there is none.
func Somebody(l *i18n.Language, gender string) string {
	for _, id := range l.Blocks("character") {
		if gender == "" || l.Gender(id) == gender {
			return id
		}
	}
	return ""
}

func (s *sampler) say(f i18n.Form, subject string, n int) {
	line := phrase.Line{ID: f.ID, Subject: subject}
	for _, place := range f.Places {
		line.Values = append(line.Values, s.value(place, n, subject))
	}
	sample := Sample{ID: f.ID, Gender: f.Gender, N: n, Line: line}
	var err error
	if sample.Text, err = s.lang.Try(line); err != nil {
		sample.Fault = err.Error()
	}
	s.samples = append(s.samples, sample)
}

// value fills a place of a sample: by the first character of the file where the
// place is a character's, and by the place's own name otherwise.
func (s *sampler) value(place string, n int, subject string) phrase.Value {
	switch kind := i18n.KindOf(place); {
	case kind == i18n.PlacePerson && subject != "":
		return phrase.Person(place, subject)
	case kind == i18n.PlaceGap:
		return phrase.Blank(place, "")
	case place == "N" && n < 0:
		return phrase.Blank("N", "")
	case place == "N":
		return phrase.Number("N", n)
	case place == "Equation":
		return phrase.Equation(place, problem.Equal(problem.Sum(8, 6).Asking(1), problem.Number(14)))
	}
	return phrase.Text(place, "("+place+")")
}
