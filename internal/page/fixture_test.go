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

func (f fixture) layout(path, home string) Layout {
	var versions []Version
	for _, v := range f.versions {
		v.Href = "../" + v.Language.Tag() + "/2026-09-14.html"
		versions = append(versions, v)
	}
	return Layout{Language: f.language, Theme: f.theme, School: "Room 12", Path: path,
		Home: home, Default: "../2026-09-14.html", Versions: versions}
}

func (f fixture) week(path string) WeekPage {
	return WeekPage{Layout: f.layout(path, "index.html"), Week: week, Target: line("target"), Links: links}
}

var fixtureScene = Scene{Place: "setting.harbour", Cast: []string{"character.captain", "character.heron", "character.otter"}}

var (
	week  = "2026-09-14"
	links = Links{
		Learn: "2026-09-14.html", Try: "2026-09-14-try.html", Invent: "2026-09-14-story.html",
		Check: "check/index.html", Print: "2026-09-14-print.html",
	}
)

// views lists every page by the name of its file.
func (f fixture) views() map[string]View {
	return map[string]View{
		"learn.html": f.learn(),
		"try.html": &Try{WeekPage: f.week("es/2026-09-14-try.html"), First: 1, Scene: fixtureScene,
			Stories: []*TryStory{f.tryStory(), f.tryStory()}, Ladder: []RungLink{{SmallerSteps, "2026-09-14-steps.html#smaller"}, {BiggerSteps, "2026-09-14-steps.html#bigger"}}},
		"steps.html": &Steps{WeekPage: f.week("es/2026-09-14-steps.html"),
			Rungs: []Rung{{SmallerSteps, 3, []*TryStory{f.tryStory()}}, {BiggerSteps, 4, []*TryStory{f.tryStory()}}}},
		"invent.html": &Invent{WeekPage: f.week("es/2026-09-14-story.html"),
			Characters: &Cards{All: cardsOf(cards.Characters())}, Settings: &Cards{All: cardsOf(cards.Settings())},
			Two: true, Numbers: line("how-many"), Strip: f.numbers("check/"), Pairs: []Pair{{38, 27, "check/2026-09-14.html#pair-38-27"}},
			Story: []phrase.Line{line("blank", PickedWho("Blank")), line("blank", phrase.Blank("Blank", "")), line("how-many")}, Answer: f.story().AnswerFrame,
			Equation: f.story().Problem.Equation()},
		"print.html": &Print{WeekPage: f.week("es/2026-09-14-print.html"),
			Words: []ClassWord{{Name: line("strategy")}, {Name: line("picture")}}, Class: f.class, Worked: f.learn().Worked,
			Stories: []story.Story{f.story(), f.story()}, Ladder: []PrintRung{{SmallerSteps, []story.Story{f.story()}}}, Answers: true,
			Blank:   []phrase.Line{line("blank", phrase.Blank("Blank", "")), line("how-many")},
			WeekURL: "https://example.org/room12/2026-09-14.html"},
		"check-index.html": &CheckIndex{Layout: f.layout("es/check/index.html", "../index.html"), Numbers: f.numbers("")},
		"check.html":       f.check(),
		"check-week.html":  f.weekCheck(),
		"index.html": &Index{Layout: f.layout("es/index.html", ""), Check: "check/index.html",
			This: WeekLink{week, line("target"), "a.html"}, Earlier: []Topic{{line("strategy"), []WeekLink{{"2026-09-07", line("target"), "b.html"}}}}},
		"weekly.html": &Weekly{Layout: f.layout("2026-09-14.html", "index.html"), Week: week, Target: line("target"), Languages: f.versions},
		"front.html": &Front{Layout: f.layout("index.html", ""), Languages: f.versions,
			Weeks: []WeekLink{{week, line("target"), "2026-09-14.html"}}},
		"answer-key.html": &Key{Layout: f.layout("2026-09-14/answer-key.html", ""), Week: week, Target: line("target"), Stories: []KeyStory{f.keyStory()}},
		"slips.html": &Slips{Layout: f.layout("2026-09-14/slips.html", ""), Link: "https://example.org/room12/2026-09-14.html",
			Languages: []*i18n.Language{f.language, f.class}},
		"sheets.html": &Sheets{Layout: f.layout("2026-09-14/sheets.html", ""), Sheets: []*Print{
			{WeekPage: f.week("es/2026-09-14-print.html"), Class: f.class, Worked: f.learn().Worked, Stories: []story.Story{f.story()}},
		}},
		"sample.html": &Sample{Layout: f.layout("sample-es.html", ""), Tag: "es", Name: "Español", Done: 2, Total: 3, Parts: []SamplePart{
			{ID: "pages", Title: "The pages", Rows: []SampleRow{{ID: "page.skip", English: "Skip", Said: []i18n.Text{{{Text: "Saltar"}}}}}},
		}},
		"404.html": &NotFound{Layout: f.layout("404.html", "index.html"), Languages: f.versions},
	}
}

func (f fixture) learn() *Learn {
	another := f.way()
	return &Learn{
		WeekPage: f.week("es/2026-09-14.html"), Minutes: 10, About: []phrase.Line{line("about")},
		Class: f.class, Words: []ClassWord{{Name: line("strategy")}, {Name: line("picture")}},
		WarmUp: &WarmUp{"warm-up.reach", line("reach"), []phrase.Line{line("reach-text")}, line("reach-text")},
		Notes:  new(Notes),
		Note:   &Note{Markdown: "Dear families,\n\nthis week we **make a ten first**. Ask your child to tell you *why* it works.", Tag: "en"},
		Worked: &Worked{
			Story: f.story(), Scene: fixtureScene, Amounts: []Amount{{}, {Picture: f.bar(picture.FirstPart)}, {}, {}}, Solved: f.bar(picture.Solved),
			Growing: []Panel{
				{f.bar(picture.FirstPart), []phrase.Line{line("first")}}, {f.bar(picture.SecondPart), []phrase.Line{line("second")}}, {f.bar(picture.Open), []phrase.Line{line("open")}},
			},
			Solution: f.solution(), Another: &another,
		},
	}
}

func (f fixture) story() story.Story {
	p, err := problem.New(problem.AddToResult, 8, 6)
	if err != nil {
		panic(err)
	}
	return story.Story{
		Problem: p, Thing: "thing.shell",
		Sentences: []story.Sentence{
			{Role: story.Scene, Line: line("scene")},
			{Role: story.Known, Line: line("start", phrase.Counted("Start", "thing.shell", 8))},
			{Role: story.Known, Line: line("change", phrase.Counted("Change", "thing.shell", 6))},
			{Role: story.Question, Line: line("ask")},
		},
		AnswerFrame: line("answer", phrase.Blank("Result", "thing.shell")),
		Answer:      line("answer", phrase.Counted("Result", "thing.shell", 14)),
		So:          line("so"),
	}
}

func (f fixture) keyStory() KeyStory {
	return KeyStory{
		Story: f.story(), Kind: line("about"), Equation: f.solution().Equations[0], Picture: f.bar(picture.Solved),
		Ways: []Working{f.way()}, Mistakes: []KeyMistake{{2, line("low"), line("near-reply")}},
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

func (f fixture) solution() Solution {
	return Solution{
		Equations: []problem.Equation{
			problem.Equal(problem.Sum(8, 6).Asking(1), problem.Number(14)),
			problem.Equal(problem.Difference(14, 8), problem.Number(6)),
		},
		Way: f.way(), Sense: f.sense(),
	}
}

func (f fixture) tryStory() *TryStory {
	return &TryStory{
		Story: f.story(), Scene: fixtureScene, Open: f.bar(picture.Open), Solved: f.bar(picture.Solved), Solution: f.solution(),
		Answers: Answers{Most: 20, Right: 14, Replies: []Reply{
			{To: ToSome, Numbers: []int{13, 15}, Lines: []phrase.Line{line("near-reply")}},
			{To: ToRight, Lines: []phrase.Line{line("why")}},
			{To: ToSmaller, Lines: []phrase.Line{line("low")}},
			{To: ToBigger, Lines: []phrase.Line{line("larger")}},
		}},
	}
}

func cardsOf(ids []string) []Card {
	var all []Card
	for _, id := range ids {
		all = append(all, Card{Symbol: id, Name: line("card"), Starter: line("starter"), Ideas: []phrase.Line{line("imagine")}})
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

func (f fixture) weekCheck() *WeekCheck {
	c := &WeekCheck{WeekPage: f.week("es/check/2026-09-14.html"), WeekPairs: &WeekPairs{Numbers: []int{8, 39, 45}}, Small: "index.html"}
	for _, two := range [][2]int{{39, 8}, {45, 8}, {45, 39}} {
		sum := problem.Equal(problem.Sum(two[0], two[1]), problem.Number(two[0]+two[1]))
		c.Pairs = append(c.Pairs, WeekPair{First: two[0], Second: two[1], Results: []CheckResult{
			{Equation: sum, Picture: f.bar(picture.Solved), Way: f.way(), Sense: f.sense()[:1]},
		}})
	}
	return c
}

func (f fixture) check() *Check {
	c := &Check{Layout: f.layout("es/check/8.html", "../index.html"), CheckPairs: &CheckPairs{First: 8}, Index: "index.html"}
	for n := 0; n <= 12; n++ {
		sum := problem.Equal(problem.Sum(8, n), problem.Number(8+n))
		c.Seconds = append(c.Seconds, CheckPair{Second: n, Results: []CheckResult{
			{Equation: sum, Picture: f.bar(picture.Solved), Way: f.way(), Sense: f.sense()[:1]},
		}})
	}
	return c
}
