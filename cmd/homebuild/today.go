package main

import (
	"fmt"
	"strconv"
	"time"

	"homebuild/internal/week"
)

// readToday is the day that a command works with: the one that was asked for, else
// that of SOURCE_DATE_EPOCH (seconds since 1970, in UTC: reproducible-builds.org,
// "SOURCE_DATE_EPOCH specification"), else that of the clock.
func readToday(on, epoch string, clock func() time.Time) (string, error) {
	switch {
	case on != "":
		if _, wrong := week.ParseDay(on); wrong != nil {
			return "", wrongUse("--on: "+wrong.Text, wrong.Hint)
		}
		return on, nil
	case epoch != "":
		seconds, err := strconv.ParseInt(epoch, 10, 64)
		if err != nil || seconds < 0 {
			return "", wrongUse(fmt.Sprintf("SOURCE_DATE_EPOCH cannot be %q", epoch), "give it seconds since 1970, or none; --on 2026-09-14 is easier")
		}
		return time.Unix(seconds, 0).UTC().Format(time.DateOnly), nil
	}
	return clock().Format(time.DateOnly), nil
}

// waitingTold is how many of the weeks to come are told one by one.
const waitingTold = 3

// waiting tells of weeks that families do not see yet.
func waiting(weeks []week.Week) []string {
	var out []string
	for i, w := range weeks {
		if i == waitingTold {
			out = append(out, fmt.Sprintf("waiting      %d more, up to %s", len(weeks)-i, weeks[len(weeks)-1].Date))
			break
		}
		out = append(out, fmt.Sprintf("waiting      %s, shows from %s", w.Date, week.DayName(w.ShowFrom)))
	}
	if len(weeks) > 0 {
		out = append(out, fmt.Sprintf("build again  on %s, or later", week.DayName(weeks[0].ShowFrom)))
	}
	return out
}

// nothingShows says that families see no week yet, and what to do.
func (s *streams) nothingShows(weeks []week.Week) {
	first := weeks[0]
	s.tell(fmt.Sprintf("no week shows yet: the first, %s, shows from %s", first.Date, week.DayName(first.ShowFrom)),
		fmt.Sprintf("build again then; or write show-from = %s into %s, and families see it today", s.today, week.Path(first.Date)))
}
