package site

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/reading"
	"homebuild/internal/story"
	"homebuild/internal/week"
)

// written is a story in the teacher's words with the problem that she confirmed.
type written struct {
	activity.Own
	story story.Story
}

// scribe reads the teacher's own stories of a site. What she has not confirmed
// is a problem that holds the proposal; nothing unconfirmed goes further.
type scribe struct {
	in       Input
	readers  map[string]*reading.Reader // by language tag
	notices  diag.Problems
	problems diag.Problems
}

func newScribe(in Input) *scribe { return &scribe{in: in, readers: map[string]*reading.Reader{}} }

// reader is that of a language of the site.
func (s *scribe) reader(tag string) *reading.Reader {
	if s.readers[tag] == nil {
		var words map[string]int
		if lang, ok := s.in.Catalog.Language(tag); ok {
			words = lang.NumberWords()
		}
		s.readers[tag] = reading.NewReader(tag, words)
	}
	return s.readers[tag]
}

// week reads the stories of one week.
func (s *scribe) week(w week.Week) []written {
	var out []written
	for i, own := range w.OwnStories {
		add := func(setting, text, hint string) {
			s.problems = append(s.problems, w.Problem(week.StorySetting(i, setting), text, hint))
		}
		text, err := s.reader(s.in.Site.School).Mark(own.Text)
		if err != nil {
			fault(add, "text", err)
			continue
		}
		proposal := s.reader(s.in.Site.School).Read(text)
		if own.Reading == "" {
			s.propose(add, text, proposal)
			continue
		}
		p, used, ok := s.confirmed(add, own.Reading, text, proposal)
		if !ok {
			continue
		}
		if proposal.Certainty == reading.Sure && (proposal.Problem.Kind() != p.Kind() || proposal.Problem.Answer() != p.Answer()) {
			s.notices = append(s.notices, w.Problem(week.StorySetting(i, "reading"),
				fmt.Sprintf("you confirmed %q; read by itself, the story tells %q", own.Reading, reading.Line(proposal.Problem)),
				"look once more; nothing needs to change if yours is right"))
		}
		told, rest := texts(text, used)
		numbers := append(told, rest...)
		in := map[string]story.OwnText{s.in.Site.School: s.text(s.in.Site.School, text, numbers[:stressed(told, rest)])}
		ok = s.translations(add, own, text, numbers, stressed(told, rest), in)
		answer, okAnswer := s.answer(add, own, p)
		if ok && okAnswer {
			out = append(out, write(p, text, rest, story.Own{By: in, Class: s.in.Site.School, Answer: answer}))
		}
	}
	return out
}

// write makes the story of it.
func write(p problem.Problem, text reading.Text, rest []int, own story.Own) written {
	st := story.Story{Frame: "own", Problem: p, Own: &own}
	if p.Pairs() != nil {
		parts := p.Asked()
		st.Answer = phrase.Say("check.pair", phrase.Number("First", parts[0].Value), phrase.Number("Second", parts[1].Value))
		st.AnswerFrame = phrase.Say("check.pair", phrase.Blank("First", ""), phrase.Blank("Second", ""))
	} else {
		st.Answer = phrase.Say("try.own-answer", phrase.Number("Number", p.Answer()))
		st.AnswerFrame = phrase.Say("try.own-answer", phrase.Blank("Number", ""))
	}
	out := written{Own: activity.Own{Problem: p}, story: st}
	if len(rest) > 0 {
		out.ExtraNumber = text.Numerals[rest[0]].Value
	}
	return out
}

type addProblem func(setting, text, hint string)

// fault tells what reading a line or a mark found wrong.
func fault(add addProblem, setting string, err error) {
	var f *reading.Fault
	if !errors.As(err, &f) {
		panic("site: " + err.Error()) // the reader knows only these
	}
	add(setting, f.Text, f.Hint)
}

// marks is how a teacher leads the reader.
const marks = "mark the numbers that count, [6 kites], and what is asked, [?]"

// propose says how a story is read that nobody has confirmed; in a language that
// is not read, what its numbers could tell.
func (s *scribe) propose(add addProblem, text reading.Text, r reading.Reading) {
	if r.Certainty == reading.CannotTell {
		what, hint := "your own story was not understood: ", marks+`; or write yourself what it tells: reading = "add-to-result 8 + 6 = ?"; "homebuild help own-stories" lists the kinds`
		if fitting := reading.Fitting(text.Counting()); len(fitting) > 0 && !s.reader(s.in.Site.School).Reads() {
			what = "your own story waits for you to say what it tells: "
			hint = "paste below its text the one line that it tells; if none does, " + marks + choices(fitting)
		}
		add("text", what+r.Why, hint)
		return
	}
	sure := "read as"
	if r.Certainty == reading.Unsure {
		sure = fmt.Sprintf("perhaps (%s)", r.Why)
	}
	p := r.Problem
	add("text", fmt.Sprintf("your own story waits for your yes; %s: %s, %s, and %s", sure, reading.About(p.Kind()), p.Equation(), answerOf(p)),
		fmt.Sprintf("if that is what it tells, paste the next line below its text; if not, %s\n    reading = %q", marks, reading.Line(p)))
}

func answerOf(p problem.Problem) string {
	if p.Pairs() != nil {
		return "any pair is right"
	}
	return "the answer is " + strconv.Itoa(p.Answer())
}

// choices are lines to paste, one below the other, each with what it means.
func choices(fitting []problem.Problem) string {
	var b strings.Builder
	for _, p := range fitting {
		fmt.Fprintf(&b, "\n    reading = %-40q # %s; %s", reading.Line(p), reading.About(p.Kind()), answerOf(p))
	}
	return b.String()
}

// confirmed holds what the teacher confirmed against the text.
func (s *scribe) confirmed(add addProblem, line string, text reading.Text, proposal reading.Reading) (p problem.Problem, used []int, ok bool) {
	p, err := reading.ParseLine(line)
	if err != nil {
		fault(add, "reading", err)
		return p, nil, false
	}
	if text, hint := notShown(p); text != "" {
		add("reading", text, hint)
		return p, nil, false
	}
	used, missing := text.Tells(p)
	if len(missing) > 0 {
		hint := fmt.Sprintf("the numbers of the story are %s; write the reading of this story", numbers(text.Values()))
		if proposal.Certainty != reading.CannotTell {
			hint = fmt.Sprintf("the numbers of the story are %s; it was read as %q", numbers(text.Values()), reading.Line(proposal.Problem))
		}
		add("reading", fmt.Sprintf("the story does not tell %s, which the reading needs", numbers(missing)), hint)
		return p, nil, false
	}
	for i, n := range text.Numerals {
		if n.Marked && !slices.Contains(used, i) {
			add("reading", fmt.Sprintf("%q is marked as a number that counts, and the reading does not have it", text.Plain[n.Start:n.End]),
				"take the mark away, or write the reading anew")
			return p, nil, false
		}
	}
	return p, used, true
}

// notShown says why a problem cannot be shown on a page; empty when it can.
func notShown(p problem.Problem) (text, hint string) {
	for _, q := range p.Quantities() {
		switch {
		case q.Value > reading.Largest:
			return fmt.Sprintf("%d is larger than %d", q.Value, reading.Largest), "pages show numbers up to that one"
		case q.Role == problem.RoleDifference && q.Value == 0:
			return "both amounts are the same, so there is no difference to ask for", "change one of the numbers"
		}
	}
	if _, ok := picture.AllPairs(p); p.Pairs() != nil && !ok {
		return fmt.Sprintf("%d can be parted in too many ways to list them", p.Calculation().Value()), fmt.Sprintf("take a number up to %d", picture.Most)
	}
	return "", ""
}

// numbers lists numbers: "8, 6 and 14".
func numbers(list []int) string {
	words := make([]string, len(list))
	for i, n := range list {
		words[i] = strconv.Itoa(n)
	}
	if len(words) == 0 {
		return "none"
	}
	last := words[len(words)-1]
	if len(words) == 1 {
		return last
	}
	return strings.Join(words[:len(words)-1], ", ") + " and " + last
}
