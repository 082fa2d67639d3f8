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

// Keep lists the files that keep the stories of weeks as families see them from
// now on: one for each week that shows and has none yet.
func (s *Site) Keep() []output.File {
	var out []output.File
	for _, w := range s.Site.Showing(s.On) {
		if choices := s.Choices(w.Date); len(w.Kept) == 0 && len(choices) > 0 {
			out = append(out, output.Text(week.StoriesPath(w.Date), w.StoriesText(choices)))
		}
	}
	return out
}

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
	refuse := func(text, hint string) (Swapped, diag.Diagnostics) {
		return Swapped{}, diag.Diagnostics{{Text: text, Hint: hint}}
	}
	at := slices.IndexFunc(made.Site.Weeks, func(w week.Week) bool { return w.Date == wish.Date })
	if at < 0 {
		wrong := noWeek(made.Input, wish.Date)
		return refuse(wrong.Text, wrong.Hint)
	}
	choices := made.Choices(wish.Date)
	own := len(made.Site.Weeks[at].OwnStories)
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
	out := Swapped{Was: choices[place], Now: choices[place]}
	told := made.Told()
	if wish.Event != "" && told.Event(wish.Event) == nil {
		misfit := told.Check(story.Choice{Event: wish.Event, Problem: out.Was.Problem}).(*story.Misfit)
		return refuse(misfit.Text, misfit.Hint)
	}
	if wrong := made.other(told, wish, choices, &out.Now, at); wrong != nil {
		return Swapped{}, diag.Diagnostics{*wrong}
	}
	if out.Now.Event == "" { // the teller chooses, as for any week
		out.Now.Event = anotherEvent(told, out, choices)
	}
	if misfit, ok := told.Check(out.Now.Choice).(*story.Misfit); ok {
		return refuse(misfit.Text, misfit.Hint)
	}
	choices[place] = out.Now
	out.File = output.Text(week.StoriesPath(wish.Date), made.Site.Weeks[at].StoriesText(choices))
	return out, nil
}

// other is the story that is wished for: its problem, and its event where it can
// stay or is given.
func (s *Site) other(told story.Places, wish Swap, choices []week.KeptStory, now *week.KeptStory, at int) *diag.Diagnostic {
	was := *now
	kind := was.Problem.Kind()
	if wish.Kind != "" {
		known, ok := problem.ParseKind(wish.Kind)
		if !ok {
			return &diag.Diagnostic{Text: fmt.Sprintf("%q is not a kind of story", wish.Kind), Hint: diag.Choice(wish.Kind, each(problem.Kinds(), problem.Kind.String))}
		}
		kind = known
	}
	now.Extra, now.Event = 0, wish.Event
	if kind != was.Problem.Kind() {
		now.Returns = ""
	}
	if e := told.Event(wish.Event); e != nil && wish.Kind == "" && !slices.Contains(e.Kinds, kind) {
		kind = e.Kinds[0]
	}
	if len(wish.Numbers) > 0 {
		p, err := problem.New(kind, wish.Numbers...)
		if err != nil {
			return &diag.Diagnostic{Text: strings.TrimPrefix(err.Error(), problem.ErrNumbers.Error()+": "), Hint: fmt.Sprintf("it has %s now: give numbers in the same order", plain(was.Problem.Numbers()))}
		}
		now.Problem = p
	} else if !wish.Another && !(wish.Event != "" && kind == was.Problem.Kind() && told.Check(story.Choice{Event: wish.Event, Problem: was.Problem}) == nil) {
		var of []problem.Problem
		for _, c := range choices {
			of = append(of, c.Problem)
		}
		r := s.Request(at)
		if earlier, ok := s.find(was.Returns); ok {
			r.Target, r.Focus = earlier, 0
		}
		r.Bears = func(p problem.Problem) bool {
			if e := now.Event; e != "" {
				return told.Check(story.Choice{Event: e, Problem: p}) == nil
			}
			return told.Bears(p)
		}
		if wish.Event == "" && kind == was.Problem.Kind() {
			now.Event = was.Event // the same tale, where it bears such numbers
		}
		p, ok := activity.Another(r, was.Problem, kind, wish.Change, of, s.find)
		if !ok && wish.Event == "" {
			now.Event = ""
			p, ok = activity.Another(r, was.Problem, kind, wish.Change, of, s.find)
		}
		if !ok {
			return &diag.Diagnostic{Text: "there are no such numbers for this story", Hint: `try --kind, --event, or --numbers 8,6 of your own`}
		}
		now.Problem = p
	}
	if wish.Event == "" && !wish.Another && kind == was.Problem.Kind() && told.Check(story.Choice{Event: was.Event, Problem: now.Problem}) == nil {
		now.Event = was.Event
	}
	return nil
}

// anotherEvent is a tale for the numbers that the week does not tell yet: in the
// place of the one before where there is one.
func anotherEvent(told story.Places, s Swapped, weeks []week.KeptStory) string {
	events := told.Telling(s.Now.Problem)
	place, _, _ := strings.Cut(s.Was.Event, ".")
	fresh := func(e *story.Event) bool {
		return !slices.ContainsFunc(weeks, func(c week.KeptStory) bool { return c.Event == e.ID })
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
