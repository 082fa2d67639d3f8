package page

import (
	"time"

	"homebuild/internal/phrase"
)

// WeekOf is the line above a page of a week, "Week of September 14, 2026" for 2026-09-14; each language orders
// the parts, and says the first of a month as it likes.
func WeekOf(date string) phrase.Line {
	t, err := time.Parse(time.DateOnly, date)
	if err != nil {
		panic("page: " + date + " is not a date") // week files are checked on reading
	}
	year, month, day := t.Date()
	parts := []phrase.Value{phrase.Message("Month", id("month.", int(month))), phrase.Number("Year", year)}
	if day == 1 {
		return phrase.Say("page.week-first", parts...)
	}
	return phrase.Say("page.week", append(parts, phrase.Number("Day", day))...)
}
