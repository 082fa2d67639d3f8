package site

import (
	"slices"
	"strconv"

	"homebuild/internal/mistake"
	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// storiesOnPage is the most that a page to try has: more would not arrive in the
// first round trip, and are no joy to scroll through.
const storiesOnPage = 4

// tryPage is a page of stories to try, from First up to End; only long weeks
// have more than one.
type tryPage struct {
	Language   *language
	Lesson     *lesson
	Place      int // of the page among those of the week
	First, End int
}

func tryPath(tag, date string) string { return tryPagePath(tag, date, 0) }

func tryPagePath(tag, date string, place int) string {
	if place == 0 {
		return tag + "/" + date + "-try.html"
	}
	return tag + "/" + date + "-try-" + strconv.Itoa(place+1) + ".html"
}

func (p tryPage) path() string { return tryPagePath(p.Language.Tag(), p.Lesson.date, p.Place) }

func (p tryPage) view(c *common) page.View {
	l := p.Lesson
	v := &page.Try{
		WeekPage: c.week(p.Language, l, func(tag, date string) string { return tryPagePath(tag, date, p.Place) }),
		First:    p.First + 1, Stories: l.tryStories()[p.First:p.End], Scene: l.scene(),
	}
	if p.End < len(l.stories) {
		v.Next = link(v.Path, tryPagePath(p.Language.Tag(), l.date, p.Place+1))
	}
	return v
}

// pagesToTry says where each page to try ends: as few pages as have room, of
// nearly the same length.
func pagesToTry(stories int) (ends []int) {
	pages := (stories + storiesOnPage - 1) / storiesOnPage
	for i := range pages {
		ends = append(ends, stories*(i+1)/pages)
	}
	return ends
}

// tryStories are the stories to try, each with a reply to every answer.
func (l *lesson) tryStories() []*page.TryStory {
	return *l.tried.get(func() *[]*page.TryStory {
		var out []*page.TryStory
		for i, e := range l.stories {
			out = append(out, &page.TryStory{
				Story: e.Story, Scene: l.sceneOf(i, e), Answers: answers(e),
				Open: l.pictureOf(e, picture.Open), Solved: l.answerOf(e), Solution: l.solution(e),
			})
		}
		return &out
	})
}

// ranges are the largest numbers that children answer with, by what they learn.
var ranges = []int{10, 20, 100, 1000}

// answerRange is the range that has all the numbers of a story: where it ends tells
// nothing about the answer.
func answerRange(e exercise) int {
	most := largest(e)
	return ranges[slices.IndexFunc(ranges, func(r int) bool { return most <= r })]
}

// largest is the largest number of a story, on the way or unneeded ones too.
func largest(e exercise) int {
	most := e.ExtraNumber
	for _, step := range e.Problem.Steps() {
		most = max(most, step.Calculation().Largest())
	}
	return most
}

// answers are all numbers of the story's range with what is said to them.
func answers(e exercise) page.Answers {
	a := page.Answers{Most: answerRange(e), Right: e.Problem.Answer()}
	if e.Problem.Kind() == problem.TogetherBoth {
		return parts(e.Problem, a)
	}
	numbers := make([]int, a.Largest()+1)
	for n := range numbers {
		numbers[n] = n
	}
	groups := mistake.Groups(e.Problem, e.ExtraNumber, numbers)
	small, big := mistake.General(e.Problem)
	// Of the replies of a direction, the one for the most numbers is the general one.
	general := map[mistake.Verdict]mistake.Group{mistake.TooSmall: {Reply: small}, mistake.TooBig: {Reply: big}}
	for _, g := range groups {
		if with, ok := general[g.Reply.Verdict]; ok && len(g.Numbers) > len(with.Numbers) {
			general[g.Reply.Verdict] = g
		}
	}
	add := func(to page.ReplyTo, numbers []int, lines []phrase.Line) {
		a.Replies = append(a.Replies, page.Reply{To: to, Numbers: numbers, Lines: lines})
	}
	for _, g := range groups {
		switch v := g.Reply.Verdict; {
		case v == mistake.Right:
			add(page.ToRight, nil, g.Reply.Lines)
		case !slices.Equal(g.Numbers, general[v].Numbers):
			add(page.ToSome, g.Numbers, g.Reply.Lines)
		}
	}
	add(page.ToSmaller, nil, general[mistake.TooSmall].Reply.Lines)
	add(page.ToBigger, nil, general[mistake.TooBig].Reply.Lines)
	return a
}

// mostParts is the largest whole that is taken apart with a tile for every number.
const mostParts = 20

// parts are the two parts that a story takes its whole apart into; of a large
// whole one part is asked for.
func parts(p problem.Problem, a page.Answers) page.Answers {
	total := p.Calculation().Value()
	whole := phrase.Number("Whole", total)
	if total > mostParts {
		right := page.Reply{To: page.ToRight, Lines: []phrase.Line{phrase.Say("try.part.right", whole)}}
		for n := range total + 1 {
			right.Numbers = append(right.Numbers, n)
		}
		_, big := mistake.General(p)
		a.Replies = []page.Reply{right, {To: page.ToBigger, Lines: big.Lines}}
		return a
	}
	a.Whole = total
	for i, id := range []string{"try.parts.right", "try.parts.small", "try.parts.big"} {
		to := []page.ReplyTo{page.ToRight, page.ToSmaller, page.ToBigger}[i]
		a.Replies = append(a.Replies, page.Reply{To: to, Lines: []phrase.Line{phrase.Say(id, whole)}})
	}
	return a
}
