package week

import (
	"cmp"
	"fmt"
	"path"
	"slices"
	"strings"
	"time"

	"homebuild/internal/diag"
	"homebuild/internal/tomlfile"
)

// A day is written year-month-day, 2026-09-14, so that days in order are texts in
// order.

// The years that a date can be meant in.
const (
	firstYear = 2000
	lastYear  = 2199
)

// ParseDay reads a day that can be meant.
func ParseDay(text string) (time.Time, *diag.Diagnostic) {
	day, err := time.Parse(time.DateOnly, text)
	const hint = "write year-month-day, such as 2026-09-14"
	switch {
	case err != nil:
		return day, &diag.Diagnostic{Text: fmt.Sprintf("%q is not a day of the calendar", text), Hint: hint}
	case day.Year() < firstYear || day.Year() > lastYear:
		return day, &diag.Diagnostic{Text: fmt.Sprintf("%q cannot be meant: it is in the year %d", text, day.Year()), Hint: hint}
	}
	return day, nil
}

// mustDay reads a day that was read before.
func mustDay(text string) time.Time {
	day, problem := ParseDay(text)
	if problem != nil {
		panic(problem)
	}
	return day
}

// DayName is a day with its name: "Friday, 2026-09-11".
func DayName(day string) string { return mustDay(day).Weekday().String() + ", " + day }

// FridayBefore is the last Friday before a day: from then on families see the week
// that begins on it, unless its file says otherwise.
func FridayBefore(day string) string {
	d := mustDay(day)
	back := (int(d.Weekday())-int(time.Friday)+6)%7 + 1
	return d.AddDate(0, 0, -back).Format(time.DateOnly)
}

// Shows reports whether families see the week on a day. Without a day they see
// every week.
func (w Week) Shows(today string) bool { return today == "" || w.ShowFrom <= today }

// Showing are the weeks that families see on a day, oldest first.
func (s Site) Showing(today string) []Week {
	return slices.DeleteFunc(slices.Clone(s.Weeks), func(w Week) bool { return !w.Shows(today) })
}

// Waiting are the weeks that families do not see yet, in the order of the days on
// which they will.
func (s Site) Waiting(today string) []Week {
	waiting := slices.DeleteFunc(slices.Clone(s.Weeks), func(w Week) bool { return w.Shows(today) })
	slices.SortStableFunc(waiting, func(a, b Week) int { return cmp.Compare(a.ShowFrom, b.ShowFrom) })
	return waiting
}

// day reads a day that a setting gives; empty when it is left out or wrong.
func day(s *tomlfile.Section, key string) string {
	text := s.Day(key)
	if text == "" {
		return ""
	}
	if _, problem := ParseDay(text); problem != nil {
		s.Add(key, key+": "+problem.Text, fmt.Sprintf("write %s = 2026-09-14, year-month-day", key))
		return ""
	}
	return text
}

// Days are from one day to another; both may be the same.
type Days struct{ First, Last string }

// String is how site.toml writes them.
func (d Days) String() string {
	if d.First == d.Last {
		return d.First
	}
	return d.First + " to " + d.Last
}

// parseDays reads "2026-11-26" or "2026-12-21 to 2027-01-01".
func parseDays(text string) (Days, *diag.Diagnostic) {
	first, last, isRange := strings.Cut(text, " to ")
	if !isRange {
		last = first
	}
	days := Days{strings.TrimSpace(first), strings.TrimSpace(last)}
	const example = `write days-off = ["2026-11-26", "2026-12-21 to 2027-01-01"]`
	for _, day := range []string{days.First, days.Last} {
		if _, wrong := ParseDay(day); wrong != nil {
			return days, &diag.Diagnostic{Text: "days-off: " + wrong.Text, Hint: example}
		}
	}
	if days.Last < days.First {
		return days, &diag.Diagnostic{Text: fmt.Sprintf("days-off: %s is before %s", days.Last, days.First), Hint: "write the first day first"}
	}
	return days, nil
}

// daysOff reads the days on which there is no school.
func daysOff(s *tomlfile.Section) []Days {
	var out []Days
	for _, item := range s.List("days-off") {
		days, wrong := parseDays(item)
		if wrong != nil {
			s.Add("days-off", wrong.Text, wrong.Hint)
			continue
		}
		out = append(out, days)
	}
	return out
}

// WithDaysOff is the site with more days off, without those before a day. The
// problem has no place.
func (s Site) WithDaysOff(from string, more []string) (Site, *diag.Diagnostic) {
	s.DaysOff = slices.DeleteFunc(slices.Clone(s.DaysOff), func(d Days) bool { return d.Last < from })
	for _, item := range more {
		days, wrong := parseDays(item)
		if wrong != nil {
			return s, wrong
		}
		s.DaysOff = append(s.DaysOff, days)
	}
	return s, nil
}

// Off reports whether there is no school in the week that begins on a day: from
// Monday to Friday, all are days off.
func (s Site) Off(monday string) bool {
	for d := mustDay(monday); d.Weekday() != time.Saturday; d = d.AddDate(0, 0, 1) {
		day := d.Format(time.DateOnly)
		off := slices.ContainsFunc(s.DaysOff, func(days Days) bool { return days.First <= day && day <= days.Last })
		if !off && d.Weekday() != time.Sunday {
			return false
		}
	}
	return true
}

// far is how many weeks a week may be from any other, and from today, before its
// date is asked about: more than a summer, less than a year.
const far = 26

// OddDates asks about weeks whose date can hardly be meant: one slip of the keys,
// and families see the wrong week. A file that says odd-date = true is believed.
func (s Site) OddDates(today string) diag.Diagnostics {
	var out diag.Diagnostics
	for _, w := range s.Weeks {
		if w.OddDate {
			continue
		}
		if wrong := s.OddDate(w.Date, today); wrong != nil {
			out = append(out, diag.Diagnostic{File: w.file, Text: wrong.Text, Hint: wrong.Hint + "; or write odd-date = true into the file", Code: diag.OddDate})
		}
	}
	return out
}

// OddDate says why a date, of a week that is there or of a new one, can hardly be
// meant; nil when it can. The problem has no place.
func (s Site) OddDate(date, today string) *diag.Diagnostic {
	usual := time.Monday
	if len(s.Weeks) > 0 && !slices.ContainsFunc(s.Weeks, func(w Week) bool { return w.Weekday() != time.Sunday }) {
		usual = time.Sunday // all of them: so it is in some countries
	}
	d := mustDay(date)
	if d.Weekday() != usual {
		begins := d.AddDate(0, 0, -(int(d.Weekday()-usual)+7)%7).Format(time.DateOnly)
		return &diag.Diagnostic{Text: fmt.Sprintf("%s is a %s", date, d.Weekday()), Hint: fmt.Sprintf("a week is named by its %s: name it %s", usual, path.Base(Path(begins)))}
	}
	fromToday := weeksBetween(date, today)
	alone, isFar := true, true
	for _, w := range s.around(date) {
		alone, isFar = false, isFar && weeksBetween(date, w.Date) > far
	}
	switch {
	case today == "" || !isFar || fromToday <= far || alone && date < today:
		return nil
	case alone:
		return &diag.Diagnostic{Text: fmt.Sprintf("%s is %d weeks from today, %s", date, fromToday, today), Hint: "if the date is a slip, name the file by the day that was meant"}
	}
	return &diag.Diagnostic{
		Text: fmt.Sprintf("%s is %d weeks from today, %s, and no other week is near", date, fromToday, today),
		Hint: fmt.Sprintf("if the year is a slip, name the file %s", path.Base(Path(nearYear(d, today)))),
	}
}

// around are the weeks before and after a date, as far as there are any.
func (s Site) around(date string) (out []Week) {
	i, found := slices.BinarySearchFunc(s.Weeks, date, func(w Week, date string) int { return cmp.Compare(w.Date, date) })
	out = append(out, s.Weeks[max(0, i-1):i]...)
	if found {
		i++
	}
	return append(out, s.Weeks[i:min(i+1, len(s.Weeks))]...)
}

// weeksBetween is how many whole weeks lie between two days; 0 where one is not
// given.
func weeksBetween(a, b string) int {
	if a == "" || b == "" {
		return 0
	}
	return int(mustDay(a).Sub(mustDay(b)).Abs().Hours()) / (7 * 24)
}

// nearYear is the first day of a week, in the year that brings it nearest to today.
func nearYear(d time.Time, today string) string {
	best := ""
	for year := mustDay(today).Year() - 1; year <= mustDay(today).Year()+1; year++ {
		meant := time.Date(year, d.Month(), d.Day(), 0, 0, 0, 0, time.UTC)
		monday := meant.AddDate(0, 0, (int(time.Monday-meant.Weekday())+10)%7-3).Format(time.DateOnly) // the nearest
		if best == "" || weeksBetween(monday, today) < weeksBetween(best, today) {
			best = monday
		}
	}
	return best
}
