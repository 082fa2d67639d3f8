package site

import (
	"homebuild/internal/cards"
	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// inventPage is the page where a child makes up a story like those of the week.
type inventPage struct {
	Language *language
	Lesson   *lesson
}

func inventPath(tag, date string) string { return tag + "/" + date + "-story.html" }

func (p inventPage) path() string { return inventPath(p.Language.Tag(), p.Lesson.date) }

func (p inventPage) view(c *common) page.View {
	l := p.Lesson
	v := &page.Invent{WeekPage: c.week(p.Language, l, inventPath)}
	v.Characters, v.Settings = p.Language.cards()
	v.Story, v.Answer = l.blankStory()
	for n := range checkLargest + 1 {
		v.Strip = append(v.Strip, page.Number{N: n, Href: link(v.Path, checkFirstPath(p.Language.Tag(), n))})
	}
	return v
}

// newCards are the characters and the settings that the language has a name
// for.
func (l *language) newCards() (characters, settings []page.Card) {
	add := func(to *[]page.Card, id string, starter phrase.Line) {
		if l.Has(id) {
			*to = append(*to, page.Card{Symbol: id, Name: phrase.Say(id + ".name"), Starter: starter})
		}
	}
	for _, id := range cards.Characters() {
		add(&characters, id, phrase.Say("own.starter.character", phrase.Person("Who", id)).About(id))
	}
	for _, id := range cards.Settings() {
		add(&settings, id, phrase.Say(id+".scene"))
	}
	return characters, settings
}

// situations names the blank stories in the language files.
var situations = map[problem.Situation]string{
	problem.AddTo: "add-to", problem.TakeFrom: "take-from",
	problem.PutTogether: "put-together", problem.Compare: "compare",
}

// blankStory is the week's sort of story with gaps to fill in.
func (l *lesson) blankStory() (sentences []phrase.Line, answer phrase.Line) {
	id := "own.frame." + situations[l.worked.Problem.Kind().Situation()]
	gap := phrase.Blank("Gap", "")
	for _, part := range []string{"first", "second", "ask"} {
		sentences = append(sentences, phrase.Say(id+"."+part, gap))
	}
	return sentences, phrase.Say(id+".answer", gap)
}
