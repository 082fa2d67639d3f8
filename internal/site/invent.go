package site

import (
	"slices"
	"sync"

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
	Settings *settings
}

// settings are the settings that a language has, with what can happen there in a
// situation.
type settings struct {
	cards func() *page.Cards
	sum   string
}

// Sum names what can happen; the rest is the language's.
func (s *settings) Sum() string { return s.sum }

func (l *language) newSettings(ideas map[string][]phrase.Line) *settings {
	return &settings{sum: digest(ideas), cards: sync.OnceValue(func() *page.Cards {
		all := new(page.Cards)
		for _, id := range l.told(cards.Settings()) {
			all.All = append(all.All, page.Card{Symbol: id, Name: phrase.Say(id + ".name"), Starter: phrase.Say(id + ".scene"), Ideas: ideas[id]})
		}
		return all
	})}
}

func inventPath(tag, date string) string { return tag + "/" + date + "-story.html" }

func (p inventPage) path() string { return inventPath(p.Language.Tag(), p.Lesson.date) }

func (p inventPage) view(c *common) page.View {
	l, tag := p.Lesson, p.Language.Tag()
	f := l.frame()
	who, with := page.PickedWho("Who"), page.PickedWith("With")
	v := &page.Invent{
		WeekPage: c.week(p.Language, l, inventPath), Two: f.two,
		Numbers: phrase.Say("own.numbers."+f.numbers, phrase.Number("Within", l.target.Within)),
		Story:   f.story(who, with), Answer: f.say(f.answer, who, with), Equation: l.worked.Problem.Equation(),
	}
	v.Characters, v.Settings = p.Language.characters(), p.Settings.cards()
	if l.numbers != nil {
		check := c.link(v.Path, weekCheckPath(tag, l.date))
		for _, pair := range l.pairs() {
			if pair.Href = check + "#" + page.PairID(pair.First, pair.Second); check != "" {
				v.Pairs = append(v.Pairs, pair)
			}
		}
		return v
	}
	for n := 1; n <= min(l.target.Within, checkLargest); n++ {
		if href := c.link(v.Path, checkFirstPath(tag, n)); href != "" {
			v.Strip = append(v.Strip, page.Number{N: n, Href: href})
		}
	}
	return v
}

// situation is what happens in a child's own story: as in the worked one.
func (l *lesson) situation() problem.Situation { return l.worked.Problem.Kind().Situation() }

// pairs are the large numbers that the week's stories tell two by two, and whose check
// page knows both: the bigger one first. Where a child's own story puts them together,
// they make no more than the week's range; one of other numbers gets none.
func (l *lesson) pairs() (out []page.Pair) {
	f := l.frame()
	if !f.pairs() {
		return nil
	}
	for _, e := range l.exercises() {
		given := e.Problem.Given()
		if len(given) != 2 || !slices.Contains(l.numbers, given[0].Value) || !slices.Contains(l.numbers, given[1].Value) {
			continue
		}
		pair := page.Pair{First: max(given[0].Value, given[1].Value), Second: min(given[0].Value, given[1].Value)}
		if f.numbers == "parts" && pair.First+pair.Second > l.target.Within {
			continue
		}
		if pair.First > checkLargest && pair.First > pair.Second && !slices.Contains(out, pair) {
			out = append(out, pair)
		}
	}
	return out
}

// newCharacters are those that the language has a name for.
func (l *language) newCharacters() *page.Cards {
	all := new(page.Cards)
	for _, id := range l.told(cards.Characters()) {
		who := phrase.Person("Who", id)
		all.All = append(all.All, page.Card{
			Symbol: id, Name: phrase.Say(id + ".name"),
			Starter: phrase.Say("own.starter.character", who).About(id),
		})
	}
	return all
}

// fewCards are enough for a child's story.
const fewCards = 3

// told are the cards that the language has words for. In one that is not whole and has
// none the first are asked for, as no story can be made up without any.
func (l *language) told(ids []string) []string {
	told := slices.DeleteFunc(slices.Clone(ids), func(id string) bool { return !l.Has(id) })
	if len(told) == 0 && !l.Whole() {
		return ids[:fewCards]
	}
	return told
}

// mostIdeas is how many a setting has on a page, whose weight has no room for more.
const mostIdeas = 2

// ideas are what can happen in each setting in a situation; where nothing there is of
// the kind, what can happen at all.
func ideas(places story.Places, of problem.Situation) map[string][]phrase.Line {
	tells := func(e *story.Event) bool {
		return slices.ContainsFunc(e.Kinds, func(k problem.Kind) bool { return k.Situation() == of })
	}
	out := map[string][]phrase.Line{}
	for _, p := range places {
		fitting := slices.DeleteFunc(slices.Clone(p.Events), func(e *story.Event) bool { return !tells(e) })
		for _, e := range append(fitting, p.Events...)[:min(mostIdeas, len(p.Events))] {
			out["setting."+p.ID] = append(out["setting."+p.ID], e.Idea())
		}
	}
	return out
}
