package school

import (
	"encoding/json"
	"strings"
	"testing"

	"homebuild/internal/week"
)

// school is one in memory with these weeks' targets, from 2026-09-14 on.
func yearOf(t *testing.T, targets ...string) *Year {
	t.Helper()
	files := map[string]string{"site.toml": plainSite}
	date := "2026-09-14"
	for _, target := range targets {
		files["weeks/"+date+".toml"] = "target = \"" + target + "\"\n"
		date = mondayAfter(date)
	}
	s := Open("my-class", folder(files))
	s.Today = "2026-09-09" // a Wednesday, by the calendar of 2026
	year, problems := s.Year()
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return year
}

func TestPropose(t *testing.T) {
	tests := []struct {
		name    string
		earlier []string
		wishes  Wishes
		want    Proposal
	}{
		{"the first week", nil, Wishes{},
			Proposal{Date: "2026-09-14", Focus: "make-ten", Picture: "bar-model"}},
		{"the next week", []string{"add-within-20"}, Wishes{},
			Proposal{Date: "2026-09-21", ByRule: true, Focus: "bridge-back", Picture: "bar-model"}},
		{"what was wished stands", []string{"add-within-20"}, Wishes{Date: "2026-10-12", Target: "compare-within-20", Focus: None, Picture: "number-line"},
			Proposal{Date: "2026-10-12", FocusAsked: true, Picture: "number-line", PictureAsked: true}},
		{"the rule's own target is by rule, asked or not", []string{"add-within-20"}, Wishes{Target: "subtract-within-20", Focus: "bridge-back"},
			Proposal{Date: "2026-09-21", ByRule: true, Focus: "bridge-back", Picture: "bar-model"}},
		{"a published code that one target has", nil, Wishes{Target: "K.OA.A.4"},
			Proposal{Date: "2026-09-14", Focus: "partners-of-ten", Picture: "ten-frame"}},
	}
	targets := []string{"add-within-20", "subtract-within-20", "compare-within-20", "subtract-within-20", "what-makes-ten"}
	for i, test := range tests {
		year := yearOf(t, test.earlier...)
		got, wrong := year.Propose(test.wishes)
		if wrong != nil {
			t.Errorf("%s: %v", test.name, wrong)
			continue
		}
		if got.Date != test.want.Date || got.Target.ID != targets[i] || got.ByRule != test.want.ByRule || got.Focus != test.want.Focus || got.Picture != test.want.Picture ||
			got.FocusAsked != test.want.FocusAsked || got.PictureAsked != test.want.PictureAsked || got.Stories != 5 {
			t.Errorf("%s: want %+v of %s, got %+v", test.name, test.want, targets[i], got)
		}
	}
}

func TestProposeRefuses(t *testing.T) {
	year := yearOf(t, "add-within-20")
	tests := []struct {
		wishes Wishes
		text   string
	}{
		{Wishes{Date: "2026-09-14"}, "the week of 2026-09-14 is there already"},
		{Wishes{Date: "2026-11-04"}, "2026-11-04 is a Wednesday"},
		{Wishes{Target: "compare-within-2"}, `"compare-within-2" is not a target`},
		{Wishes{Focus: "make-tne"}, `"make-tne" is not a strategy`},
		{Wishes{Picture: "bar"}, `"bar" is not a picture`},
	}
	for _, test := range tests {
		if _, wrong := year.Propose(test.wishes); wrong == nil || wrong.Text != test.text || wrong.Hint == "" {
			t.Errorf("%+v: want %q with a hint, got %v", test.wishes, test.text, wrong)
		}
	}
}

func TestMondays(t *testing.T) {
	// The calendar of 2026, as printed: 14 September is a Monday.
	for _, row := range []struct{ day, from, after string }{
		{"2026-09-13", "2026-09-14", "2026-09-14"},
		{"2026-09-14", "2026-09-14", "2026-09-21"},
		{"2026-09-15", "2026-09-21", "2026-09-21"},
		{"2026-12-29", "2027-01-04", "2027-01-04"},
		{"2028-02-28", "2028-02-28", "2028-03-06"},
	} {
		if from, after := MondayFrom(row.day), mondayAfter(row.day); from != row.from || after != row.after {
			t.Errorf("%s: want %s and %s, got %s and %s", row.day, row.from, row.after, from, after)
		}
	}
}

// The year counts what the weeks hold, and names what is missing in any case.
func TestOverview(t *testing.T) {
	o := yearOf(t, "add-within-20", "find-the-part-within-20").Overview()
	if len(o.Weeks) != 2 || o.Weeks[1].Target != "find-the-part-within-20" || o.Weeks[1].Can != "I can find the missing part." || o.Grade != 1 {
		t.Errorf("weeks: %+v", o.Weeks)
	}
	stories := 0
	for _, k := range o.Kinds {
		sum := 0
		for _, n := range k.ByWeek {
			sum += n
		}
		if sum != k.Total {
			t.Errorf("%s: %v is not %d", k.ID, k.ByWeek, k.Total)
		}
		stories += sum
	}
	if stories != 10 { // one worked and four to try, twice
		t.Errorf("want 10 stories counted, got %d", stories)
	}
	missed := o.Missed()
	if last := missed[len(missed)-1]; last.ID != "" || !strings.Contains(last.Words, "addition facts") || missed[0].ID != "add-to-change" {
		t.Errorf("missed: %+v", missed)
	}
	if got := (Overview{}).Missed(); len(got) != 1 || got[0].Words == "" {
		t.Errorf("nothing missing: want that said, got %+v", got)
	}
	html, err := o.Sheet()
	if err != nil || !strings.Contains(string(html), "Add to, start unknown") || strings.Contains(string(html), "<script") {
		t.Errorf("sheet: %v\n%.300s", err, html)
	}
	data, err := json.Marshal(o)
	if err != nil || !strings.Contains(string(data), `"facts-not-met":[[1,1],`) {
		t.Errorf("JSON: %v\n%.300s", err, data)
	}
}

// Every target can be written into a week file and says what a child can do.
func TestTargets(t *testing.T) {
	seen := map[string]bool{}
	for _, e := range Targets() {
		if seen[e.ID] || !strings.HasPrefix(e.Can, "I can ") || len(e.Standards) == 0 || len(e.Kinds) == 0 || e.Within < 5 {
			t.Errorf("target %+v: want a new id, \"I can\", standards, kinds and a range", e)
		}
		seen[e.ID] = true
	}
	if !seen[FirstTarget] {
		t.Errorf("want %s, which is proposed first", FirstTarget)
	}
}

// Weeks without a day of school are passed over; a date that looks like a slip has
// to be meant.
func TestProposeDates(t *testing.T) {
	year := yearOf(t, "add-within-20")
	year.Site.DaysOff = []week.Days{{First: "2026-09-21", Last: "2026-10-02"}}
	if got, wrong := year.Propose(Wishes{}); wrong != nil || got.Date != "2026-10-05" {
		t.Errorf("want the Monday after the days off, 2026-10-05, got %q, %v", got.Date, wrong)
	}
	if got, wrong := year.Propose(Wishes{Date: "2026-09-28"}); wrong != nil || got.Date != "2026-09-28" {
		t.Errorf("want a week off taken where it is asked for, got %q, %v", got.Date, wrong)
	}
	for _, date := range []string{"2062-09-18", "2028-09-18", "0000-01-01", "9999-01-04"} {
		if _, wrong := year.Propose(Wishes{Date: date}); wrong == nil {
			t.Errorf("%s: want it asked about", date)
		}
	}
	got, wrong := year.Propose(Wishes{Date: "2028-09-18", OddDate: true})
	if wrong != nil {
		t.Fatal(wrong)
	}
	if text := string(must(year.WeekFile(got).Render())); !strings.Contains(text, "\nodd-date = true\n") {
		t.Errorf("want the file to say that the date is meant, got\n%s", text)
	}
	for today, want := range map[string]string{"2026-09-09": "\nshow-from = 2026-09-09\n", "2026-09-12": "\n# show-from = 2026-09-11\n"} {
		got, _ := year.Propose(Wishes{Date: "2026-09-21"})
		got.Date = "2026-09-14"
		if text := string(must(year.WeekFile(got.shownFrom(today)).Render())); !strings.Contains(text, want) {
			t.Errorf("begun on %s: want %q, got\n%s", today, want, text)
		}
	}
}
