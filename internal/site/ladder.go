package site

import (
	"slices"
	"strconv"

	"homebuild/internal/activity"
	"homebuild/internal/page"
	"homebuild/internal/problem"
	"homebuild/internal/story"
	"homebuild/internal/week"
)

// ladder is what a week asks for beside its own stories.
func (in Input) ladder(w week.Week, target activity.Target, held func(problem.Kind) bool) []activity.Beside {
	var out []activity.Beside
	for _, rung := range activity.Rungs() {
		b := activity.Beside{Rung: rung}
		for t := in.Target(target.Neighbor(rung)); t != nil; t = in.Target(t.Neighbor(rung)) {
			if told, ok := unheld(*t, held); ok {
				b.Targets = append(b.Targets, told)
			}
		}
		for _, kept := range w.KeptOn(rung) {
			b.Kept = append(b.Kept, activity.Kept{Problem: kept.Problem, Of: in.Target(kept.Of)})
		}
		out = append(out, b)
	}
	return out
}

// tellLadder tells what stands beside a week's own stories, which were told.
func tellLadder(teller *story.Teller, w week.Week, ladder []activity.Activity, told []story.Story) ([]exercise, error) {
	if len(ladder) == 0 {
		return nil, nil
	}
	asked := story.Week{Date: w.Date, Place: told[0].Place, InWords: w.NumberWords}
	next := map[activity.Rung][]week.KeptStory{}
	for _, rung := range activity.Rungs() {
		next[rung] = w.KeptOn(rung)
	}
	for _, a := range ladder {
		tale := story.Tale{Choice: story.Choice{Problem: a.Problem}}
		if kept := next[a.Rung]; len(kept) > 0 {
			tale.Choice, next[a.Rung] = kept[0].Choice, kept[1:]
		}
		asked.Tales = append(asked.Tales, tale)
	}
	stories, err := teller.Beside(asked, told)
	if err != nil {
		return nil, err
	}
	out := make([]exercise, len(ladder))
	for i, a := range ladder {
		out[i] = exercise{a.With(stories[i].ExtraNumber), stories[i]}
	}
	return out, nil
}

// on are the lesson's stories of a rung, numbered from first on: those beside the
// week's own come after them.
func (l *lesson) on(rung activity.Rung) (stories []exercise, first int) {
	all := slices.Concat(l.stories, l.ladder)
	of := func(e exercise) bool { return e.Rung == rung }
	first = max(0, slices.IndexFunc(all, of))
	return slices.DeleteFunc(all, func(e exercise) bool { return !of(e) }), first + 1
}

// rungs are those that the lesson has stories on.
func (l *lesson) rungs() []activity.Rung {
	return slices.DeleteFunc(activity.Rungs(), func(r activity.Rung) bool {
		return !slices.ContainsFunc(l.ladder, func(e exercise) bool { return e.Rung == r })
	})
}

// pagesOfSteps says which rungs stand on each page: all on one, or, where the week's
// numbers have hundreds, or those of two steps have, and take more room, each on its
// own.
func (l *lesson) pagesOfSteps() (pages [][]activity.Rung) {
	rungs := l.rungs()
	long := slices.ContainsFunc(l.ladder, func(e exercise) bool { return largest(e) > 100 && len(e.Problem.Steps()) > 1 })
	if len(rungs) > 0 && l.target.Within <= 100 && !long {
		return [][]activity.Rung{rungs}
	}
	for _, rung := range rungs {
		pages = append(pages, []activity.Rung{rung})
	}
	return pages
}

// stepsPage is a page of the stories beside the week's own.
type stepsPage struct {
	Language *language
	Lesson   *lesson
	Place    int // of the page among those of the week
	Rungs    []activity.Rung
}

func stepsPath(tag, date string, place int) string {
	if place == 0 {
		return tag + "/" + date + "-steps.html"
	}
	return tag + "/" + date + "-steps-" + strconv.Itoa(place+1) + ".html"
}

func (p stepsPage) path() string { return stepsPath(p.Language.Tag(), p.Lesson.date, p.Place) }

func (p stepsPage) view(c *common) page.View {
	l := p.Lesson
	v := &page.Steps{WeekPage: c.week(p.Language, l, func(tag, date string) string { return stepsPath(tag, date, p.Place) })}
	heavy := len(p.Rungs) > 1 && slices.ContainsFunc(l.ladder, func(e exercise) bool { return largest(e) > 100 || e.Problem.Pairs() != nil })
	for _, rung := range p.Rungs {
		stories, first := l.on(rung)
		r := page.Rung{Words: rungWords[rung], First: first, Stories: l.storiesToTry(stories, first)}
		if heavy { // no room for drawings of places
			for _, t := range r.Stories {
				t.Scene = page.Scene{}
			}
		}
		v.Rungs = append(v.Rungs, r)
	}
	return v
}

// rungWords are what pages say of the stories of a rung.
var rungWords = map[activity.Rung]page.RungWords{activity.Easier: page.SmallerSteps, activity.Harder: page.BiggerSteps}
