package site

import (
	"cmp"
	"slices"

	"homebuild/internal/i18n"
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

// try lists the stories to try, on pages of nearly the same length.
func (b *builder) try(lang *i18n.Language, l *lesson) {
	ends := pagesToTry(l.stories)
	first := 0
	for place, end := range ends {
		b.tryPage(lang, l, place, first, end)
		first = end
	}
}

// pagesToTry says where each page to try ends: as few pages as have room.
func pagesToTry(stories []told) (ends []int) {
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
func haveRoom(stories []told) bool {
	taken := len(stories)
	if slices.ContainsFunc(stories, func(t told) bool { return len(t.Problem.Pairs()) >= manyPairs }) {
		taken++
	}
	return taken <= storiesOnPage
}

// tryPage lists one page, with the stories from the first up to the end.
func (b *builder) tryPage(lang *i18n.Language, l *lesson, place, first, end int) {
	path := func(tag, date string) string { return tryPagePath(tag, date, place) }
	own := path(lang.Tag(), l.week.Date)
	b.add(own, false, madeFrom{b.of(lang), l.sum}, func() page.View {
		v := &page.Try{
			Frame: b.weekFrame(lang, l, path), Week: pageDate(l.week.Date),
			Target: l.target.CanLine(), First: first + 1, Links: b.links(lang, l, own),
		}
		for _, t := range l.stories[first:end] {
			v.Stories = append(v.Stories, l.tryStory(t))
		}
		if end < len(l.stories) {
			v.Next = link(own, tryPagePath(lang.Tag(), l.week.Date, place+1))
		}
		return v
	})
}

// largestListed is the largest range whose numbers are all listed as choices; in
// a larger one a child who got another number is helped by general replies.
const largestListed = 100

// tryStory is a story with a reply to every number.
func (l lesson) tryStory(t told) page.TryStory {
	out := page.TryStory{
		Story: t.Story, Equations: equations(t.Problem), Solved: l.answerOf(t), Sense: sense(t),
	}
	out.First, out.Way = workings(t)
	choices := mistake.Choices(t.Problem, t.ExtraNumber)
	if pairs := t.Problem.Pairs(); pairs != nil { // a number above the total has no pair
		choices = slices.DeleteFunc(choices, func(n int) bool { return n >= len(pairs) })
	}
	for _, g := range mistake.Groups(t.Problem, t.ExtraNumber, choices) {
		for _, n := range g.Numbers {
			out.Choices = append(out.Choices, l.choice(t, n, len(out.Replies)))
		}
		out.Replies = append(out.Replies, l.reply(t, g.Reply))
	}
	slices.SortFunc(out.Choices, func(a, b page.Choice) int { return cmp.Compare(a.Number, b.Number) })
	if largest(t) > largestListed && t.Problem.Pairs() == nil { // of pairs, none is too big or too small
		l.others(&out, t)
	}
	return out
}

// choice shows a number, or the pair that goes with it where a total is taken
// apart.
func (l lesson) choice(t told, n, reply int) page.Choice {
	c := page.Choice{Number: n, Reply: reply}
	if pairs := t.Problem.Pairs(); pairs != nil && n < len(pairs) {
		c.Pair = problem.Alone(problem.Sum(pairs[n].First, pairs[n].Second))
	}
	return c
}

// reply is what to say, with the picture that helps: solved for the right
// number, else open.
func (l lesson) reply(t told, r mistake.Reply) page.Reply {
	out := page.Reply{Right: r.Verdict == mistake.Right, Lines: r.Lines}
	if out.Right {
		out.Picture = l.answerOf(t)
	} else {
		out.Picture = l.pictureOf(t, picture.Open)
	}
	return out
}

// others adds choices for the numbers that are not listed: below and above
// bounds that the hundreds alone give, so that neither tells the answer, and
// between them.
func (l lesson) others(s *page.TryStory, t told) {
	small, big := mistake.General(t.Problem)
	low, high := bounds(t.Problem.Calculation())
	between := mistake.Reply{Lines: []phrase.Line{phrase.Say("try.close")}}
	add := func(choice phrase.Line, r mistake.Reply) {
		s.Choices = append(s.Choices, page.Choice{Other: choice, Reply: len(s.Replies)})
		s.Replies = append(s.Replies, l.reply(t, r))
	}
	if low > 0 {
		add(phrase.Say("try.below", phrase.Number("Number", low)), small)
	}
	add(phrase.Say("try.between", phrase.Number("Low", low), phrase.Number("High", high)), between)
	add(phrase.Say("try.above", phrase.Number("Number", high)), big)
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
func largest(t told) int {
	most := t.ExtraNumber
	for _, step := range t.Problem.Steps() {
		most = max(most, step.Calculation().Largest())
	}
	return most
}
