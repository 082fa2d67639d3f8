package desk

import (
	"strings"
	"testing"

	"homebuild/internal/week"
)

// lastYears is a copy of a desk of two weeks a year before, with a letter in each
// language.
func lastYears(t *testing.T) Files {
	t.Helper()
	d := New(nil)
	ask[Opened](t, d, "open", Open{Today: "2025-09-10", Words: "en"})
	lay(t, d, ask[Act](t, d, "begin", Begin{Name: "Last Year", Grade: 2, Languages: []string{"en", "es"}, Monday: "2025-09-15"}))
	lay(t, d, ask[Act](t, d, "calendar", CalendarWish{Date: "2025-09-22", Do: "take"}))
	for _, key := range []string{"note.en", "note.es"} {
		lay(t, d, ask[Act](t, d, "set", Set{"2025-09-15", key, "Hola, hello."}))
	}
	return d.all()
}

// TestLastYear brings last year's weeks to an empty desk: all of it, on this
// year's Mondays.
func TestLastYear(t *testing.T) {
	d := New(nil)
	ask[Opened](t, d, "open", Open{Today: "2026-08-30", Words: "en"})
	act := lay(t, d, ask[Act](t, d, "lastYear", LastYear{lastYears(t)}))
	if act.Monday != "2026-09-14" {
		t.Errorf("it begins on %s", act.Monday)
	}
	year := ask[Year](t, d, "year", None{})
	if year.Name != "Last Year" || len(year.Wrong) > 0 {
		t.Errorf("%s: %+v", year.Name, year.Wrong)
	}
	for _, date := range []string{"2026-09-14", "2026-09-21"} {
		if d.files[week.Path(date)] == nil {
			t.Errorf("no week of %s", date)
		}
		if w := ask[Week](t, d, "week", Monday{date}); len(w.Findings) > 0 || len(w.Stories) < 2 {
			t.Errorf("%s: %+v", date, w.Findings)
		}
	}
}

// TestLastYearAfterWeeks brings them to a desk that has a week, other languages and
// a day off: they follow, and what is there stays.
func TestLastYearAfterWeeks(t *testing.T) {
	d := newDesk(t, "en", "ar")
	lay(t, d, ask[Act](t, d, "calendar", CalendarWish{Date: "2026-09-28", Do: "off"}))
	before := d.all()
	act := lay(t, d, ask[Act](t, d, "lastYear", LastYear{lastYears(t)}))
	for path, text := range before {
		if d.text(path) != text {
			t.Errorf("%s changed", path)
		}
	}
	if act.Monday != "2026-09-21" || d.files[week.Path("2026-10-05")] == nil || len(act.Changes) != 2 {
		t.Errorf("it begins on %s: %v", act.Monday, d.paths())
	}
	if text := d.text(week.Path("2026-09-21")); strings.Contains(text, "\nes =") || !strings.Contains(text, "Hola, hello.") {
		t.Errorf("letters: %s", text)
	}
	if w := ask[Week](t, d, "week", Monday{"2026-09-21"}); len(w.Findings) > 0 || len(w.Stories) < 2 {
		t.Errorf("%+v", w.Findings)
	}
}

// TestLastYearOfNothing refuses files in which there is no week.
func TestLastYearOfNothing(t *testing.T) {
	reply := send(t, newDesk(t, "en"), "lastYear", LastYear{Files{"site.toml": "name = \"x\"\nlanguages = [\"en\"]\n"}})
	if len(reply.Wrong) == 0 || reply.Fault != "" {
		t.Errorf("%+v", reply)
	}
}
