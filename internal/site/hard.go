package site

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/i18n"
	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/translate"
)

// hardNumbers are the amounts that break a sentence most easily: none, one and two, the
// numbers whose plural is not that of their neighbors, hundreds among tens.
var hardNumbers = []int{0, 1, 2, 5, 11, 21, 22, 100, 101, 733}

// mostSentences is what a reader goes through in about an hour.
const mostSentences = 600

// Hard are readings of what numbers can break in a language, of about an hour each. The
// first has every message to families that has a number in it or answers one, with the
// amounts that try it hardest, and as many stories as there is room for; the others have
// stories, until each sentence with an amount was told. What no number can break stands
// in the sample.
func (in SampleInput) Hard() []translate.Reading {
	h := hardReading{in: in, lang: in.Draft.Language, met: map[int]int{}}
	h.work()
	tellings := h.tellings()
	rest := slices.DeleteFunc([]translate.Group{
		{Title: "Solved steps", Sentences: h.of("strategy")},
		{Title: "Checks and estimates", Sentences: h.of("estimate", "check", "sense")},
		{Title: "Replies: right, near, too small, too big", Sentences: h.of("reply", "try")},
		{Title: "Replies: a slip that is known", Sentences: h.of("mistake")},
		{Title: "The sheet of paper", Sentences: append(h.of("print"), h.frames(tellings)...)},
		{Title: "The child's own story", Sentences: h.of("own")},
		{Title: "Finding the way", Sentences: append(h.weeks(), h.of("learn", "page", "index", "warm-up", "target", "share")...)},
	}, func(g translate.Group) bool { return len(g.Sentences) == 0 })
	var parts []translate.Reading
	for i, stories := range h.hours(tellings, mostSentences-translate.Reading{Groups: rest}.Size()) {
		r := translate.Reading{Tag: in.Draft.Status.Tag, Name: in.Draft.Status.Name, Part: i + 1}
		if len(stories) > 0 {
			r.Groups = []translate.Group{{Title: "Stories", Sentences: stories}}
		}
		if i == 0 {
			r.Groups = append(r.Groups, rest...)
		}
		parts = append(parts, r)
	}
	for i := range parts {
		parts[i].Parts = len(parts)
	}
	return parts
}

// hardReading chooses the sentences of a reading.
type hardReading struct {
	in   SampleInput
	lang *i18n.Language
	said map[string][]heardLine // by message, all that was worked out
	met  map[int]int            // how often the stories chosen so far have each hard number
}

// heardLine is a line with what a page shows when it says it.
type heardLine struct {
	line phrase.Line
	of   string
	hard []int // the hard numbers in it
}

// of are the messages of some families, in the order of the file.
func (h *hardReading) of(families ...string) []translate.Sentence {
	var out []translate.Sentence
	for _, f := range h.lang.Forms() {
		family, _, _ := strings.Cut(f.ID, ".")
		if !slices.Contains(families, family) || !f.Written || aside(f.ID) {
			continue
		}
		lines := h.hardest(h.said[f.ID])
		if len(lines) == 0 && len(f.Places) > 0 {
			lines = h.forms(f)
		}
		for _, s := range lines {
			out = alsoSaid(out, translate.Sentence{IDs: []string{f.ID}, Said: h.text(s.line), Of: s.of})
		}
	}
	return out
}

// alsoSaid adds a sentence, or its message to one that says the same.
func alsoSaid(all []translate.Sentence, s translate.Sentence) []translate.Sentence {
	i := slices.IndexFunc(all, func(have translate.Sentence) bool { return have.Said == s.Said })
	switch {
	case s.Said == "": // it cannot be said yet
		return all
	case i < 0:
		return append(all, s)
	case !slices.Contains(all[i].IDs, s.IDs[0]):
		all[i].IDs = append(all[i].IDs, s.IDs[0])
	}
	return all
}

// aside reports whether a message is read elsewhere: a name, or a line that weeks says
// with dates.
func aside(id string) bool {
	return strings.HasSuffix(id, ".name") || strings.Contains(id, ".name-") || strings.HasPrefix(id, "page.week")
}

// text is what a line says; empty where it cannot be said yet.
func (h *hardReading) text(line phrase.Line) string {
	text, fault := h.in.say(line)
	if fault != "" {
		return ""
	}
	return h.lang.Isolated(text)
}

// hardest are one or two lines of a message: that with most hard numbers, and one
// that has others and sounds otherwise.
func (h *hardReading) hardest(all []heardLine) []heardLine {
	slices.SortStableFunc(all, func(a, b heardLine) int { return cmp.Compare(len(b.hard), len(a.hard)) })
	for i, s := range all {
		if i > 0 && h.words(s.line) != h.words(all[0].line) {
			return []heardLine{all[0], s}
		}
	}
	return all[:min(1, len(all))]
}

// words is what a line says without its numbers.
func (h *hardReading) words(line phrase.Line) string {
	text, _ := h.in.say(line)
	var b strings.Builder
	for _, run := range text {
		if run.Kind != i18n.RunNumber && run.Kind != i18n.RunEquation {
			b.WriteString(run.Text)
		}
	}
	return strings.Map(func(c rune) rune {
		if c >= '0' && c <= '9' {
			return -1
		}
		return c
	}, b.String())
}

// forms says a message that no calculation asks for: in each of its plural forms once.
func (h *hardReading) forms(f i18n.Form) []heardLine {
	numbers := []int{21}
	if strings.HasPrefix(f.ID, "warm-up.") { // shown with fingers, among others
		numbers[0] = 5
	}
	if f.Plural {
		numbers = hardNumbers
	}
	var out []heardLine
	for _, n := range numbers {
		line := phrase.Line{ID: f.ID, Subject: translate.Somebody(h.lang, f.Gender)}
		for i, place := range f.Places {
			line.Values = append(line.Values, h.value(f.ID, place, n, i, line.Subject))
		}
		if !slices.ContainsFunc(out, func(s heardLine) bool { return h.words(s.line) == h.words(line) }) {
			out = append(out, heardLine{line: line})
		}
	}
	return out
}

// value fills a place of a message that no calculation asks for.
func (h *hardReading) value(message, place string, n, i int, who string) phrase.Value {
	switch {
	case i18n.KindOf(place) == i18n.PlaceGap, strings.HasPrefix(message, "own.frame.") && place != "N":
		return phrase.Blank(place, "")
	case i18n.KindOf(place) == i18n.PlacePerson:
		return phrase.Person(place, who)
	case slices.Contains([]string{"Language", "School", "Can", "Time", "Link", "File"}, place):
		return phrase.Text(place, "("+place+")")
	}
	if place == "Within" {
		n = 1000
	}
	return phrase.Number(place, n+i)
}

// weeks are the dates of weeks: every month, and the days that languages write in ways
// of their own.
func (h *hardReading) weeks() []translate.Sentence {
	days := []int{1, 2, 11, 21, 22}
	var out []translate.Sentence
	for month := range 12 {
		line := page.WeekOf(fmt.Sprintf("2027-%02d-%02d", month+1, days[month%len(days)]))
		if text := h.text(line); text != "" {
			out = append(out, translate.Sentence{IDs: []string{line.ID}, Said: text})
		}
	}
	return out
}
