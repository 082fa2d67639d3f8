package translate

import (
	"slices"
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
// file. A place that could hold anything shows its own name.
func Samples(l *i18n.Language) []Sample {
	s := sampler{lang: l, thing: first(l.Blocks("thing"), "")}
	for _, f := range l.Forms() {
		family, _, _ := strings.Cut(f.ID, ".")
		if family == "words" || strings.HasSuffix(f.ID, ".gender") {
			continue
		}
		who := s.somebody(family, f.Gender)
		switch {
		case f.Gender != "" && who == "": // nobody has that gender
		case !f.Written:
			s.samples = append(s.samples, Sample{ID: f.ID, Gender: f.Gender, N: -1, Line: phrase.Say(f.ID), Fault: "it is not written yet"})
		case f.Plural || slices.ContainsFunc(f.Places, func(p string) bool { return i18n.KindOf(family, p) == i18n.PlaceQuantity }):
			for _, n := range SampleNumbers {
				s.say(f, family, who, n)
			}
		default:
			s.say(f, family, who, -1)
		}
	}
	return s.samples
}

type sampler struct {
	lang    *i18n.Language
	thing   string // that is counted; empty where there is none yet
	samples []Sample
}

// somebody is the first person that a message of a family may be about, of a
// gender; of any gender when that is empty.
func (s *sampler) somebody(family, gender string) string {
	people := "character"
	if family == "story" {
		people = "person"
	}
	for _, id := range s.lang.Blocks(people) {
		if gender == "" || s.lang.Gender(id) == gender {
			return id
		}
	}
	return ""
}

func (s *sampler) say(f i18n.Form, family, subject string, n int) {
	line := phrase.Line{ID: f.ID, Subject: subject}
	for _, place := range f.Places {
		line.Values = append(line.Values, s.value(family, place, n, subject))
	}
	sample := Sample{ID: f.ID, Gender: f.Gender, N: n, Line: line}
	var err error
	if sample.Text, err = s.lang.Try(line); err != nil {
		sample.Fault = err.Error()
	}
	s.samples = append(s.samples, sample)
}

// value fills a place of a sample: by the first person or thing of the file
// where the place is theirs, and by the place's own name otherwise.
func (s *sampler) value(family, place string, n int, subject string) phrase.Value {
	switch kind := i18n.KindOf(family, place); {
	case kind == i18n.PlacePerson && subject != "":
		if place == "B" {
			others := slices.DeleteFunc(s.lang.Blocks("person"), func(id string) bool { return id == subject })
			subject = first(others, subject)
		}
		return phrase.Person(place, subject)
	case kind == i18n.PlaceGap:
		return phrase.Blank(place, "")
	case place == "N" && n < 0:
		return phrase.Blank("N", "")
	case place == "N":
		return phrase.Number("N", n)
	case kind == i18n.PlaceAsk && s.thing != "":
		return phrase.Asked(place, s.thing)
	case kind == i18n.PlaceQuantity && s.thing != "":
		return phrase.Counted(place, s.thing, n)
	case place == "Equation":
		return phrase.Equation(place, problem.Equal(problem.Sum(8, 6).Asking(1), problem.Number(14)))
	}
	return phrase.Text(place, "("+place+")")
}

func first(list []string, otherwise string) string {
	if len(list) > 0 {
		return list[0]
	}
	return otherwise
}
