package site

import (
	"cmp"
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
		for i, e := range l.stories {
			out = append(out, l.tryStory(e, l.turn(i)))
		}
		return &out
	})
}

// turn says with which opener the replies of story i begin: neighbouring stories
// with others, and another week with others again.
func (l *lesson) turn(i int) int {
	h := fnv.New32a()
	h.Write([]byte(l.date))
	return int(h.Sum32()%100) + 2*i
}

func (l *lesson) tryStory(e exercise, turn int) *page.TryStory {
	out := &page.TryStory{Story: e.Story, Solved: l.answerOf(e), Solution: solution(e)}
	within := problem.RangeOf(largest(e))
	// A known wrong number beyond the range, such as a sum in place of a difference,
	// can be picked, too.
	help := l.question(e).Help(2*within, turn)
	if pairs := e.Problem.Pairs(); pairs != nil { // every pair that can be tapped is right
		out.Replies = []page.Reply{replyOf(help.Right)}
		for _, p := range pairs {
			out.Choices = append(out.Choices, page.Choice{Number: p.First, Pair: problem.Alone(problem.Sum(p.First, p.Second))})
		}
		return out
	}
	for _, r := range help.All() {
		numbers := slices.DeleteFunc(slices.Clone(r.Numbers), func(n int) bool {
			return n > within && r.Sort != mistake.Known || within > largestListed && !slices.Contains([]mistake.Sort{mistake.Right, mistake.Known, mistake.Away}, r.Sort)
		})
		if len(numbers) == 0 {
			continue
		}
		for _, n := range numbers {
			out.Choices = append(out.Choices, page.Choice{Number: n, Reply: len(out.Replies)})
		}
		out.Replies = append(out.Replies, replyOf(r))
	}
	slices.SortFunc(out.Choices, func(a, b page.Choice) int { return cmp.Compare(a.Number, b.Number) })
	if within > largestListed {
		addOthers(out, e.Problem.Calculation(), help)
	}
	out.Open = l.pictureOf(e, picture.Open)
	return out
}

// question is a story as the class meets it, with the ways that its page shows. The
// class writes columns where its way or its picture is columns, and from grade 3 on
// (CCSS-M 2010, 3.NBT.A.2, from memory).
func (l *lesson) question(e exercise) mistake.Question {
	const columnsGrade = 3
	q := mistake.Question{Problem: e.Problem, Extra: e.ExtraNumber, Ways: e.Ways()}
	q.Columns = e.Grade >= columnsGrade || l.picture == picture.Columns || len(q.Ways) > 0 && q.Ways[0].Name == strategy.Expanded
	return q
}

func replyOf(r mistake.Reply) page.Reply {
	return page.Reply{Right: r.Sort == mistake.Right, Lines: r.Lines}
}

// addOthers adds choices for the numbers that are not listed: below and above
// bounds that the hundreds alone give, so that neither tells the answer, and
// between them.
func addOthers(s *page.TryStory, c problem.Calculation, help mistake.Help) {
	low, high := bounds(c)
	add := func(choice phrase.Line, sort mistake.Sort) {
		lines := help.Hint
		if i := slices.IndexFunc(help.General, func(r mistake.Reply) bool { return r.Sort == sort }); i >= 0 {
			lines = help.General[i].Lines
		}
		s.Choices = append(s.Choices, page.Choice{Other: choice, Reply: len(s.Replies)})
		s.Replies = append(s.Replies, page.Reply{Lines: lines})
	}
	if low > 0 {
		add(phrase.Say("try.below", phrase.Number("Number", low)), mistake.TooSmall)
	}
	add(phrase.Say("try.between", phrase.Number("Low", low), phrase.Number("High", high)), 0)
	add(phrase.Say("try.above", phrase.Number("Number", high)), mistake.TooBig)
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
