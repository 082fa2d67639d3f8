package school

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/output"
	"homebuild/internal/problem"
	"homebuild/internal/story"
	"homebuild/internal/week"
)

// Swap is what a person wants instead of a story. What is empty stays as it is,
// but for the numbers: without any wish, there are others.
type Swap struct {
	Date    string
	Story   int // as numbered on the page to try; 0 for the worked one
	Event   string
	Kind    string
	Numbers []int
	Change  activity.Change
	Another bool // another tale, with the same numbers
}

// Swapped is a week with another story.
type Swapped struct {
	File     output.File // the week's stories
	Was, Now week.KeptStory
}

// Swap gives a week another story in the place of one, and keeps the week as it
// then is. The problem has no file when it is a wish that cannot stand.
func (s *School) Swap(wish Swap) (Swapped, diag.Diagnostics) {
	made, problems := s.Assemble(nil)
	if len(problems) > 0 {
		return Swapped{}, problems
	}
	return made.Swap(wish)
}

// Swap gives a week of a site that was worked out another story in the place of one.
func (s *Site) Swap(wish Swap) (Swapped, diag.Diagnostics) {
	refuse := func(text, hint string) (Swapped, diag.Diagnostics) {
		return Swapped{}, diag.Diagnostics{{Text: text, Hint: hint}}
	}
	at := slices.IndexFunc(s.Site.Weeks, func(w week.Week) bool { return w.Date == wish.Date })
	if at < 0 {
		wrong := noWeek(s.Input, wish.Date)
		return refuse(wrong.Text, wrong.Hint)
	}
	choices := s.Choices(wish.Date)
	own := len(s.Site.Weeks[at].OwnStories)
	place := wish.Story
	if place > 0 {
		place -= own
	}
	switch {
	case wish.Story > 0 && wish.Story <= own:
		return refuse(fmt.Sprintf("story %d is your own", wish.Story), "change its words in "+week.Path(wish.Date))
	case place < 0 || place >= len(choices):
		return refuse(fmt.Sprintf("the week has no story %d", wish.Story), fmt.Sprintf("there are 1 to %d; 0 is the worked one", own+len(choices)-1))
	}
	events := s.SharedEvents()
	if wish.Event != "" && events.Event(wish.Event) == nil {
		misfit := events.Check(story.Choice{Event: wish.Event, Problem: choices[place].Problem}).(*story.Misfit)
		return refuse(misfit.Text, misfit.Hint)
	}
	w := &wished{Site: s, wish: wish, at: at, week: choices, events: events, was: choices[place], event: wish.Event}
	if wrong := w.story(); wrong != nil {
		return Swapped{}, diag.Diagnostics{*wrong}
	}
	out := Swapped{Was: w.was, Now: w.now}
	if out.Now.Event == "" { // the teller chooses, as for any week
		out.Now.Event = anotherEvent(events, out, choices)
	}
	if misfit, ok := events.Check(out.Now.Choice).(*story.Misfit); ok {
		return refuse(misfit.Text, misfit.Hint)
	}
	choices[place] = out.Now
	out.File = output.Text(week.StoriesPath(wish.Date), s.Site.Weeks[at].StoriesText(choices))
	return out, nil
}

// wished is a story that is to take the place of another.
type wished struct {
	*Site
	wish   Swap
	at     int // the week
	week   []week.KeptStory
	events story.Places
	was    week.KeptStory
	now    week.KeptStory
	kind   problem.Kind // that it shall have
	event  string       // that it shall have; empty for any
}

// story works out the problem that is wished for, and its event where that is given
// or can stay.
func (w *wished) story() *diag.Diagnostic {
	w.now = w.was
	w.now.Extra, w.now.Event = 0, w.event
	if wrong := w.ofKind(); wrong != nil {
		return wrong
	}
	var wrong *diag.Diagnostic
	switch {
	case len(w.wish.Numbers) > 0:
		wrong = w.givenNumbers()
	case w.wish.Another || w.event != "" && w.sameKind() && w.bears(w.event, w.was.Problem):
		// the numbers stay
	default:
		wrong = w.otherNumbers()
	}
	if wrong == nil && w.event == "" && !w.wish.Another && w.sameKind() && w.bears(w.was.Event, w.now.Problem) {
		w.now.Event = w.was.Event
	}
	return wrong
}

// ofKind finds the kind of story: the one that is wished for, or one that the event
// tells.
func (w *wished) ofKind() *diag.Diagnostic {
	w.kind = w.was.Problem.Kind()
	if w.wish.Kind != "" {
		known, ok := problem.ParseKind(w.wish.Kind)
		if !ok {
			return &diag.Diagnostic{Text: fmt.Sprintf("%q is not a kind of story", w.wish.Kind), Hint: diag.Choice(w.wish.Kind, each(problem.Kinds(), problem.Kind.String))}
		}
		w.kind = known
	}
	if !w.sameKind() && w.was.Rung == activity.WeeksOwn {
		w.now.Of = ""
	}
	if e := w.events.Event(w.event); e != nil && w.wish.Kind == "" && !slices.Contains(e.Kinds, w.kind) {
		w.kind = e.Kinds[0]
	}
	return nil
}

func (w *wished) sameKind() bool { return w.kind == w.was.Problem.Kind() }

func (w *wished) bears(event string, p problem.Problem) bool {
	e := w.events.Event(event)
	return e != nil && e.Bears(p)
}

func (w *wished) givenNumbers() *diag.Diagnostic {
	p, err := problem.New(w.kind, w.wish.Numbers...)
	if err != nil {
		return &diag.Diagnostic{
			Text: strings.TrimPrefix(err.Error(), problem.ErrNumbers.Error()+": "),
			Hint: fmt.Sprintf("it has %s now: give numbers in the same order", plain(w.was.Problem.Numbers())),
		}
	}
	w.now.Problem = p
	return nil
}

// otherNumbers chooses them: for the event that is wished for, else for the one
// before, else for any.
func (w *wished) otherNumbers() *diag.Diagnostic {
	events := []string{w.event}
	if w.event == "" && w.sameKind() {
		events = []string{w.was.Event, ""}
	}
	var has []problem.Problem
	for _, c := range w.week {
		has = append(has, c.Problem)
	}
	r := w.Request(w.at)
	if other, ok := w.find(w.was.Of); ok {
		r.Target, r.Focus = other, 0
	}
	for _, event := range events {
		e := w.events.Event(event) // found once, not for every pair of numbers
		r.Bears = activity.BearerFunc(func(p problem.Problem) bool {
			if event == "" {
				return w.events.Bears(p)
			}
			return e != nil && e.Bears(p)
		})
		if p, ok := activity.Another(r, w.was.Problem, w.kind, w.wish.Change, has, w.find); ok {
			w.now.Problem, w.now.Event = p, event
			return nil
		}
	}
	return &diag.Diagnostic{Text: "there are no such numbers for this story", Hint: `try --kind, --event, or --numbers 8,6 of your own`}
}

// anotherEvent is a tale for the numbers that the week does not tell yet: in the
// place of the one before where there is one.
func anotherEvent(all story.Places, s Swapped, has []week.KeptStory) string {
	events := all.Telling(s.Now.Problem)
	place, _, _ := strings.Cut(s.Was.Event, ".")
	fresh := func(e *story.Event) bool {
		return !slices.ContainsFunc(has, func(c week.KeptStory) bool { return c.Event == e.ID })
	}
	for _, fits := range []func(*story.Event) bool{
		func(e *story.Event) bool { return fresh(e) && e.Place == place },
		fresh,
		func(e *story.Event) bool { return e.ID != s.Was.Event },
		func(*story.Event) bool { return true },
	} {
		if i := slices.IndexFunc(events, fits); i >= 0 {
			return events[i].ID
		}
	}
	return ""
}

// find finds a target by its id.
func (s *Site) find(id string) (activity.Target, bool) {
	i := slices.IndexFunc(s.Targets, func(t activity.Target) bool { return t.ID == id })
	if i < 0 {
		return activity.Target{}, false
	}
	return s.Targets[i], true
}

func plain(numbers []int) string {
	return strings.Join(strings.Fields(strings.Trim(fmt.Sprint(numbers), "[]")), ",")
}
