package site

import (
	"homebuild/internal/cards"
	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/story"
)

// inventPage is the page where a child makes up a story like those of the week.
type inventPage struct {
	Language *language
	Lesson   *lesson
	Ideas    map[string][]page.Idea // by setting
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
	add := func(to *[]page.Card, id string, starter phrase.Line, ideas []page.Idea) {
		if l.Has(id) {
			*to = append(*to, page.Card{Symbol: id, Name: phrase.Say(id + ".name"), Starter: starter, Ideas: ideas})
		}
	}
	for _, id := range cards.Characters() {
		add(&characters, id, phrase.Say("own.starter.character", phrase.Person("Who", id)).About(id), nil)
	}
	for _, id := range cards.Settings() {
		add(&settings, id, phrase.Say(id+".scene"), l.ideas[id])
	}
	return characters, settings
}

// mostIdeas is how many a setting has on a page, which has no room for more.
const mostIdeas = 1

// ideas are what can happen in each setting, and to whom.
func ideas(places story.Places) map[string][]page.Idea {
	out := map[string][]page.Idea{}
	for _, p := range places {
		for _, e := range p.Events[:min(mostIdeas, len(p.Events))] {
			out["setting."+p.ID] = append(out["setting."+p.ID], page.Idea{Say: e.Idea(), Cast: e.Cast})
		}
	}
	return out
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
