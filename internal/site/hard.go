package site

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"homebuild/internal/activity"
	"homebuild/internal/estimate"
	"homebuild/internal/i18n"
	"homebuild/internal/mistake"
	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/story"
	"homebuild/internal/strategy"
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

// work finds what pages say of the problems that try sentences hardest.
func (h *hardReading) work() {
	h.said = map[string][]heardLine{}
	for id, line := range h.in.worked() { // something for each message, should no other problem say it
		if family, _, _ := strings.Cut(id, "."); len(line.Values) > 0 || family == "reply" || family == "mistake" {
			h.add(line, "")
		}
	}
	h.estimates()
	seen := map[string]bool{}
	for _, k := range problem.Kinds() {
		all := story.TrialProblems(k)
		for _, p := range all {
			if c := p.Calculation(); len(c.Numbers) == 2 && !seen[c.String()] {
				seen[c.String()] = true
				h.steps(c)
			}
		}
		for _, p := range h.hardProblems(all) {
			h.steps(p.Calculation())
			h.replies(p)
			h.checks(p)
		}
	}
}

// mostProblems is how many problems of a kind and a range are answered in every way.
const mostProblems = 6

// hardProblems are the hardest of a kind in each range of numbers.
func (h *hardReading) hardProblems(all []problem.Problem) []problem.Problem {
	hard := func(p problem.Problem) int { return len(h.hardIn(p.Numbers()...)) }
	all = slices.Clone(all)
	slices.SortStableFunc(all, func(p, q problem.Problem) int { return cmp.Compare(hard(q), hard(p)) })
	taken := map[int]int{}
	return slices.DeleteFunc(all, func(p problem.Problem) bool {
		within := rangeOfProblem(p)
		taken[within]++
		return within > 1000 || taken[within] > mostProblems
	})
}

// rangeOfProblem is the range of the numbers of a problem.
func rangeOfProblem(p problem.Problem) int {
	return problem.RangeOf(largest(exercise{Activity: activity.Activity{Problem: p}}))
}

// gradeOf is the grade that meets numbers of a size first.
func gradeOf(c problem.Calculation) problem.Grade {
	switch n := c.Largest(); {
	case n <= 20:
		return 1
	case n <= 100:
		return 2
	}
	return 3
}

func (h *hardReading) steps(c problem.Calculation) {
	for _, n := range strategy.Names() {
		if !strategy.Suits(n, c) {
			continue
		}
		ways := strategy.Ways(c, gradeOf(c), n)
		if len(ways) == 0 || ways[0].Name != n {
			continue
		}
		for _, line := range ways[0].Said() {
			h.add(line, "")
		}
		for _, s := range ways[0].Slips {
			h.add(s.Ask, h.context(c.Asked(), s.Answer), c.Numbers...)
		}
	}
}

func (h *hardReading) replies(p problem.Problem) {
	c := p.Calculation()
	q := mistake.Question{Problem: p, Ways: strategy.Ways(c, gradeOf(c)), Columns: gradeOf(c) > 2}
	for _, r := range q.Help(rangeOfProblem(p), 0).All() {
		for _, line := range r.Lines {
			h.add(line, h.context(p.Equation(), r.Numbers[0]), p.Numbers()...)
		}
	}
}

// context is what a reply belongs to: the calculation and the child's number.
func (h *hardReading) context(q problem.Equation, answer int) string {
	return h.lang.Isolated(i18n.Text{{Kind: i18n.RunEquation, Text: h.lang.Equation(q)}, {Kind: i18n.RunPlain, Text: ": " + strconv.Itoa(answer)}})
}

func (h *hardReading) checks(p problem.Problem) {
	lines, _ := estimate.PartWhole(p)
	for _, line := range append(lines, estimate.GoingBack(p)) {
		h.add(line, "")
	}
}

// estimates finds what is said of calculations that friendly numbers are near to.
func (h *hardReading) estimates() {
	near := append([]int{6, 8, 9, 19, 38, 49, 97, 198, 389, 412}, hardNumbers...)
	for _, a := range near {
		for _, b := range near {
			h.estimate(problem.AddToResult, a, b)
			h.estimate(problem.TakeFromResult, a, b)
			if a < 10 && b < 10 {
				h.estimate(problem.TogetherThree, a, b, 5)
			}
		}
	}
}

func (h *hardReading) estimate(k problem.Kind, numbers ...int) {
	p, err := problem.New(k, numbers...)
	if err != nil {
		return
	}
	for grade := min(2, gradeOf(p.Calculation())); grade <= 3; grade++ {
		if e, ok := estimate.For(p.Calculation(), mistake.Likely(p, 0), grade); ok {
			for _, line := range []phrase.Line{e.Say(), e.Close(), e.Judge()} {
				h.add(line, "")
			}
		}
	}
}

// mostHeard is how many lines of a message are kept to choose from.
const mostHeard = 400

// add keeps a line to choose from, with what it belongs to and the numbers in that.
func (h *hardReading) add(line phrase.Line, of string, numbers ...int) {
	if line.ID == "" || len(h.said[line.ID]) > mostHeard {
		return
	}
	for _, v := range line.Values {
		switch v.Kind {
		case phrase.KindNumber, phrase.KindCounted:
			numbers = append(numbers, v.N)
		case phrase.KindEquation:
			for _, side := range v.Equation.Sides() {
				for _, term := range side {
					numbers = append(numbers, term.Value)
				}
			}
		}
	}
	h.said[line.ID] = append(h.said[line.ID], heardLine{line, of, h.hardIn(numbers...)})
}

// hardIn are the hard ones among numbers, each once.
func (h *hardReading) hardIn(numbers ...int) []int {
	return slices.DeleteFunc(slices.Clone(hardNumbers), func(n int) bool { return !slices.Contains(numbers, n) })
}
