package site

import (
	"fmt"
	"slices"

	"homebuild/internal/problem"
	"homebuild/internal/reading"
	"homebuild/internal/story"
	"homebuild/internal/week"
)

// texts parts the numbers of a story into those that its problem tells and
// others that are written in digits; other number words stay words.
func texts(t reading.Text, used []int) (told, rest []int) {
	for i, n := range t.Numerals {
		switch {
		case slices.Contains(used, i):
			told = append(told, i)
		case !n.Word:
			rest = append(rest, i)
		}
	}
	return told, rest
}

// stressed is how many numbers of a text stand out: those that are needed, and
// one that is not, as in our own stories.
func stressed(told, rest []int) int { return len(told) + min(1, len(rest)) }

// text cuts a text at its numbers.
func (s *scribe) text(tag string, t reading.Text, shown []int) story.OwnText {
	out := story.OwnText{Tag: tag, RightToLeft: s.rightToLeft(tag)}
	at := 0
	for i, n := range t.Numerals {
		if !slices.Contains(shown, i) {
			continue
		}
		if n.Start > at {
			out.Runs = append(out.Runs, story.OwnRun{Text: t.Plain[at:n.Start]})
		}
		out.Runs = append(out.Runs, story.OwnRun{Text: t.Plain[n.Start:n.End], Number: true})
		at = n.End
	}
	if at < len(t.Plain) {
		out.Runs = append(out.Runs, story.OwnRun{Text: t.Plain[at:]})
	}
	return out
}

func (s *scribe) rightToLeft(tag string) bool {
	lang, ok := s.in.Catalog.Language(tag)
	return ok && lang.RightToLeft()
}

// translations adds the translations for the languages of the site. Each tells
// the same numbers as the story.
func (s *scribe) translations(add addProblem, own week.OwnStory, text reading.Text, numbers []int, shown int, in map[string]story.OwnText) bool {
	ok := true
	for _, tag := range s.in.Site.Languages {
		words := own.In[tag]
		if words == "" {
			continue
		}
		setting := "in." + tag
		if tag == s.in.Site.School {
			add(setting, "this is the language of the story itself", "take this line away")
			ok = false
			continue
		}
		t, err := s.reader(tag).Mark(words)
		if err != nil {
			fault(add, setting, err)
			ok = false
			continue
		}
		same, fault := match(text, numbers, t)
		if fault != "" {
			add(setting, fault, `tell the same numbers as the story; for a word that says one, write [a dozen = 12]`)
			ok = false
			continue
		}
		in[tag] = s.text(tag, t, same[:shown])
	}
	return ok
}

// match finds the numbers of a story in its translation, and tells those that
// only one of them has.
func match(text reading.Text, numbers []int, t reading.Text) (same []int, fault string) {
	for _, i := range numbers {
		value, at := text.Numerals[i].Value, -1
		for j, n := range t.Numerals {
			if n.Value == value && !slices.Contains(same, j) && (at < 0 || !n.Word && t.Numerals[at].Word && !t.Numerals[at].Marked) {
				at = j
			}
		}
		if at < 0 {
			return nil, fmt.Sprintf("the translation does not tell %d", value)
		}
		same = append(same, at)
	}
	for j, n := range t.Numerals {
		if (!n.Word || n.Marked) && !slices.Contains(same, j) {
			return nil, fmt.Sprintf("the translation tells %d, and the story does not", n.Value)
		}
	}
	return same, ""
}

// answer reads the answer in the teacher's words: the right number, once, or a
// right pair.
func (s *scribe) answer(add addProblem, own week.OwnStory, p problem.Problem) (story.OwnText, bool) {
	if own.Answer == "" {
		return story.OwnText{}, true
	}
	t, err := s.reader(s.in.Site.School).Mark(own.Answer)
	if err != nil {
		fault(add, "answer", err)
		return story.OwnText{}, false
	}
	var right []int
	for i, n := range t.Numerals {
		if len(right) == 0 && n.Value == p.Answer() {
			right = append(right, i)
		}
	}
	if p.Pairs() != nil {
		right = nil
		if n := t.Numerals; len(n) == 2 && n[0].Value+n[1].Value == p.Calculation().Value() {
			right = []int{0, 1}
		}
	}
	if len(right) == 0 {
		add("answer", fmt.Sprintf("the answer sentence does not say %d, the answer to the reading", p.Answer()), "look at the reading and the sentence once more; one of them is another story's")
		return story.OwnText{}, false
	}
	out := s.text(s.in.Site.School, t, right)
	for i := range out.Runs {
		out.Runs[i].Asked = out.Runs[i].Number
	}
	return out, true
}
