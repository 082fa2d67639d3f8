package site

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/picture"
	"homebuild/internal/story"
	"homebuild/internal/strategy"
	"homebuild/internal/week"
)

// plan works every week out, in the order of the dates, so that later weeks
// avoid what earlier ones had.
func plan(in Input) (lessons []*lesson, notices, problems diag.Problems) {
	requests, own, problems := requests(in)
	if len(problems) > 0 {
		return nil, nil, problems
	}
	teller := story.NewTeller(in.Stock.Only(in.everywhere), in.Site.Key)
	for i, p := range activity.Year(requests) {
		w := in.Site.Weeks[i]
		for _, warning := range p.Warnings {
			notices = append(notices, w.Problem(warning.Setting, warning.Text, warning.Hint))
		}
		l, err := tellWeek(teller, w, p, own[i])
		if err != nil {
			problems = append(problems, w.Problem("target", err.Error(), in.heldBack()))
			continue
		}
		lessons = append(lessons, l)
	}
	return lessons, notices, problems
}

// Year plans every week's problems, oldest first: the mathematics of Assemble
// alone, for a teacher's plan and for choosing the next week.
func Year(in Input) ([]activity.WeekPlan, diag.Problems) {
	requests, _, problems := requests(in)
	if len(problems) > 0 {
		return nil, problems
	}
	return activity.Year(requests), nil
}

// everywhere reports whether every language of the site has a frame, a thing or
// a person.
func (in Input) everywhere(id string) bool {
	return len(in.Catalog.Without(id)) == 0
}

// heldBack says which languages leave stories out, for the teacher to know
// whom to ask.
func (in Input) heldBack() string {
	var tags []string
	for _, f := range in.Stock.Frames {
		for _, tag := range in.Catalog.Without("story." + f.ID) {
			if !slices.Contains(tags, tag) {
				tags = append(tags, tag)
			}
		}
	}
	if len(tags) == 0 {
		return "choose another target"
	}
	return "choose another target, or ask the translators of: " + strings.Join(tags, ", ")
}

// requests are what the week files ask of the mathematics, oldest first, and
// the teacher's own stories of each week.
func requests(in Input) (out []activity.Request, stories [][]ownStory, problems diag.Problems) {
	reader := newOwnStories(in)
	for _, w := range in.Site.Weeks {
		own := reader.week(w)
		target, err := targetOf(w, in.Targets)
		if err != nil {
			problems = append(problems, w.Problem("own-target", err.Error(), ""))
			continue
		}
		focus, _ := strategy.ParseName(w.Focus)
		kind, _ := picture.ParseKind(w.Picture)
		r := activity.Request{
			Week: w.Date, Key: in.Site.Key, Target: target, Focus: focus, Picture: kind,
			Stories: w.Stories, Extra: w.ExtraSentence, NumberWords: w.NumberWords, Review: w.Review,
		}
		for _, o := range own {
			r.Given = append(r.Given, o.given)
		}
		out, stories = append(out, r), append(stories, own)
	}
	return out, stories, append(problems, reader.problems...)
}

// targetOf is the week's target, from the list or spelled out.
func targetOf(w week.Week, targets []activity.Target) (activity.Target, error) {
	if w.Own != nil {
		return w.Own.Target()
	}
	i := slices.IndexFunc(targets, func(t activity.Target) bool { return t.ID == w.Target })
	if i < 0 {
		return activity.Target{}, fmt.Errorf("%q is not a target", w.Target)
	}
	return targets[i], nil
}

// tellWeek tells every problem of a week as a story; the teacher's own come
// first and are told already.
func tellWeek(teller *story.Teller, w week.Week, p activity.WeekPlan, own []ownStory) (*lesson, error) {
	l := &lesson{date: w.Date, target: p.Request.Target, picture: p.Worked.Picture}
	if l.picture == 0 {
		l.picture = picture.BarModel
	}
	setting := ""
	if w.Scene != "" {
		setting = "setting." + w.Scene
	}
	for place, a := range p.All() {
		e := exercise{Activity: a}
		if a.Given {
			e.Story = own[place-1].story
			e.Story.ExtraNumber = a.ExtraNumber
		} else {
			if place > 0 {
				place -= len(own) // a story of her own changes nothing about ours
			}
			var err error
			e.Story, err = teller.Tell(story.Request{
				Problem: a.Problem, ExtraNumber: a.ExtraNumber, Setting: setting,
				InWords: w.NumberWords, Week: w.Date, Place: place,
			})
			if err != nil {
				return nil, err
			}
		}
		l.stories = append(l.stories, e)
	}
	l.worked, l.stories = l.stories[0], l.stories[1:]
	l.sum = digest(l.date, l.target, l.picture, l.worked, l.stories)
	return l, nil
}
