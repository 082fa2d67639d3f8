package page

import (
	"fmt"

	"homebuild/internal/phrase"
)

// WeekOf is the line above a page of a week, "Week of September 14, 2026" for 2026-09-14; each language orders
// the parts, and says the first of a month as it likes.
func WeekOf(date string) phrase.Line {
	var year, month, day int
	if _, err := fmt.Sscanf(date, "%d-%d-%d", &year, &month, &day); err != nil {
		panic("page: " + date + " is not a date") // week files are checked on reading
	}
	parts := []phrase.Value{phrase.Message("Month", id("month.", month)), phrase.Number("Year", year)}
	if day == 1 {
		return phrase.Say("page.week-first", parts...)
	}
	return phrase.Say("page.week", append(parts, phrase.Number("Day", day))...)
}
