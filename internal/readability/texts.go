package readability

import (
	"fmt"
	"slices"
	"strings"
)

// Limits of our own choice; see the package comment. Those of sentences are for
// English: other languages part what they say into words in other ways.
const (
	MaxGrade         = 5.0  // Flesch-Kincaid, family texts in English
	MinSzigriszt     = 65.0 // "fairly easy", all texts in Spanish
	MaxSpache        = 2.5  // stories in English stay below
	MaxSentence      = 15   // words of a sentence to the family, English
	MaxStorySentence = 14   // words of a sentence of a story, English
	LeastSample      = 100  // words that a formula needs to hold a text up
)

// Text is something that is said on a page.
type Text struct {
	Name  string // to find it again: the id of a message, or a week and a story
	Text  string
	Story bool // for the child; else for the family
}

// Level is how hard texts of one sort are, taken together.
type Level struct {
	Words, Sentences, Syllables int
	Grade                       float64  // Flesch-Kincaid; English only
	Spache                      float64  // English stories only
	Szigriszt                   float64  // Spanish only
	Difficult                   []string // English stories: the words that are not easy ones
	Longest                     int      // words of the longest sentence
}

// Report is what was measured, and what is harder than it should be.
type Report struct {
	Family, Stories Level
	Misses          []Miss
}

// Miss is a text that is harder than it should be. Name is empty when all of
// them together are.
type Miss struct{ Name, Why string }

// Known reports whether there is a formula for a language.
func Known(tag string) bool { return counters[tag] != nil }

// counters count the syllables of a word.
var counters = map[string]func(word string) int{"en": EnglishSyllables, "es": SpanishSyllables}

// Texts measures what is said in a language that has a formula; see Known. For
// others the report is empty. Names are those of people, which are easy.
func Texts(tag string, texts []Text, names ...string) Report {
	var r Report
	syllables, known := counters[tag]
	if !known {
		return r
	}
	for _, t := range texts {
		r.add(t, syllables)
	}
	if tag == "en" {
		r.tooLong(texts)
		r.Stories.difficult(texts, easyWords(names))
	}
	r.judge(tag)
	return r
}

// add counts a text.
func (r *Report) add(t Text, syllables func(string) int) {
	level := &r.Family
	if t.Story {
		level = &r.Stories
	}
	for _, sentence := range Sentences(t.Text) {
		words := Words(sentence)
		level.Sentences++
		level.Words += len(words)
		level.Longest = max(level.Longest, len(words))
		for _, w := range words {
			level.Syllables += syllables(w)
		}
	}
}

// tooLong notes the sentences that are too long.
func (r *Report) tooLong(texts []Text) {
	for _, t := range texts {
		most := MaxSentence
		if t.Story {
			most = MaxStorySentence
		}
		for _, sentence := range Sentences(t.Text) {
			if n := len(Words(sentence)); n > most {
				r.Misses = append(r.Misses, Miss{t.Name, fmt.Sprintf("a sentence has %d words, %d are enough: %q", n, most, sentence)})
			}
		}
	}
}

// difficult notes each difficult word of the stories once.
func (l *Level) difficult(texts []Text, easy list) {
	for _, t := range texts {
		if !t.Story {
			continue
		}
		for _, word := range Words(strings.Join(Sentences(t.Text), " ")) {
			word = strings.ToLower(word)
			if !easy.has(word) && !slices.Contains(l.Difficult, word) {
				l.Difficult = append(l.Difficult, word)
			}
		}
	}
}

// judge works the formulas out and holds them against the limits.
func (r *Report) judge(tag string) {
	miss := func(l Level, wrong bool, why string, values ...any) {
		if wrong && l.Words >= LeastSample {
			r.Misses = append(r.Misses, Miss{Why: fmt.Sprintf(why, values...)})
		}
	}
	f, s := &r.Family, &r.Stories
	switch tag {
	case "en":
		f.Grade, s.Grade = f.grade(), s.grade()
		s.Spache = Spache(s.Words, s.Sentences, len(s.Difficult))
		miss(*f, f.Grade > MaxGrade, "the family texts are for grade %.1f (Flesch-Kincaid), want at most %.1f", f.Grade, MaxGrade)
		miss(*s, s.Spache >= MaxSpache, "the stories are for grade %.1f (Spache), want less than %.1f", s.Spache, MaxSpache)
	case "es":
		f.Szigriszt, s.Szigriszt = f.ease(), s.ease()
		miss(*f, f.Szigriszt < MinSzigriszt, "the family texts score %.1f (Szigriszt), want at least %.1f", f.Szigriszt, MinSzigriszt)
		miss(*s, s.Szigriszt < MinSzigriszt, "the stories score %.1f (Szigriszt), want at least %.1f", s.Szigriszt, MinSzigriszt)
	}
}

func (l Level) grade() float64 { return FleschKincaid(l.Words, l.Sentences, l.Syllables) }

func (l Level) ease() float64 { return Szigriszt(l.Words, l.Sentences, l.Syllables) }
