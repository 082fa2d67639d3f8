package desk

import (
	"encoding/json"
	"io/fs"
	"strings"
	"testing"

	example "homebuild/site"
)

// exampleFiles are those of the example school.
func exampleFiles(t testing.TB) Files {
	t.Helper()
	out := Files{}
	err := fs.WalkDir(example.Files, ".", func(path string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		data, err := fs.ReadFile(example.Files, path)
		out[path] = string(data)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// ask asks as the page does, and fails where there is something else than a value.
func ask[T any](t testing.TB, d *Desk, call string, args any) T {
	t.Helper()
	reply := send(t, d, call, args)
	if reply.Fault != "" || len(reply.Wrong) > 0 {
		t.Fatalf("%s %+v: %s %+v", call, args, reply.Fault, reply.Wrong)
	}
	var value T
	if err := json.Unmarshal(reply.Value, &value); err != nil {
		t.Fatal(err)
	}
	return value
}

type answered struct {
	ID    int
	Value json.RawMessage
	Wrong []Finding
	Fault string
}

func send(t testing.TB, d *Desk, call string, args any) (reply answered) {
	t.Helper()
	data, err := json.Marshal(Request{ID: 7, Call: call, Args: args})
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(d.Answer(data), &reply); err != nil {
		t.Fatal(err)
	}
	if reply.ID != 7 {
		t.Fatalf("%s was answered as request %d", call, reply.ID)
	}
	return reply
}

// lay lays the changes of an act down.
func lay(t testing.TB, d *Desk, a Act) Act {
	t.Helper()
	ask[None](t, d, "put", Put{Changes: a.Changes})
	return a
}

// newDesk is a desk with a first week, begun on a day.
func newDesk(t testing.TB, languages ...string) *Desk {
	t.Helper()
	d := New(nil)
	ask[Opened](t, d, "open", Open{Today: "2026-09-10", Words: "en"})
	lay(t, d, ask[Act](t, d, "begin", Begin{Name: "Quarry Hill School", Grade: 2, Languages: languages, Monday: "2026-09-14"}))
	return d
}

func TestFirstWeek(t *testing.T) {
	d := newDesk(t, "en", "es")
	year := ask[Year](t, d, "year", None{})
	if year.Weeks[0].Date != "2026-09-14" || year.Weeks[0].State != StateWaits || year.Weeks[1].State != StateProposed || len(year.Weeks) < ahead {
		t.Errorf("the line begins with %+v", year.Weeks[:3])
	}
	if year.Grade != 2 || len(year.NotYet) == 0 || len(year.Met) != 1 {
		t.Errorf("grade %d, met %d, not yet %d", year.Grade, len(year.Met), len(year.NotYet))
	}
	w := ask[Week](t, d, "week", Monday{"2026-09-14"})
	for _, l := range w.Lines {
		if l.Ink {
			t.Errorf("%s is in ink, and nobody chose it: %+v", l.Key, l)
		}
	}
	if len(w.Stories) != 5 || len(w.Findings) != 0 || w.Can == "" {
		t.Errorf("the sheet: %d stories, %+v", len(w.Stories), w.Findings)
	}
	for _, s := range w.Stories {
		if len(s.Text) < 2 || !strings.HasPrefix(s.Picture, "<svg") || s.Equation == "" || s.Ink {
			t.Errorf("story %d: %+v", s.Number, s)
		}
	}
}

func TestExample(t *testing.T) {
	d := New(nil)
	ask[Opened](t, d, "open", Open{Files: exampleFiles(t), Today: "2027-02-16", Words: "es"})
	year := ask[Year](t, d, "year", None{})
	if year.Newest != "2027-02-15" || year.Next == "" {
		t.Errorf("newest %s, next %s", year.Newest, year.Next)
	}
	for _, w := range year.Weeks {
		if w.State != StateShown && w.State != StateProposed && w.State != StateWaits {
			continue
		}
		sheet := ask[Week](t, d, "week", Monday{w.Date})
		if len(sheet.Stories) < 2 {
			t.Errorf("%s has %d stories", w.Date, len(sheet.Stories))
		}
	}
}
