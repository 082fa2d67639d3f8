package site

import (
	"hash/fnv"
	"slices"
	"strconv"

	"homebuild/internal/mistake"
	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// storiesOnPage is the most that a page to try has: more would not arrive in the
// first round trip, and are no joy to scroll through. Stories whose answers are put
// together from places take more room.
const (
	storiesOnPage = 4
	ofPlaces      = 3
)

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
		v.Next = c.link(v.Path, tryPagePath(p.Language.Tag(), l.date, p.Place+1))
		return v
	}
	for place, rungs := range l.pagesOfSteps() {
		for _, rung := range rungs {
			if href := c.link(v.Path, stepsPath(p.Language.Tag(), l.date, place)); href != "" {
				v.Ladder = append(v.Ladder, page.RungLink{Words: rungWords[rung], Href: href + "#" + rungWords[rung].ID})
			}
		}
	}
	return v
}

// pagesToTry says where each page to try ends: as few pages as have room, of
// nearly the same length.
func pagesToTry(stories []exercise) (ends []int) {
	most := storiesOnPage
	if slices.ContainsFunc(stories, func(e exercise) bool { return problem.RangeOf(largest(e)) > 20 }) {
		most = ofPlaces
	}
	pages := (len(stories) + most - 1) / most
	for i := range pages {
		ends = append(ends, len(stories)*(i+1)/pages)
	}
	return ends
}

// tryStories are the week's own stories to try, each with a reply to every answer.
func (l *lesson) tryStories() []*page.TryStory {
	return *l.tried.get(func() *[]*page.TryStory {
		out := l.storiesToTry(l.stories, 1)
		return &out
	})
}

// storiesToTry are stories with a reply to every answer, numbered from first on.
func (l *lesson) storiesToTry(stories []exercise, first int) []*page.TryStory {
	out := make([]*page.TryStory, len(stories))
	for i, e := range stories {
		out[i] = &page.TryStory{
			Story: e.Story, Scene: l.sceneOf(e), Answers: l.answers(e, l.turn(first-1+i)),
			Open: l.pictureOf(e, picture.Open), Solved: l.answerOf(e), Solution: withoutPictures(l.solution(e), e.Problem.Pairs() != nil),
		}
	}
	return out
}

// withoutPictures leaves out the picture of each step that has an equation: the walk has
// them, and a page to try would grow too heavy. Where every pair of parts is an answer,
// their picture is the answer's, which stands above the step.
func withoutPictures(s page.Solution, pairs bool) page.Solution {
	plain := func(w page.Working) page.Working {
		steps := slices.Clone(w.Steps)
		for i := range steps {
			if pairs || !steps[i].Equation.IsZero() {
				steps[i].Picture = nil
			}
		}
		w.Steps = steps
		return w
	}
	s.Way = plain(s.Way)
	if s.First != nil {
		first := plain(*s.First)
		s.First = &first
	}
	return s
}

// turn says with which opener the replies of story i begin: neighboring stories
// with others, and another week with others again.
func (l *lesson) turn(i int) int {
	h := fnv.New32a()
	h.Write([]byte(l.date))
	return int(h.Sum32()%100) + 2*i
}

// question is a story as the class meets it, with the ways that its page shows. The
// class writes columns where its way or its picture is columns, and from grade 3 on
// (CCSS-M 2010, 3.NBT.A.2, from memory).
func (l *lesson) question(e exercise) mistake.Question {
	const columnsGrade = 3
	q := mistake.Question{Problem: e.Problem, Extra: e.ExtraNumber, Focus: e.Focus(), Ways: e.Ways()}
	q.Columns = e.Grade >= columnsGrade || l.picture == picture.Columns || len(q.Ways) > 0 && q.Ways[0].Name == strategy.Expanded
	return q
}

// largest is the largest number of a story, on the way or unneeded ones too.
func largest(e exercise) int {
	most := e.ExtraNumber
	for _, step := range e.Problem.Steps() {
		most = max(most, step.Calculation().Largest())
	}
	return most
}

// answers are all numbers of the story's range with what is said to them. Where the
// range ends tells nothing about the answer.
func (l *lesson) answers(e exercise, turn int) page.Answers {
	a := page.Answers{Most: problem.RangeOf(largest(e)), Right: e.Problem.Answer()}
	if e.Problem.Kind() == problem.TogetherBoth {
		return parts(a, e.Problem.Calculation().Value(), l.question(e), turn)
	}
	beyond := 2 * a.Largest() // stands for all that are more than can be picked
	help := l.question(e).Help(beyond, turn)
	big, _ := help.To(beyond)
	small := mostBelow(help, a.Right)
	a.Replies = []page.Reply{{To: page.ToRight, Lines: help.Right.Lines}}
	for _, r := range slices.Concat(help.Specific, help.General) {
		numbers := slices.DeleteFunc(slices.Clone(r.Numbers), func(n int) bool {
			return n > a.Largest() || n > a.Right && slices.Contains(big.Numbers, n) || slices.Contains(small.Numbers, n)
		})
		if len(numbers) > 0 {
			a.Replies = append(a.Replies, page.Reply{To: page.ToSome, Numbers: numbers, Lines: r.Lines})
		}
	}
	if len(small.Numbers) > 0 {
		a.Replies = append(a.Replies, page.Reply{To: page.ToSmaller, Lines: small.Lines})
	}
	a.Replies = append(a.Replies, page.Reply{To: page.ToBigger, Lines: big.Lines})
	return a
}

// mostBelow is the general reply that is for the most numbers of those below the
// answer, and for no other: the page gives it to all smaller numbers that have no
// reply of their own.
func mostBelow(help mistake.Help, answer int) (most mistake.Reply) {
	for _, r := range help.General {
		if slices.Max(r.Numbers) < answer && len(r.Numbers) > len(most.Numbers) {
			most = r
		}
	}
	return most
}

// mostParts is the largest whole that is taken apart with a tile for every number.
const mostParts = 20

// parts are the two parts that a story takes its whole apart into; of a large
// whole one part is asked for.
func parts(a page.Answers, whole int, q mistake.Question, turn int) page.Answers {
	if whole > mostParts {
		told := phrase.Number("Whole", whole)
		right := page.Reply{To: page.ToRight, Lines: []phrase.Line{phrase.Say("try.part.right", told)}}
		for n := range whole + 1 {
			right.Numbers = append(right.Numbers, n)
		}
		a.Replies = []page.Reply{right, {To: page.ToBigger, Lines: []phrase.Line{phrase.Say("reply.reach.part", told)}}}
		return a
	}
	a.Whole = whole
	help := q.Help(2*a.Most, turn)
	small, _ := help.To(0)
	big, _ := help.To(2 * a.Most)
	a.Replies = []page.Reply{
		{To: page.ToRight, Lines: help.Right.Lines}, {To: page.ToSmaller, Lines: small.Lines}, {To: page.ToBigger, Lines: big.Lines},
	}
	return a
}
