package site

import (
	"cmp"
	"errors"
	"slices"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/ownstory"
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/story"
	"homebuild/internal/week"
)

// ownStory is a story in the teacher's words with the problem that she chose.
type ownStory struct {
	given activity.Given
	story story.Story
}

// ownStories reads the teacher's own stories of a site. One for which she has not
// chosen yet what it tells is a problem that lists what it can tell; nothing
// without a choice goes further.
type ownStories struct {
	in        Input
	languages map[string]ownstory.Language // by tag
	problems  diag.Diagnostics
}

func newOwnStories(in Input) *ownStories {
	return &ownStories{in: in, languages: map[string]ownstory.Language{}}
}

// language is how a language of the site says numbers.
func (r *ownStories) language(tag string) ownstory.Language {
	if _, ok := r.languages[tag]; !ok {
		var words map[string]int
		if lang, ok := r.in.Catalog.Language(tag); ok {
			words = lang.NumberWords()
		}
		r.languages[tag] = ownstory.NewLanguage(tag, words)
	}
	return r.languages[tag]
}

// week reads the stories of one week.
func (r *ownStories) week(w week.Week) []ownStory {
	var out []ownStory
	for i, s := range w.OwnStories {
		before := len(r.problems)
		read := r.read(s, func(setting string, err error) {
			wrong := problemOf(err)
			if wrong.Setting != "" {
				setting = wrong.Setting
			}
			p := w.Problem(week.StorySetting(i, setting), wrong.Text, wrong.Hint)
			p.Code, p.Value = cmp.Or(wrong.Code, diag.Unchosen), wrong.Value
			r.problems = append(r.problems, p)
		})
		if len(r.problems) == before {
			out = append(out, read)
		}
	}
	return out
}

// problemOf is what is wrong with a line of the teacher's.
func problemOf(err error) (wrong *ownstory.Error) {
	if !errors.As(err, &wrong) {
		panic("site: " + err.Error()) // the room knows only these
	}
	return wrong
}

// read holds what belongs to a story against its text. What is wrong goes to
// report, with the setting that it is about.
func (r *ownStories) read(s week.OwnStory, report func(setting string, err error)) ownStory {
	school := r.in.Site.School
	text, err := r.language(school).Read(s.Text)
	if err != nil {
		report("text", err)
		return ownStory{}
	}
	choice, err := text.Choose(ownstory.Wish{Happens: s.Happens, Kind: s.Kind, Number: s.Choice, Equation: s.Equation})
	if err != nil {
		report("text", err)
		return ownStory{}
	}
	unneeded := text.Unneeded(choice)
	numbers := slices.Concat(choice.Places, unneeded)
	bold := len(choice.Places) + min(1, len(unneeded)) // as in our own stories, one number at most that is not needed
	own := story.OwnWords{Class: school, By: map[string]story.OwnText{school: r.cut(school, text, numbers[:bold])}}
	for _, tag := range r.in.Site.Languages {
		if s.In[tag] == "" {
			continue
		}
		translation, places, err := r.translation(tag, s.In[tag], text, numbers)
		if err != nil {
			report("in."+tag, err)
			continue
		}
		own.By[tag] = r.cut(tag, translation, places[:bold])
	}
	if own.Answer, err = r.answer(s.Answer, choice.Problem); err != nil {
		report("answer", err)
	}
	out := ownStory{activity.Given{Problem: choice.Problem}, tell(choice.Problem, own)}
	if len(unneeded) > 0 {
		out.given.ExtraNumber = text.Numerals[unneeded[0]].Value
	}
	return out
}

// translation reads a story in another language of the site, and finds its
// numbers there.
func (r *ownStories) translation(tag, words string, text ownstory.Text, numbers []int) (ownstory.Text, []int, error) {
	if tag == r.in.Site.School {
		return ownstory.Text{}, nil, &ownstory.Error{Text: "this is the language of the story itself", Hint: "take this line away"}
	}
	translation, err := r.language(tag).Read(words)
	if err != nil {
		return ownstory.Text{}, nil, err
	}
	places, err := text.Match(numbers, translation)
	return translation, places, err
}

// answer reads the answer in the teacher's words; no words are no answer.
func (r *ownStories) answer(words string, p problem.Problem) (story.OwnText, error) {
	if words == "" {
		return story.OwnText{}, nil
	}
	text, err := r.language(r.in.Site.School).Read(words)
	if err != nil {
		return story.OwnText{}, err
	}
	places, err := text.Answers(p)
	if err != nil {
		return story.OwnText{}, err
	}
	out := r.cut(r.in.Site.School, text, places)
	for i := range out.Runs {
		out.Runs[i].Asked = out.Runs[i].Number
	}
	return out, nil
}

// cut cuts a text at the numbers that stand out.
func (r *ownStories) cut(tag string, t ownstory.Text, numbers []int) story.OwnText {
	lang, ok := r.in.Catalog.Language(tag)
	out := story.OwnText{Tag: tag, RightToLeft: ok && lang.RightToLeft()}
	at := 0
	for i, n := range t.Numerals {
		if !slices.Contains(numbers, i) {
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

// tell makes the story of a problem in the teacher's words.
func tell(p problem.Problem, own story.OwnWords) story.Story {
	st := story.Story{Problem: p, Own: &own}
	if p.Pairs() != nil {
		parts := p.Asked()
		st.Answer = phrase.Say("check.pair", phrase.Number("First", parts[0].Value), phrase.Number("Second", parts[1].Value))
		st.AnswerFrame = phrase.Say("check.pair", phrase.Blank("First", ""), phrase.Blank("Second", ""))
		return st
	}
	st.Answer = phrase.Say("try.own-answer", phrase.Number("Number", p.Answer()))
	st.AnswerFrame = phrase.Say("try.own-answer", phrase.Blank("Number", ""))
	return st
}
