package site

import (
	"slices"

	"homebuild/internal/activity"
	"homebuild/internal/page"
	"homebuild/internal/story"
	"homebuild/internal/week"
)

// ladder is what a week asks for beside its own stories.
func (in Input) ladder(w week.Week, target activity.Target) []activity.Beside {
	var out []activity.Beside
	for _, rung := range activity.Rungs() {
		b := activity.Beside{Rung: rung}
		for t := in.target(target.Neighbor(rung)); t != nil; t = in.target(t.Neighbor(rung)) {
			b.Targets = append(b.Targets, *t)
		}
		for _, kept := range w.KeptOn(rung) {
			b.Kept = append(b.Kept, activity.Kept{Problem: kept.Problem, Of: in.target(kept.Of)})
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

// rungPage is the page of the stories on a rung of the week's ladder.
type rungPage struct {
	Language *language
	Lesson   *lesson
	Rung     activity.Rung
}

func rungPath(tag, date string, rung activity.Rung) string {
	return tag + "/" + date + "-" + rung.String() + ".html"
}

func (p rungPage) path() string { return rungPath(p.Language.Tag(), p.Lesson.date, p.Rung) }

func (p rungPage) view(c *common) page.View {
	l := p.Lesson
	stories, first := l.on(p.Rung)
	return &page.Try{
		WeekPage: c.week(p.Language, l, func(tag, date string) string { return rungPath(tag, date, p.Rung) }),
		Words:    rungWords[p.Rung], First: first, Stories: l.storiesToTry(stories, first),
	}
}

// rungWords are what a page says of the stories of a rung.
var rungWords = map[activity.Rung]page.TryWords{activity.WeeksOwn: page.OwnWords, activity.Easier: page.EasierWords, activity.Harder: page.HarderWords}
