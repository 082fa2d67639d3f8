package site

import (
	"slices"

	"homebuild/internal/activity"
	"homebuild/internal/page"
	"homebuild/internal/picture"
)

// keyPage is the answer key of a week, for the teacher.
type keyPage struct {
	Class  *language
	Lesson *lesson
}

func (p keyPage) path() string { return p.Lesson.date + "/answer-key.html" }

func (p keyPage) view(c *common) page.View {
	l := p.Lesson
	v := &page.Key{Layout: c.deskLayout(p.path()), Week: l.date, Target: l.target.CanLine()}
	for _, e := range slices.Concat(l.exercises(), l.ladder) {
		v.Stories = append(v.Stories, l.keyStory(e))
	}
	return v
}

// mostListened keeps the key of a week on one page.
const mostListened = 4

func (l *lesson) keyStory(e exercise) page.KeyStory {
	k := page.KeyStory{
		Story: e.Story, Words: rungWords[e.Rung], Kind: activity.KindName(e.Problem.Kind()), Equation: e.Problem.Equation(),
		Picture: l.pictureOf(e, picture.Solved),
	}
	first := e.FirstWays()
	for _, w := range slices.Concat(first[:min(1, len(first))], e.Ways()) {
		k.Ways = append(k.Ways, page.Working{Name: w.Title(), Chain: w.Chain})
	}
	if hops := hopsOf(e); hops != nil && picture.IsLine(k.Picture) {
		k.Picture = hops
	}
	for _, m := range l.question(e).ToListenFor(mostListened) {
		k.Mistakes = append(k.Mistakes, page.KeyMistake{Number: m.Answer, Name: m.Cause.Name(), Ask: m.Hint})
	}
	return k
}

// hopsOf is the number line of the way that the key shows first, so that its line
// hops as its words say; nil where that way draws none.
func hopsOf(e exercise) picture.Picture {
	ways := e.Ways()
	if len(ways) == 0 || e.Problem.Kind().Steps() != nil {
		return nil
	}
	for _, step := range slices.Backward(ways[0].Steps) {
		if picture.IsLine(step.Picture) {
			return step.Picture
		}
	}
	return nil
}
