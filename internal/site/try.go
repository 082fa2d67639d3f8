package site

import (
	"cmp"
	"slices"
	"strconv"

	"homebuild/internal/mistake"
	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// storiesOnPage is the most that a page to try has: more would not arrive in the
// first round trip, and are no joy to scroll through. A total that is taken apart
// in many ways has a reply to each, so that one story fewer has room beside it.
const (
	storiesOnPage = 4
	manyPairs     = 12
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
		First:    p.First + 1, Stories: l.tryStories()[p.First:p.End],
	}
	if p.End < len(l.stories) {
		v.Next = link(v.Path, tryPagePath(p.Language.Tag(), l.date, p.Place+1))
	}
	return v
}

// pagesToTry says where each page to try ends: as few pages as have room.
func pagesToTry(stories []exercise) (ends []int) {
	for pages := 1; ; pages++ {
		ends = ends[:0]
		fits, first := true, 0
		for i := range pages {
			end := len(stories) * (i + 1) / pages
			fits = fits && haveRoom(stories[first:end])
			ends, first = append(ends, end), end
		}
		if fits {
			return ends
		}
	}
}

// haveRoom reports whether the stories fit on one page.
func haveRoom(stories []exercise) bool {
	taken := len(stories)
	if slices.ContainsFunc(stories, func(e exercise) bool { return len(e.Problem.Pairs()) >= manyPairs }) {
		taken++
	}
	return taken <= storiesOnPage
}

// largestListed is the largest range whose numbers are all listed as choices; in
// a larger one a child who got another number is helped by general replies.
const largestListed = 100

// tryStories are the stories to try, each with a reply to every number.
func (l *lesson) tryStories() []*page.TryStory {
	return *l.tried.get(func() *[]*page.TryStory {
		var out []*page.TryStory
		for _, e := range l.stories {
			out = append(out, l.tryStory(e))
		}
		return &out
	})
}

func (l *lesson) tryStory(e exercise) *page.TryStory {
	out := &page.TryStory{Story: e.Story, Solved: l.answerOf(e), Solution: solution(e)}
	choices := mistake.Choices(e.Problem, e.ExtraNumber)
	pairs := e.Problem.Pairs()
	if pairs != nil { // a number above the total has no pair
		choices = slices.DeleteFunc(choices, func(n int) bool { return n >= len(pairs) })
	}
	for _, g := range mistake.Groups(e.Problem, e.ExtraNumber, choices) {
		for _, n := range g.Numbers {
			out.Choices = append(out.Choices, choice(pairs, n, len(out.Replies)))
		}
		out.Replies = append(out.Replies, page.Reply{Right: g.Reply.Verdict == mistake.Right, Lines: g.Reply.Lines})
	}
	slices.SortFunc(out.Choices, func(a, b page.Choice) int { return cmp.Compare(a.Number, b.Number) })
	if largest(e) > largestListed && pairs == nil { // of pairs, none is too big or too small
		addOthers(out, e.Problem)
	}
	if slices.ContainsFunc(out.Replies, func(r page.Reply) bool { return !r.Right }) {
		out.Open = l.pictureOf(e, picture.Open)
	}
	return out
}

// choice shows a number, or the pair that goes with it where a total is taken
// apart.
func choice(pairs []problem.Pair, n, reply int) page.Choice {
	c := page.Choice{Number: n, Reply: reply}
	if pairs != nil {
		c.Pair = problem.Alone(problem.Sum(pairs[n].First, pairs[n].Second))
	}
	return c
}

// addOthers adds choices for the numbers that are not listed: below and above
// bounds that the hundreds alone give, so that neither tells the answer, and
// between them.
func addOthers(s *page.TryStory, p problem.Problem) {
	small, big := mistake.General(p)
	low, high := bounds(p.Calculation())
	add := func(choice phrase.Line, reply []phrase.Line) {
		s.Choices = append(s.Choices, page.Choice{Other: choice, Reply: len(s.Replies)})
		s.Replies = append(s.Replies, page.Reply{Lines: reply})
	}
	if low > 0 {
		add(phrase.Say("try.below", phrase.Number("Number", low)), small.Lines)
	}
	add(phrase.Say("try.between", phrase.Number("Low", low), phrase.Number("High", high)), []phrase.Line{phrase.Say("try.close")})
	add(phrase.Say("try.above", phrase.Number("Number", high)), big.Lines)
}

// bounds are what a calculation comes to at least and at most when only the
// hundreds are looked at.
func bounds(c problem.Calculation) (low, high int) {
	for i, n := range c.Numbers {
		down, up := n/100*100, (n+99)/100*100
		if c.Op == problem.Minus && i > 0 {
			down, up = -up, -down
		}
		low, high = low+down, high+up
	}
	return max(low, 0), high
}

// largest is the largest number of a story, on the way or unneeded ones too.
func largest(e exercise) int {
	most := e.ExtraNumber
	for _, step := range e.Problem.Steps() {
		most = max(most, step.Calculation().Largest())
	}
	return most
}
