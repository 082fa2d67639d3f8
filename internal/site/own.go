package site

import (
	"strconv"
	"sync"

	"homebuild/internal/cards"
	"homebuild/internal/i18n"
	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
	"homebuild/internal/week"
)

// checkLargest is the largest whole that the check pages know.
const checkLargest = 20

func (b *builder) own(lang *i18n.Language, l *lesson) {
	own := ownPath(lang.Tag(), l.week.Date)
	b.add(own, false, madeFrom{b.of(lang), l.sum}, func() page.View {
		v := &page.Own{
			Frame: b.weekFrame(lang, l, ownPath), Week: pageDate(l.week.Date), Target: l.target.CanLine(),
			Characters: characterCards(lang), Settings: settingCards(lang),
			Op: l.worked.Problem.Calculation().Op, Links: b.links(lang, l, own),
		}
		v.Story, v.Answer = l.blankStory()
		for n := range checkLargest + 1 {
			v.Strip = append(v.Strip, page.Number{N: n, Href: link(own, checkFirstPath(lang.Tag(), n))})
		}
		return v
	})
}

// characterCards are the characters that the language has a name for.
func characterCards(lang *i18n.Language) []page.Card {
	return cardsOf(lang, cards.Characters(), func(id string) phrase.Line {
		return phrase.Say("own.starter.character", phrase.Person("Who", id)).About(id)
	})
}

func settingCards(lang *i18n.Language) []page.Card {
	return cardsOf(lang, cards.Settings(), func(id string) phrase.Line {
		return phrase.Say(id + ".scene")
	})
}

func cardsOf(lang *i18n.Language, ids []string, starter func(id string) phrase.Line) []page.Card {
	var out []page.Card
	for _, id := range ids {
		if lang.Has(id) {
			out = append(out, page.Card{Symbol: id, Name: phrase.Say(id + ".name"), Starter: starter(id)})
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
func (l lesson) blankStory() (sentences []phrase.Line, answer phrase.Line) {
	id := "own.frame." + situations[l.worked.Problem.Kind().Situation()]
	gap := phrase.Blank("Gap", "")
	for _, part := range []string{"first", "second", "ask"} {
		sentences = append(sentences, phrase.Say(id+"."+part, gap))
	}
	return sentences, phrase.Say(id+".answer", gap)
}

func (b *builder) print(lang *i18n.Language, l *lesson) {
	own := printPath(lang.Tag(), l.week.Date)
	from := madeFrom{b.of(lang), b.of(b.school), l.sum, b.Site.Answers}
	b.add(own, false, from, func() page.View {
		v := &page.Print{
			Frame: b.weekFrame(lang, l, printPath), Week: pageDate(l.week.Date), Target: l.target.CanLine(),
			Words: l.words(), Class: b.school, Worked: l.worked.Story, Answers: b.Site.Answers != week.AnswersLink, Links: b.links(lang, l, own),
		}
		for _, t := range l.stories {
			v.Stories = append(v.Stories, t.Story)
		}
		v.Own, _ = l.blankStory()
		if b.Site.Address != "" {
			v.WeekURL = b.Site.Address + weeklyPath(l.week.Date)
		}
		return v
	})
}

// checkPages lists the pages that check any two numbers.
func (b *builder) checkPages(lang *i18n.Language) {
	index := checkPath(lang.Tag())
	b.add(index, false, madeFrom{b.of(lang)}, func() page.View {
		v := &page.CheckIndex{Frame: b.frame(lang, index, checkPath, "index.html")}
		for n := range checkLargest + 1 {
			v.Numbers = append(v.Numbers, page.Number{N: n, Href: strconv.Itoa(n) + ".html"})
		}
		return v
	})
	for first := range checkLargest + 1 {
		own := checkFirstPath(lang.Tag(), first)
		b.add(own, false, madeFrom{b.of(lang)}, func() page.View {
			to := func(tag string) string { return checkFirstPath(tag, first) }
			v := &page.Check{Frame: b.frame(lang, own, to, "index.html"), First: first, Index: link(own, index)}
			v.Seconds = b.checks[first]()
			return v
		})
	}
}

// newChecks are the pairs of each first number, worked out once for all
// languages, when the first of their pages is made.
func newChecks() (checks [checkLargest + 1]func() []page.CheckPair) {
	for first := range checks {
		checks[first] = sync.OnceValue(func() []page.CheckPair {
			var pairs []page.CheckPair
			for second := range checkLargest + 1 {
				pairs = append(pairs, checkPair(first, second))
			}
			return pairs
		})
	}
	return checks
}

// checkPair is what two numbers make together, where that is within the range,
// and what is left when the smaller is taken from the bigger.
func checkPair(first, second int) page.CheckPair {
	pair := page.CheckPair{Second: second}
	if first+second <= checkLargest {
		pair.Results = append(pair.Results, checkResult(problem.TogetherTotal, first, second))
	}
	pair.Results = append(pair.Results, checkResult(problem.TakeFromResult, max(first, second), min(first, second)))
	return pair
}

func checkResult(kind problem.Kind, x, y int) page.CheckResult {
	p, err := problem.New(kind, x, y)
	if err != nil {
		panic("site: " + err.Error()) // the pairs are in range
	}
	drawn, err := picture.OfProblem(p, picture.BarModel, picture.Solved)
	if err != nil {
		panic("site: " + err.Error()) // a bar model fits every problem
	}
	out := page.CheckResult{Equation: p.Equation().Solved(), Picture: drawn, Sense: checkSense(p)}
	if ways := strategy.Ways(p.Calculation()); len(ways) > 0 {
		out.Way = plainWorking(ways[0])
	}
	return out
}

// plainWorking is a way in sentences and equations, without pictures: a check
// page holds many.
func plainWorking(w strategy.Way) page.Working {
	out := page.Working{Name: w.Name.Title(), Chain: w.Chain}
	for i, s := range w.Steps {
		out.Steps = append(out.Steps, page.Step{Say: w.Line(i), Equation: s.Equation})
	}
	return out
}
