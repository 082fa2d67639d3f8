package desk

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/school"
	"homebuild/internal/story"
	"homebuild/internal/tomlfile"
	"homebuild/internal/week"
)

// flagged are the week's stories that were chosen, the worked one first, with what
// of them is in pencil.
func (s *sheet) flagged() []week.KeptStory {
	if s.plan == nil {
		return nil
	}
	out, kept := weeksOwn(s.plan.Choices(s.Date)), s.KeptOn(activity.WeeksOwn)
	for i := range out {
		out[i].Proposed = i >= len(kept) || kept[i].Proposed
	}
	return out
}

// weeksOwn are the stories without those of the ladder, which follow them.
func weeksOwn(stories []week.KeptStory) []week.KeptStory {
	return slices.DeleteFunc(slices.Clone(stories), func(k week.KeptStory) bool { return k.Rung != activity.WeeksOwn })
}

// keptText is the file of the week's stories as they are to be; what is kept of the
// ladder stays in it.
func (s *sheet) keptText(stories []week.KeptStory) string {
	all := slices.Clone(stories)
	if s.Ladder {
		for _, rung := range activity.Rungs() {
			all = append(all, s.KeptOn(rung)...)
		}
	}
	return s.StoriesText(all)
}

// merge gives a week fresh stories where they were in pencil: those in ink stay at
// their places as far as there are as many. A tale that stands in ink is not told
// again in pencil where events have another.
func merge(fresh, before []week.KeptStory, events story.Places) []week.KeptStory {
	out := slices.Clone(fresh)
	for i := range out {
		out[i].Proposed = true
	}
	for i, k := range before {
		if inked(k) {
			putInked(out, k, i)
		}
	}
	for i, k := range out {
		if inked(k) || timesTold(out, k.Event) == 1 {
			continue
		}
		if other := untold(out, k, events); other != nil {
			out[i].Event, out[i].Extra = other.ID, 0
		}
	}
	return out
}

// putInked puts a story in ink into a week, at its place or the nearest one before it
// that is in pencil. Without any it is left out.
func putInked(stories []week.KeptStory, k week.KeptStory, at int) {
	for at = min(at, len(stories)-1); at >= 0; at-- {
		if !inked(stories[at]) {
			stories[at] = k
			return
		}
	}
}

// timesTold counts the stories of an event.
func timesTold(stories []week.KeptStory, event string) (n int) {
	for _, k := range stories {
		if k.Event == event {
			n++
		}
	}
	return n
}

// untold is an event that can tell k's problem and that no story of the week is of, in
// the place of k where there is one; nil where there is none.
func untold(stories []week.KeptStory, k week.KeptStory, events story.Places) *story.Event {
	place, _, _ := strings.Cut(k.Event, ".")
	var other *story.Event
	for _, e := range events.Telling(k.Problem) {
		if timesTold(stories, e.ID) == 0 && (other == nil || other.Place != place && e.Place == place) {
			other = e
		}
	}
	return other
}

// said is all that a story tells, to hold two against each other.
func said(in *i18n.Language, s story.Story) string {
	var b strings.Builder
	for _, sentence := range s.Sentences {
		b.WriteString(in.Plain(sentence.Line))
	}
	if s.Own != nil {
		for _, run := range s.Own.By[s.Own.Class].Runs {
			b.WriteString(run.Text)
		}
	}
	return b.String() + s.Problem.Equation().String()
}

// Story does something to one story: see [Calls].
func (d *Desk) Story(wish StoryWish) (Act, error) {
	s, err := d.open(wish.Date)
	if err != nil {
		return Act{}, err
	}
	own, stories := len(s.OwnStories), s.flagged()
	if wish.Story > 0 && wish.Story <= own {
		return d.ownStory(s, wish)
	}
	at := wish.Story
	if at > 0 {
		at -= own
	}
	if at < 0 || at >= len(stories) {
		return Act{}, refuse(wish.Date, diag.Diagnostic{Text: fmt.Sprintf("the week has no story %d", wish.Story)})
	}
	text := s.text
	switch wish.Do {
	case "keep", "release":
		stories[at].Proposed = wish.Do == "release"
		if !slices.ContainsFunc(stories, inked) {
			stories = nil
			if s.Kept != nil {
				return d.released(s)
			}
		}
	case "up", "down":
		to := at - 1
		if wish.Do == "down" {
			to = at + 1
		}
		if to < 0 || to >= len(stories) {
			return Act{Monday: wish.Date}, nil
		}
		stories[at], stories[to] = stories[to], stories[at]
		stories[to].Proposed = false
	case "remove":
		if len(stories) <= 2 {
			return Act{}, refuse(wish.Date, diag.Diagnostic{Text: "a week has two stories at least", Code: codeFewest})
		}
		stories = slices.Delete(stories, at, at+1)
		text = tomlfile.Set(text, LineStories, fmt.Sprint(len(stories)-1+own))
		if !slices.ContainsFunc(stories, inked) {
			stories[0].Proposed = false
		}
	default:
		now, err := d.swapped(s, wish)
		if err != nil {
			return Act{}, err
		}
		stories[at], stories[at].Proposed = now, false
	}
	return d.act(s, text, stories)
}

// released are all stories in pencil again: chosen anew.
func (d *Desk) released(s *sheet) (Act, error) {
	after, err := d.opened(s.Date, s.text, true, []fileText{{week.Path(s.Date), s.text}, {week.StoriesPath(s.Date), ""}})
	if err != nil {
		return Act{}, err
	}
	return Act{Changes: Changes{week.StoriesPath(s.Date): nil}, Monday: s.Date, Moved: d.moved(s, after)}, nil
}

// changes are what Story does by choosing numbers.
var changes = map[string]activity.Change{
	"numbers": activity.OtherNumbers, "kind": activity.OtherNumbers, "easier": activity.EasierNumbers, "harder": activity.HarderNumbers,
}

// swapped is another story in the place of one.
func (d *Desk) swapped(s *sheet, wish StoryWish) (week.KeptStory, error) {
	change, known := changes[wish.Do]
	if !known && wish.Do != "tale" {
		return week.KeptStory{}, fmt.Errorf("nothing to do to a story is called %q", wish.Do)
	}
	swap := school.Swap{Date: wish.Date, Story: wish.Story, Change: change, Another: wish.Do == "tale"}
	if wish.Do == "kind" {
		swap.Kind = wish.Kind
	}
	out, diagnostics := s.school().Swap(swap)
	if len(diagnostics) > 0 {
		p := diagnostics[0]
		return week.KeptStory{}, wrong{{Date: wish.Date, Key: LineStories, Story: wish.Story, Text: p.Text, Hint: p.Hint, Code: wish.Do}}
	}
	return out.Now, nil
}

// school is the site as it was worked out, with the weeks that could be.
func (s *sheet) school() *school.Site {
	in := s.Input
	in.Site.Weeks = without(in.Site.Weeks, s.left)
	return &school.Site{Input: in, Planned: s.plan}
}

// Kinds are the other kinds of story that one could be: see [Calls].
func (d *Desk) Kinds(of StoryOf) ([]Reading, error) {
	s, err := d.open(of.Date)
	if err != nil {
		return nil, err
	}
	all := s.exercises()
	if len(all) == 0 {
		return nil, wrong(s.findings())
	}
	if of.Story < 0 || of.Story >= len(all) {
		return nil, nil
	}
	now := all[of.Story].Story.Problem.Kind()
	draw := pictures{prefix: "kind-", words: s.class()}
	var out []Reading
	for _, k := range problem.Kinds() {
		if k == now || k.FirstGrade() > s.target.Grade {
			continue
		}
		swapped, diagnostics := s.school().Swap(school.Swap{Date: of.Date, Story: of.Story, Kind: k.String()})
		if len(diagnostics) > 0 {
			continue
		}
		r := s.reading(swapped.Now.Problem, &draw, d.spoken())
		r.Line = k.String()
		out = append(out, r)
	}
	return out, nil
}

// reading is a problem as a picture with its equation.
func (s *sheet) reading(p problem.Problem, draw *pictures, words *i18n.Language) Reading {
	return Reading{
		Kind: kindOf(p.Kind(), words), Equation: s.class().Equation(p.Equation()), Answer: answer(s.class(), p),
		Picture: draw.draw(picture.OrBars(p, s.drawn(), picture.Open)),
	}
}
