package school

import (
	"fmt"
	"slices"
	"testing/fstest"
	"time"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/site"
	"homebuild/internal/strategy"
	"homebuild/internal/week"
)

// FirstTarget is proposed for the first week there is, where no grade is known.
const FirstTarget = "add-within-20"

// FirstTargetOf is proposed for the first week of a grade.
func FirstTargetOf(grade problem.Grade) string {
	targets := TargetsOf(grade)
	if slices.ContainsFunc(targets, func(t Target) bool { return t.ID == FirstTarget }) {
		return FirstTarget
	}
	return targets[0].ID
}

// None is the wish that leaves a setting out.
const None = "none"

// Wishes are what a person has decided about a new week. What is empty is
// proposed.
type Wishes struct {
	Date    string
	OddDate bool // the date is meant, though it looks like a slip
	Target  string
	Focus   string // a word, or None
	Picture string // a word, or None
	Ladder  bool   // easier and harder stories beside the week's own
}

// Proposal is a new week, with the reasons.
type Proposal struct {
	Date    string
	OddDate bool // whether the file has to say that the date is meant
	Target  activity.Target
	Focus   string // empty for none
	Picture string // empty for none
	Habits  Habits

	Why     activity.Suggestion // why this target is next
	ByRule  bool                // the rule gave the target
	Helps   int                 // stories that the focus helps with
	Shows   int                 // stories that the picture can show
	Stories int                 // stories that these were counted in
	// Whether the person wished for another one than the best.
	FocusAsked, PictureAsked bool

	showFrom string // the day from which families see it; empty for the usual one
}

// shownFrom has families see the week from a day on, where the usual one is later:
// the first week of a school, which its teacher wants to look at.
func (p Proposal) shownFrom(day string) Proposal {
	if day != "" && day < week.FridayBefore(p.Date) {
		p.showFrom = day
	}
	return p
}

// Propose chooses what was left open. A wish that cannot stand is a problem
// without a file.
func (y *Year) Propose(w Wishes) (Proposal, *diag.Diagnostic) {
	if w.Date == "" {
		w.Date = y.nextMonday()
	}
	w.Target = meant(w.Target)
	p := Proposal{Date: w.Date, OddDate: w.OddDate, Habits: y.habits()}
	p.Habits.Ladder = p.Habits.Ladder || w.Ladder
	if wrong := y.Check(w); wrong != nil {
		return p, wrong
	}
	if wrong := y.chooseTarget(&p, w.Target); wrong != nil {
		return p, wrong
	}
	y.chooseWays(&p, w)
	return p, nil
}

// Check says what is wrong with wishes, in the words of a build; nil for nothing.
func (y *Year) Check(w Wishes) *diag.Diagnostic {
	if slices.ContainsFunc(y.Site.Weeks, func(known week.Week) bool { return known.Date == w.Date }) {
		return &diag.Diagnostic{Text: fmt.Sprintf("the week of %s is there already", w.Date), Hint: "choose another Monday, or open its file", Code: diag.Taken, Value: w.Date}
	}
	if wrong := y.school.refused(y.Input, w); wrong != nil || w.OddDate {
		return wrong
	}
	if wrong := y.Site.OddDate(w.Date, y.On); wrong != nil {
		return &diag.Diagnostic{Text: wrong.Text, Hint: "choose another Monday; or, if the date is meant, say so with --anyway"}
	}
	return nil
}

// nextMonday is the first Monday from today on, or after the newest week where
// there is one. Weeks without a day of school are passed over.
func (y *Year) nextMonday() string {
	var next string
	switch n := len(y.Weeks); {
	case n > 0:
		next = mondayAfter(y.Weeks[n-1].Request.Week)
	case y.On == "":
		return ""
	default:
		next = MondayFrom(y.On)
	}
	for y.Site.Off(next) {
		next = mondayAfter(next)
	}
	return next
}

// refused wants a Monday, and gives what a reading of a week file with these
// settings says.
func (s *School) refused(in site.Input, w Wishes) *diag.Diagnostic {
	if wrong := checkMonday(w.Date); wrong != nil {
		return wrong
	}
	if w.Target == "" {
		w.Target = FirstTarget
	}
	draft := weekText{Habits: Habits{Stories: week.DefaultStories, Minutes: week.DefaultMinutes}, Target: w.Target, Focus: unlessNone(w.Focus), Picture: unlessNone(w.Picture)}
	_, problems := week.Read(fstest.MapFS{
		week.SiteFile:     {Data: []byte("name = \"x\"\nlanguages = [\"en\"]\n")},
		week.Path(w.Date): {Data: []byte(draft.String())},
	}, s.allowed(in))
	return first(problems)
}

// unlessNone is the word of a wish; empty for [None].
func unlessNone(word string) string {
	if word == None {
		return ""
	}
	return word
}

// first gives the first problem without its place in a file that is not written
// yet; nil where there is none.
func first(problems diag.Diagnostics) *diag.Diagnostic {
	if len(problems) == 0 {
		return nil
	}
	return &diag.Diagnostic{Text: problems[0].Text, Hint: problems[0].Hint}
}

// meant is the target that a wish can only mean, or the wish as it stands.
func meant(wish string) string {
	if found := FindTargets(wish); wish != "" && len(found) == 1 {
		return found[0].ID
	}
	return wish
}

// chooseTarget takes the one that was wished for, or the next by the rule.
func (y *Year) chooseTarget(p *Proposal, wish string) *diag.Diagnostic {
	targets := y.Tellable()
	var found bool
	p.Why, found = activity.Next(y.Grade(), y.Weeks, targets)
	id := wish
	switch {
	case id == "" && found:
		id = p.Why.Target.ID
	case id == "":
		id = FirstTargetOf(y.Grade())
	}
	i := slices.IndexFunc(targets, func(t activity.Target) bool { return t.ID == id })
	if i < 0 {
		return &diag.Diagnostic{
			Text: fmt.Sprintf("%q cannot be told in all languages of the site yet", id),
			Hint: `choose another target; "homebuild check" says which language holds what back`,
		}
	}
	p.Target, p.ByRule = targets[i], found && id == p.Why.Target.ID
	return nil
}

// chooseWays chooses the focus and the picture that suit the target.
func (y *Year) chooseWays(p *Proposal, w Wishes) {
	earlier := make([]activity.Request, len(y.Weeks))
	for i := range y.Weeks {
		earlier[i] = y.Weeks[i].Request
	}
	r := activity.Request{Week: p.Date, Key: y.Site.Key, Target: p.Target, Stories: p.Habits.Stories, Review: p.Habits.Review}
	plan := y.Planner
	if plan == nil {
		plan = &activity.Planner{}
	}
	r.Focus, r.Picture = ownWays(plan, earlier)
	r.Focus, p.Helps, p.Stories = plan.BestFocus(earlier, r)
	if r.Focus.Valid() {
		p.Focus = r.Focus.String()
	}
	if p.FocusAsked = w.Focus != "" && unlessNone(w.Focus) != p.Focus; p.FocusAsked {
		p.Focus = unlessNone(w.Focus)
		r.Focus, _ = strategy.ParseName(p.Focus)
	}
	var kind picture.Kind
	kind, p.Shows, p.Stories = plan.BestPicture(earlier, r)
	if kind.Valid() {
		p.Picture = kind.String()
	}
	if p.PictureAsked = w.Picture != "" && unlessNone(w.Picture) != p.Picture; p.PictureAsked {
		p.Picture = unlessNone(w.Picture)
	}
}

// checkMonday wants a day of the calendar that is a Monday.
func checkMonday(date string) *diag.Diagnostic {
	day, wrong := week.ParseDay(date)
	if wrong != nil {
		return wrong
	}
	if day.Weekday() != time.Monday {
		return &diag.Diagnostic{Text: fmt.Sprintf("%s is a %s", date, day.Weekday()), Hint: "a week is named by its Monday: " + monday(day.AddDate(0, 0, -6))}
	}
	return nil
}

// MondayFrom is the first Monday from a date on, that day included.
func MondayFrom(date string) string { return monday(must(time.Parse(time.DateOnly, date))) }

// mondayAfter is the first Monday after a date.
func mondayAfter(date string) string {
	return monday(must(time.Parse(time.DateOnly, date)).AddDate(0, 0, 1))
}

func monday(day time.Time) string {
	return day.AddDate(0, 0, (8-int(day.Weekday()))%7).Format(time.DateOnly)
}
