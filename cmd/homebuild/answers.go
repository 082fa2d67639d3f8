package main

import (
	"fmt"
	"slices"
	"strings"
	"time"
	"unicode"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
)

// Checks of what a person answers or gives as a flag. Each says what to write
// instead.

// checkName wants a name that fits on a phone.
func checkName(name string) error {
	const most = 80
	switch {
	case strings.TrimSpace(name) == "":
		return wrongUse("the name is empty", "write it as families know it: Pebble Lane School")
	case len([]rune(name)) > most:
		return wrongUse(fmt.Sprintf("the name has %d letters", len([]rune(name))), fmt.Sprintf("keep it to %d, for small screens", most))
	case strings.ContainsFunc(name, unicode.IsControl):
		return wrongUse(fmt.Sprintf("the name %q has a control character in it", name), "type it again")
	}
	return nil
}

// checkMonday wants a day of the calendar that is a Monday.
func checkMonday(date string) error {
	day, err := time.Parse(time.DateOnly, date)
	if err != nil {
		return wrongUse(fmt.Sprintf("%q is not a day of the calendar", date), "write year-month-day, such as 2026-09-14")
	}
	if day.Weekday() != time.Monday {
		return wrongUse(fmt.Sprintf("%s is a %s", date, day.Weekday()), fmt.Sprintf("a week is named by its Monday: %s", mondayFrom(day.AddDate(0, 0, -6))))
	}
	return nil
}

// mondayFrom is the first Monday from a day on, that day included.
func mondayFrom(day time.Time) string {
	return day.AddDate(0, 0, (8-int(day.Weekday()))%7).Format(time.DateOnly)
}

// mondayAfter is the first Monday after a date.
func mondayAfter(date string) string {
	day, err := time.Parse(time.DateOnly, date)
	if err != nil {
		panic(err) // week files are checked on reading
	}
	return mondayFrom(day.AddDate(0, 0, 1))
}

// checkTarget wants one of the targets.
func checkTarget(id string, targets []activity.Target) error {
	words := each(targets, func(t activity.Target) string { return t.ID })
	if slices.Contains(words, id) {
		return nil
	}
	hint := `"homebuild targets" lists them`
	if near := diag.Nearest(id, words); near != "" {
		hint = fmt.Sprintf("did you mean %q? %s", near, hint)
	}
	return wrongUse(fmt.Sprintf("%q is not a target", id), hint)
}

// checkAddress wants a web address, or nothing.
func checkAddress(address string) error {
	if address == "" || strings.HasPrefix(address, "https://") && !strings.ContainsAny(address, " \t\"\\") {
		return nil
	}
	return wrongUse(fmt.Sprintf("%q is not a web address", address), "write it in full: https://your-school.example/home/")
}

// choice says which word was meant, or which there are.
func choice(typed string, words []string) string {
	there := "there are: " + strings.Join(words, ", ")
	if near := diag.Nearest(typed, words); near != "" {
		return fmt.Sprintf("did you mean %q? %s", near, there)
	}
	return there
}
