package desk

import (
	"slices"
	"strings"
	"time"

	"homebuild/internal/activity"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/school"
	"homebuild/internal/strategy"
	"homebuild/internal/week"
)

// ahead is how many Mondays the line shows at least: a school year's.
const ahead = 41

// Year is the line of Mondays: see [Calls].
func (d *Desk) Year(None) (Year, error) {
	s := d.read()
	out := Year{Name: s.Site.Name.In(s.Site.School, s.Site.School), Settings: s.settings(), Class: s.Site.School, Unread: d.unread()}
	for _, tag := range s.Site.Languages {
		if lang, ok := s.language(tag); ok {
			out.Languages = append(out.Languages, lang)
		}
	}
	found := s.findings()
	for _, f := range found {
		if f.Date == "" && f.Mend {
			out.Wrong = append(out.Wrong, f)
		}
	}
	if s.Catalog != nil {
		out.HeldBack = s.heldBack()
	}
	if showing := s.Site.Showing(d.today); len(showing) > 0 {
		out.Newest = showing[len(showing)-1].Date
	}
	next, proposed := d.next(s)
	out.Next = next.Date
	out.Weeks = d.mondays(s, next)
	for i := range out.Weeks {
		for _, f := range found {
			if f.Date == out.Weeks[i].Date && f.Mend {
				out.Weeks[i].Mend++
			}
		}
	}
	out.Grade = int(s.grade(proposed.Target))
	out.Words = d.classWords(s, problem.Grade(out.Grade))
	met := s.met()
	for _, t := range s.Targets {
		switch {
		case int(t.Grade) != out.Grade:
		case met[t.ID] != "":
			out.Met = append(out.Met, d.target(t, met))
		default:
			out.NotYet = append(out.NotYet, d.target(t, met))
		}
	}
	out.Lacks = d.lacks(s)
	return out, nil
}

// classWords are the ways and pictures of a grade with what the class calls them.
func (d *Desk) classWords(s sheets, grade problem.Grade) []ClassWord {
	words := d.spoken()
	var out []ClassWord
	add := func(family, id string) {
		out = append(out, ClassWord{ID: id, Name: name(words, family, id), Own: s.Site.Words[id]})
	}
	for _, n := range strategy.Names() {
		if n.FirstGrade() <= grade {
			add("strategy", n.String())
		}
	}
	for _, k := range picture.Kinds() {
		add("picture", k.String())
	}
	return out
}

// grade is the class's, or else that of the newest week.
func (s sheets) grade(otherwise activity.Target) problem.Grade {
	if s.Site.Grade != nil {
		return *s.Site.Grade
	}
	for _, w := range slices.Backward(s.Site.Weeks) {
		if t := s.Target(w.Target); t != nil {
			return t.Grade
		}
	}
	return otherwise.Grade
}

// lacks are the kinds of story that the class has not met, in the desk's words.
func (d *Desk) lacks(s sheets) []string {
	if s.plan == nil || len(s.Site.Weeks) == 0 {
		return nil
	}
	grade := s.grade(activity.Target{})
	met := map[problem.Kind]bool{}
	for _, w := range s.Site.Weeks {
		for _, x := range s.plan.Exercises(w.Date) {
			met[x.Story.Problem.Kind()] = true
		}
	}
	var out []string
	for _, k := range problem.Kinds() {
		if !met[k] && k.FirstGrade() <= grade {
			out = append(out, d.spoken().Plain(activity.KindName(k)))
		}
	}
	return out
}

// next is the week that the plan proposes; nothing where something has to be mended
// first.
func (d *Desk) next(s sheets) (YearWeek, school.Proposal) {
	if !s.next.asked {
		s.next.asked = true
		s.next.Proposal = d.propose(s, "")
	}
	if s.next.Proposal == nil {
		return YearWeek{}, school.Proposal{}
	}
	p := *s.next.Proposal
	return YearWeek{Date: p.Date, State: StateProposed, Can: d.spoken().Plain(p.Target.CanLine()), ShowFrom: week.FridayBefore(p.Date)}, p
}

// propose is what the plan proposes for a Monday, or for the next one without a
// day; nil where something has to be mended first.
func (d *Desk) propose(s sheets, date string) *school.Proposal {
	if len(s.Site.Languages) == 0 || s.Catalog == nil {
		return nil
	}
	p, wrong := d.proposal(s, school.Wishes{Date: date, OddDate: date != ""})
	if wrong != nil {
		return nil
	}
	return &p
}

// proposal is what the plan proposes with some wishes, after the weeks before that
// day.
func (d *Desk) proposal(s sheets, w school.Wishes) (school.Proposal, error) {
	in := s.Input
	in.Site.Weeks = slices.DeleteFunc(without(in.Site.Weeks, s.left), func(known week.Week) bool { return w.Date != "" && known.Date >= w.Date })
	year, problems := d.school.YearOf(in)
	if len(problems) > 0 {
		return school.Proposal{}, problems
	}
	p, diagnostic := year.Propose(w)
	if diagnostic != nil {
		return school.Proposal{}, refuse(w.Date, *diagnostic)
	}
	return p, nil
}

// mondays are the line: the weeks that there are, with all Mondays between and a
// school year's after the first.
func (d *Desk) mondays(s sheets, next YearWeek) []YearWeek {
	at := map[string]YearWeek{}
	first := next.Date
	for i, w := range s.Site.Weeks {
		at[w.Date] = d.yearWeek(s, w)
		if i == 0 && (first == "" || w.Date < first) {
			first = w.Date
		}
	}
	if first == "" {
		return nil
	}
	last := next.Date
	if n := len(s.Site.Weeks); n > 0 {
		last = max(last, s.Site.Weeks[n-1].Date)
	}
	if _, ok := at[next.Date]; !ok && next.Date != "" {
		at[next.Date] = next
	}
	for n, monday := 0, school.MondayFrom(dayBefore(first, 6)); n < ahead || monday <= last; n, monday = n+1, dayBefore(monday, -7) {
		state := StateEmpty
		if s.Site.Off(monday) {
			state = StateOff
		}
		if _, ok := at[monday]; !ok {
			at[monday] = YearWeek{Date: monday, State: state, ShowFrom: week.FridayBefore(monday)}
		}
	}
	var out []YearWeek
	for _, w := range at {
		out = append(out, w)
	}
	slices.SortFunc(out, func(a, b YearWeek) int { return strings.Compare(a.Date, b.Date) })
	return out
}

func (d *Desk) yearWeek(s sheets, w week.Week) YearWeek {
	out := YearWeek{Date: w.Date, State: StateWaits, ShowFrom: w.ShowFrom}
	if d.had(w) {
		out.State = StateShown
	}
	if t := s.Target(w.Target); t != nil {
		out.Can = d.spoken().Plain(t.CanLine())
	} else if t, err := w.OwnTarget(); err == nil {
		out.Can = d.spoken().Plain(t.CanLine())
	}
	return out
}

// dayBefore is so many days before a day.
func dayBefore(date string, days int) string {
	day, wrong := week.ParseDay(date)
	if wrong != nil {
		return date
	}
	return day.AddDate(0, 0, -days).Format(time.DateOnly)
}
