package page

import (
	"homebuild/internal/cards"
	"homebuild/internal/i18n"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/story"
)

// fixture makes one view of every page from a small made-up week.
type fixture struct {
	language, class *i18n.Language
	theme           *Theme
	versions        []Version
}

func line(id string, values ...phrase.Value) phrase.Line {
	return phrase.Say("fixture."+id, values...)
}

func (f fixture) frame(path, home string) Frame {
	var versions []Version
	for _, v := range f.versions {
		v.Href = "../" + v.Language.Tag() + "/2026-09-14.html"
		versions = append(versions, v)
	}
	return Frame{Language: f.language, Theme: f.theme, School: "Room 12", Path: path,
		Home: home, Default: "../2026-09-14.html", Versions: versions}
}

// told is a sentence of the story.
func told(id string, values ...phrase.Value) phrase.Line {
	return phrase.Say("story.add-to-result.1."+id, append(values, phrase.Person("A", "person.lina"))...)
}

var (
	week  = Date{2026, 9, 14}
	links = Links{
		Learn: "2026-09-14.html", Try: "2026-09-14-try.html", Own: "2026-09-14-story.html",
		Check: "check/index.html", Print: "2026-09-14-print.html",
	}
)

// views lists every page by the name of its file.
func (f fixture) views() map[string]View {
	return map[string]View{
		"learn.html": f.learn(),
		"try.html": &Try{Frame: f.frame("es/2026-09-14-try.html", "index.html"), Week: week, Target: line("target"), First: 1,
			Stories: []TryStory{f.tryStory(), f.tryStory()}, Links: links},
		"own.html": &Own{Frame: f.frame("es/2026-09-14-story.html", "index.html"), Week: week, Target: line("target"),
			Characters: cardsOf(cards.Characters()), Settings: cardsOf(cards.Settings()),
			Story:  []phrase.Line{line("blank", phrase.Blank("Blank", "")), line("how-many")},
			Answer: f.story().AnswerFrame, Op: problem.Plus, Strip: f.numbers("check/"), Links: links},
		"print.html": &Print{Frame: f.frame("es/2026-09-14-print.html", "index.html"), Week: week, Target: line("target"),
			Words: []phrase.Line{line("strategy"), line("picture")}, Class: f.class, Worked: f.story(),
			Stories: []story.Story{f.story(), f.story()}, Answers: true,
			Own:     []phrase.Line{line("blank", phrase.Blank("Blank", "")), line("how-many")},
			WeekURL: "https://example.org/room12/2026-09-14.html", Links: links},
		"check-index.html": &CheckIndex{Frame: f.frame("es/check/index.html", "../index.html"), Numbers: f.numbers("")},
		"check.html":       f.check(),
		"home.html": &Home{Frame: f.frame("es/index.html", ""), Check: "check/index.html",
			Weeks: []WeekLink{{week, line("target"), "a.html"}, {Date{2026, 9, 7}, line("target"), "b.html"}}},
		"weekly.html": &Weekly{Frame: f.frame("2026-09-14.html", "index.html"), Week: week, Target: line("target"), Versions: f.versions},
		"front.html": &Front{Frame: f.frame("index.html", ""), Homes: f.versions,
			Weeks: []WeekLink{{week, line("target"), "2026-09-14.html"}}},
		"404.html": &NotFound{Frame: f.frame("404.html", "index.html"), Homes: f.versions},
	}
}

func (f fixture) learn() *Learn {
	another := f.way()
	return &Learn{
		Frame: f.frame("es/2026-09-14.html", "index.html"), Week: week, Minutes: 10,
		Target: line("target"), About: []phrase.Line{line("about")},
		Class: f.class, Words: []phrase.Line{line("strategy"), line("picture")},
		WarmUp: &WarmUp{"warm-up.reach", line("reach"), []phrase.Line{line("reach-text")}, line("reach-text")},
		Note:   &Note{Markdown: "Dear families,\n\nthis week we **make a ten first**. Ask your child to tell you *why* it works.", Tag: "en"},
		Worked: Worked{
			Story: f.story(), Imagine: []phrase.Line{line("imagine")},
			Growing: []Panel{
				{f.bar(picture.FirstPart), []phrase.Line{line("first")}}, {f.bar(picture.SecondPart), []phrase.Line{line("second")}}, {f.bar(picture.Open), []phrase.Line{line("open")}},
			},
			Equations: []problem.Equation{
				problem.Equal(problem.Sum(8, 6).Asking(1), problem.Number(14)),
				problem.Equal(problem.Difference(14, 8), problem.Number(6)),
			},
			Way: f.way(), Another: &another, Solved: f.bar(picture.Solved), Sense: f.sense(),
		},
		Links: links,
	}
}

func (f fixture) story() story.Story {
	p, err := problem.New(problem.AddToResult, 8, 6)
	if err != nil {
		panic(err)
	}
	return story.Story{
		Problem: p, A: "person.lina", Thing: "thing.shell",
		Sentences: []story.Sentence{
			{Role: story.Scene, Line: told("scene")},
			{Role: story.Known, Line: told("start", phrase.Counted("Start", "thing.shell", 8))},
			{Role: story.Known, Line: told("change", phrase.Counted("Change", "thing.shell", 6))},
			{Role: story.Question, Line: told("ask", phrase.Asked("Ask", "thing.shell"))},
		},
		AnswerFrame: told("answer", phrase.Blank("Result", "thing.shell")),
		Answer:      told("answer", phrase.Counted("Result", "thing.shell", 14)),
	}
}

func (f fixture) bar(stage picture.Stage) picture.Picture {
	p, err := picture.OfProblem(f.story().Problem, picture.BarModel, stage)
	if err != nil {
		panic(err)
	}
	return p
}

func (f fixture) way() Working {
	n := phrase.Number
	return Working{
		Name: line("strategy"), Why: line("why"),
		Steps: []Step{
			{Say: line("need", n("From", 8), n("Need", 2)), Equation: problem.Equal(problem.Sum(8, 2), problem.Number(10)), Picture: f.bar(picture.Solved)},
			{Say: line("split", n("Need", 2), n("From", 6), n("Rest", 4)), Equation: problem.Equal(problem.Number(6), problem.Sum(2, 4))},
			{Say: line("add", n("Rest", 4), n("Sum", 14)), Equation: problem.Equal(problem.Sum(10, 4), problem.Number(14))},
		},
		Chain: problem.Equal(problem.Sum(8, 6), problem.Sum(8, 2, 4), problem.Sum(10, 4), problem.Number(14)),
	}
}

func (f fixture) sense() []Sense {
	return []Sense{
		{Name: line("near"), Lines: []phrase.Line{line("near-text")}, Equation: problem.Equal(problem.Sum(10, 5), problem.Number(15))},
		{Name: line("whole"), Lines: []phrase.Line{line("whole-text")}},
		{Name: line("back"), Lines: []phrase.Line{line("back-text")}, Equation: problem.Equal(problem.Difference(14, 6), problem.Number(8))},
	}
}

func (f fixture) tryStory() TryStory {
	t := TryStory{
		Story: f.story(), Equations: f.learn().Worked.Equations[:1], Solved: f.bar(picture.Solved), Way: f.way(), Sense: f.sense(),
		Replies: []Reply{
			{Right: true, Picture: f.bar(picture.Solved)},
			{Lines: []phrase.Line{line("low")}, Picture: f.bar(picture.Solved)},
			{Lines: []phrase.Line{line("near-reply")}},
		},
	}
	for n := 2; n <= 16; n++ {
		reply := 1
		switch {
		case n == 14:
			reply = 0
		case n > 10:
			reply = 2
		}
		t.Choices = append(t.Choices, Choice{Number: n, Reply: reply})
	}
	t.Choices = append(t.Choices, Choice{Other: line("larger"), Reply: 2})
	return t
}

func cardsOf(ids []string) []Card {
	var all []Card
	for _, id := range ids {
		all = append(all, Card{Symbol: id, Name: line("card"), Starter: line("starter")})
	}
	return all
}

func (f fixture) numbers(folder string) []Number {
	var all []Number
	for n := 0; n <= 20; n++ {
		all = append(all, Number{N: n, Href: id(folder, n, ".html")})
	}
	return all
}

func (f fixture) check() *Check {
	c := &Check{Frame: f.frame("es/check/8.html", "../index.html"), First: 8, Index: "index.html"}
	for n := 0; n <= 12; n++ {
		sum := problem.Equal(problem.Sum(8, n), problem.Number(8+n))
		c.Seconds = append(c.Seconds, CheckPair{Second: n, Results: []CheckResult{
			{Equation: sum, Picture: f.bar(picture.Solved), Way: f.way(), Sense: f.sense()[:1]},
		}})
	}
	return c
}
