package site

import (
	"cmp"
	"errors"
	"fmt"
	"maps"
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
func plan(in Input) (lessons []*lesson, asked []activity.Request, notices, problems diag.Diagnostics) {
	asked, own, problems := requests(in)
	if len(problems) > 0 {
		return nil, nil, nil, problems
	}
	events := in.SharedEvents()
	if len(events.Events()) == 0 && len(asked) > 0 {
		return nil, nil, nil, diag.Diagnostics{{
			File: week.SiteFile, Text: "there is no story that every language of the site tells: " + strings.Join(in.silent(), ", ") + " leave out too many",
			Hint: `leave the language out for now; "homebuild language status" says which stories each tells`,
		}}
	}
	teller := story.NewTeller(events, in.Site.Key)
	for i, p := range in.year(asked) {
		w := in.Site.Weeks[i]
		for _, warning := range p.Warnings {
			notices = append(notices, unmet(w, warning.Setting, warning.Text, warning.Hint))
		}
		l, err := tellWeek(teller, w, p, own[i])
		if err != nil {
			problems = append(problems, w.Problem("target", err.Error(), in.heldBack(w.Place)))
			continue
		}
		notices = append(notices, in.missed(w, l)...)
		notices = append(notices, in.otherwise(w, p.Request, l.worked)...)
		lessons = append(lessons, l)
	}
	return lessons, asked, notices, problems
}

// Year plans every week's problems, oldest first: the mathematics of Assemble
// alone, for a teacher's plan and for choosing the next week.
func Year(in Input) ([]activity.WeekPlan, diag.Diagnostics) {
	requests, _, problems := requests(in)
	if len(problems) > 0 {
		return nil, problems
	}
	return in.year(requests), nil
}

// year plans weeks, from where the input's planner knows them on.
func (in Input) year(requests []activity.Request) []activity.WeekPlan {
	if in.Planner == nil {
		return activity.Year(requests)
	}
	return in.Planner.Year(requests)
}

// SharedEvents are the events that stories are chosen from: those that every language
// with a say in it tells.
func (in Input) SharedEvents() story.Places {
	_, told := in.choosing()
	return told
}

// silent are the languages that leave events out, the one that tells fewest first.
func (in Input) silent() []string {
	missing := map[string]int{}
	for _, e := range in.Places.Events() {
		for _, tag := range in.Catalog.Without(e.Message("")) {
			missing[tag]++
		}
	}
	tags := slices.Sorted(maps.Keys(missing))
	slices.SortStableFunc(tags, func(a, b string) int { return cmp.Compare(missing[b], missing[a]) })
	return tags
}

// heldBack says which languages leave events out, those of a place or all, for
// the teacher to know whom to ask.
func (in Input) heldBack(place string) string {
	var tags []string
	for _, e := range in.Places.Events() {
		for _, tag := range in.Catalog.Without(e.Message("")) {
			if (place == "" || e.Place == place) && !slices.Contains(tags, tag) {
				tags = append(tags, tag)
			}
		}
	}
	if len(tags) == 0 {
		return "choose another target"
	}
	slices.Sort(tags)
	return "choose another target, or ask the translators of: " + strings.Join(tags, ", ")
}

// unmet says that a wish of a week could not be met.
func unmet(w week.Week, setting, text, hint string) diag.Diagnostic {
	p := w.Problem(setting, text, hint)
	p.Code, p.Value = diag.Unmet, setting
	return p
}

// missed are the wishes of a week that its stories could not meet.
func (in Input) missed(w week.Week, l *lesson) diag.Diagnostics {
	var out diag.Diagnostics
	ours := slices.DeleteFunc(slices.Clone(l.exercises()), func(e exercise) bool { return e.Given })
	if w.Place != "" && !slices.ContainsFunc(ours, func(e exercise) bool { return e.Story.Place == w.Place }) {
		hint := in.heldBack(w.Place)
		out = append(out, unmet(w, "place", fmt.Sprintf("no story of the week is told in %s: nothing happens there for such numbers", w.Place),
			strings.Replace(hint, "choose another target", "choose another place", 1)))
	}
	if i := slices.IndexFunc(ours, func(e exercise) bool { return e.WantsExtra && e.ExtraNumber == 0 }); i >= 0 {
		out = append(out, unmet(w, "extra-sentence", "no story of the week has a number that is not needed: none keeps apart from the others", "leave the setting out, or choose another target"))
	}
	if w.Review && w.Writes("review") && len(w.Kept) == 0 && !slices.ContainsFunc(ours, func(e exercise) bool { return e.Returns }) {
		out = append(out, unmet(w, "review", "no story of the week brings back what an earlier week was about", "it comes back after two, four and eight weeks, where there are such weeks"))
	}
	return out
}

// otherwise tells that a story that is kept as the worked one is not solved by the way
// that the week practices: of the newest week that families see and of those to come.
// The weeks before are over.
func (in Input) otherwise(w week.Week, r activity.Request, worked exercise) diag.Diagnostics {
	if len(w.Kept) == 0 || worked.ByFocus() {
		return nil
	}
	if showing := in.Site.Showing(in.On); len(showing) > 0 && w.Date < showing[len(showing)-1].Date {
		return nil
	}
	hint := fmt.Sprintf("write focus = %q, by which it is solved", worked.Ways()[0].Name)
	if kind, ok := activity.FocusKind(r, worked.Problem.Kind()); ok {
		hint += fmt.Sprintf(", or take another story: homebuild swap %s 0 --kind %s", w.Date, kind)
	}
	return diag.Diagnostics{unmet(w, "focus", fmt.Sprintf("the story that is worked step by step, %v, is kept, and %s does not solve it", worked.Problem.Equation(), r.Focus), hint)}
}

// requests are what the week files ask of the mathematics, oldest first, and
// the teacher's own stories of each week.
func requests(in Input) (out []activity.Request, stories [][]ownStory, problems diag.Diagnostics) {
	reader := newOwnStories(in)
	events := in.SharedEvents()
	held := in.held()
	for _, w := range in.Site.Weeks {
		own := reader.week(w)
		target, err := in.targetOf(w)
		if err != nil {
			problems = append(problems, w.Problem("own-target", err.Error(), ""))
			continue
		}
		target, _ = unheld(target, held) // a week that has nothing else tells what is held
		focus, _ := strategy.ParseName(w.Focus)
		kind, _ := picture.ParseKind(w.Picture)
		r := activity.Request{
			Week: w.Date, Key: in.Site.Key, Target: target, Focus: focus, Picture: kind,
			Stories: w.Stories, Extra: w.ExtraSentence, NumberWords: w.NumberWords, Review: w.Review,
			Bears: events, Held: held,
		}
		for i, kept := range w.Kept {
			if misfit := (*story.Misfit)(nil); errors.As(events.Check(kept.Choice), &misfit) {
				p := w.KeptProblem(i, misfit.Setting, misfit.Text, misfit.Hint)
				p.Code, p.Value = diag.Misfit, kept.Event
				problems = append(problems, p)
			}
			if kept.Rung == activity.WeeksOwn {
				r.Kept = append(r.Kept, activity.Kept{Problem: kept.Problem, Of: in.Target(kept.Of)})
			}
		}
		if w.Ladder {
			r.Ladder = in.ladder(w, target, held)
		}
		for _, o := range own {
			r.Given = append(r.Given, o.given)
		}
		out, stories = append(out, r), append(stories, own)
	}
	return out, stories, append(problems, reader.problems...)
}

// targetOf is the week's target, from the list or spelled out.
func (in Input) targetOf(w week.Week) (activity.Target, error) {
	if w.Spec != nil {
		return w.Spec.Target()
	}
	if t := in.Target(w.Target); t != nil {
		return *t, nil
	}
	return activity.Target{}, fmt.Errorf("%q is not a target", w.Target)
}

// Target finds a target of the list; nil for none.
func (in Input) Target(id string) *activity.Target {
	i := slices.IndexFunc(in.Targets, func(t activity.Target) bool { return t.ID == id })
	if i < 0 {
		return nil
	}
	return &in.Targets[i]
}

// tellWeek tells every problem of a week as a story; the teacher's own are told
// already.
func tellWeek(teller *story.Teller, w week.Week, p activity.WeekPlan, own []ownStory) (*lesson, error) {
	l := &lesson{date: w.Date, target: p.Request.Target, picture: p.Worked.Picture}
	if l.picture == 0 {
		l.picture = picture.BarModel
	}
	asked := story.Week{Date: w.Date, Place: w.Place, InWords: w.NumberWords, Apart: activity.Apart}
	for _, a := range p.All() {
		if a.Given {
			continue
		}
		tale := story.Tale{Choice: story.Choice{Problem: a.Problem}, WantsExtra: a.WantsExtra}
		if len(w.Kept) > 0 {
			tale.Choice = w.Kept[len(asked.Tales)].Choice
		}
		asked.Tales = append(asked.Tales, tale)
	}
	told, err := teller.Week(asked)
	if err != nil {
		return nil, err
	}
	if l.ladder, err = tellLadder(teller, w, p.Ladder, told); err != nil {
		return nil, err
	}
	for i, a := range p.All() {
		e := exercise{Activity: a}
		if a.Given {
			e.Story = own[i-1].story
			e.Story.ExtraNumber = a.ExtraNumber
		} else {
			e.Story, told = told[0], told[1:]
			e.Activity = a.With(e.Story.ExtraNumber)
		}
		l.all = append(l.all, e)
	}
	l.worked, l.stories = l.all[0], l.all[1:]
	l.numbers = numbers(l.all)
	l.sum = digest(l.date, l.target, l.picture, chosen(l.all), l.ladder)
	return l, nil
}

// chosen are exercises without what was wished for when they were chosen: no page tells
// it, and a week whose stories are kept has no wishes.
func chosen(all []exercise) []exercise {
	out := slices.Clone(all)
	for i := range out {
		out[i].WantsExtra = false
	}
	return out
}
