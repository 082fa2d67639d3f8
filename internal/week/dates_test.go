package week

import (
	"slices"
	"strings"
	"testing"
)

// Days of the week are those of the printed calendars of 2026 and 2027.
func TestFridayBefore(t *testing.T) {
	for day, want := range map[string]string{
		"2026-09-14": "2026-09-11", // a Monday
		"2026-09-13": "2026-09-11", // a Sunday
		"2026-09-11": "2026-09-04", // a Friday
		"2027-01-04": "2027-01-01",
		"2024-03-04": "2024-03-01", // in a leap year
	} {
		if got := FridayBefore(day); got != want {
			t.Errorf("FridayBefore(%s): want %s, got %s", day, want, got)
		}
	}
}

// weeksOf are weeks of some dates.
func weeksOf(dates ...string) Site {
	var s Site
	for _, date := range dates {
		s.Weeks = append(s.Weeks, Week{Date: date, ShowFrom: FridayBefore(date), file: Path(date)})
	}
	return s
}

func TestShowing(t *testing.T) {
	site := weeksOf("2026-09-14", "2026-09-21", "2026-09-28")
	site.Weeks[2].ShowFrom = "2026-09-16"
	dates := func(weeks []Week) string {
		var out []string
		for _, w := range weeks {
			out = append(out, w.Date[5:])
		}
		return strings.Join(out, " ")
	}
	for _, test := range []struct{ today, showing, waiting string }{
		{"2026-09-10", "", "09-14 09-28 09-21"},
		{"2026-09-11", "09-14", "09-28 09-21"},
		{"2026-09-17", "09-14 09-28", "09-21"},
		{"2027-05-01", "09-14 09-21 09-28", ""},
		{"", "09-14 09-21 09-28", ""},
	} {
		if got := dates(site.Showing(test.today)); got != test.showing {
			t.Errorf("on %q: want showing %s, got %s", test.today, test.showing, got)
		}
		if got := dates(site.Waiting(test.today)); got != test.waiting {
			t.Errorf("on %q: want waiting %s, got %s", test.today, test.waiting, got)
		}
	}
}

func TestOff(t *testing.T) {
	site := Site{DaysOff: []Days{{"2026-11-26", "2026-11-27"}, {"2026-12-23", "2027-01-05"}}}
	for monday, want := range map[string]bool{
		"2026-11-23": false, // Thursday and Friday are off
		"2026-12-21": false, // Monday and Tuesday are school
		"2026-12-28": true,
		"2027-01-04": false, // school from Wednesday
	} {
		if got := site.Off(monday); got != want {
			t.Errorf("Off(%s): want %t, got %t", monday, want, got)
		}
	}
	for range 5 {
		site.DaysOff = append(site.DaysOff, Days{"2026-10-12", "2026-10-16"})
	}
	if !site.Off("2026-10-11") {
		t.Error("a week that begins on a Sunday: want it off where Monday to Friday are")
	}
}

// A date that can hardly be meant is asked about; the weeks beside it are not.
func TestOddDates(t *testing.T) {
	autumn := []string{"2026-09-14", "2026-09-21", "2026-12-14"}
	tests := []struct {
		name  string
		dates []string
		today string
		odd   string // the date that is asked about; empty for none
		says  string
	}{
		{"a year of school", append(autumn, "2027-01-11"), "2026-09-14", "", ""},
		{"written ahead in summer", append(autumn, "2027-06-14"), "2026-07-01", "", ""},
		{"the last year and this one", append(autumn, "2027-09-13"), "2027-09-10", "", ""},
		{"a Thursday among Mondays", append(autumn, "2026-09-24"), "2026-09-14", "2026-09-24", "2026-09-24 is a Thursday\n  hint: a week is named by its Monday: name it 2026-09-21.toml"},
		{"a Tuesday alone", []string{"2026-09-15"}, "2026-09-14", "2026-09-15", "is a Tuesday"},
		{"Sundays", []string{"2026-09-13", "2026-09-20"}, "2026-09-14", "", ""},
		{"a Monday among Sundays", []string{"2026-09-13", "2026-09-20", "2026-09-28"}, "2026-09-14", "2026-09-13", ""},
		{"the year of last Christmas", append([]string{"2026-01-12"}, autumn...), "2027-01-08", "2026-01-12", "name the file 2027-01-11.toml"},
		{"the first week of the next year", append([]string{"2025-01-06"}, autumn...), "2026-12-28", "2025-01-06", "name the file 2027-01-04.toml"},
		{"a slip of two keys", append(autumn, "2062-09-18"), "2026-09-20", "2062-09-18", "name the file 2026-09-21.toml"},
		{"another century", append(autumn, "2126-09-16"), "2026-09-20", "2126-09-16", "name the file 2026-09-14.toml"},
		{"alone, long ago", []string{"2026-09-14"}, "2029-02-01", "", "what was right stays right"},
		{"alone, far ahead", []string{"2028-09-11"}, "2026-09-01", "2028-09-11", "105 weeks from today"},
		{"no day given", append(autumn, "2099-09-14"), "", "", ""},
	}
	for _, test := range tests {
		site := weeksOf(test.dates...)
		problems := site.OddDates(test.today)
		if test.odd == "" {
			if len(problems) > 0 {
				t.Errorf("%s: want nothing asked (%s), got\n%v", test.name, test.says, problems)
			}
			continue
		}
		if len(problems) == 0 || problems[0].File != Path(test.odd) || !strings.Contains(problems[0].String(), test.says) || !strings.Contains(problems[0].Hint, "odd-date = true") {
			t.Errorf("%s: want %s asked about with %q, got\n%v", test.name, test.odd, test.says, problems)
		}
		for i := range site.Weeks {
			site.Weeks[i].OddDate = slices.Contains([]string{test.odd}, site.Weeks[i].Date)
		}
		if left := site.OddDates(test.today); len(left) >= len(problems) {
			t.Errorf("%s: want it believed with odd-date, got\n%v", test.name, left)
		}
	}
}

// The first week of a school is of a Monday, as no week says otherwise.
func TestOddFirstWeek(t *testing.T) {
	if wrong := (Site{}).OddDate("2026-09-14", "2026-09-10"); wrong != nil {
		t.Errorf("a Monday: want nothing asked, got %v", wrong)
	}
}

func TestSlipsOfDays(t *testing.T) {
	const site = "name = \"Pebble\"\nlanguages = [\"en\"]\n"
	tests := []struct{ site, week, want string }{
		{site + "days-off = [\"2026-11-26\", 2026-12-21, \"2026-12-22 to 2027-01-01\"]", "show-from = 2026-09-10", ""},
		{site, "show-from = \"2026-09-10\"", ""},
		{site, "show-from = 2026-02-30", `weeks/2026-09-14.toml:3: show-from: "2026-02-30" is not a day of the calendar
  hint: write show-from = 2026-09-14, year-month-day`},
		{site, "show-from = 14.9.2026", `weeks/2026-09-14.toml:3: show-from cannot be 14.9.2026
  hint: write a day, year-month-day: show-from = 2026-09-14`},
		{site, "show-from = true", `weeks/2026-09-14.toml:3: show-from cannot be true
  hint: write a day, year-month-day: show-from = 2026-09-14`},
		{site + "days-off = [\"2026-12-32\"]", "", `site.toml:3: days-off: "2026-12-32" is not a day of the calendar
  hint: write days-off = ["2026-11-26", "2026-12-21 to 2027-01-01"]`},
		{site + "days-off = [\"2027-01-01 to 2026-12-21\"]", "", `site.toml:3: days-off: 2026-12-21 is before 2027-01-01
  hint: write the first day first`},
		{site + "days-off = \"2026-12-21\"", "", `site.toml:3: days-off cannot be "2026-12-21"
  hint: write a list: days-off = ["2026-12-21"]`},
	}
	for _, test := range tests {
		checkProblems(t, folder(SiteFile, test.site, "weeks/2026-09-14.toml", weekWith(test.week)), test.want)
	}
	for _, year := range []string{"0000-01-03", "9999-01-04", "1999-01-04"} {
		_, problems := Read(folder(SiteFile, site, Path(year), goodWeek), someAllowed())
		if len(problems) != 1 || !strings.Contains(problems[0].Text, "cannot be meant") {
			t.Errorf("a week of %s: want it told, once, got\n%v", year, problems)
		}
	}
}
