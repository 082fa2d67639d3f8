package desk

import (
	"archive/zip"
	"bytes"
	"io"
	"path"
	"regexp"
	"slices"
	"strings"
	"testing"

	"homebuild/internal/week"
)

// address is where the pages of the desk stand.
const address = "https://quarry.example/"

// onDay takes the desk's files up again on another day.
func onDay(t testing.TB, d *Desk, today string) {
	t.Helper()
	files := Files{}
	for name, f := range d.files {
		files[name] = string(f.Data)
	}
	ask[Opened](t, d, "open", Open{Files: files, Today: today, Words: "en"})
}

// sendHome sends a week in all languages of its families and lays down what it changes.
func sendHome(t testing.TB, d *Desk, date string) Sending {
	t.Helper()
	sent := ask[Sending](t, d, "send", SendWish{Date: date, Tags: []string{"en", "es"}})
	ask[None](t, d, "put", Put{Changes: sent.Changes})
	return sent
}

// states are how the Mondays from the first on stand.
func states(t testing.TB, d *Desk, mondays int) (out []State) {
	t.Helper()
	for _, w := range ask[Year](t, d, "year", None{}).Weeks[:mondays] {
		out = append(out, w.State)
	}
	return out
}

// A teacher sends a week, takes the next one off and sends the one after it: its link is
// of its own Monday, the week off has no page and no link to it, and what families had
// is as it was.
func TestAWeekOffThenSend(t *testing.T) {
	const off, after, later = "2026-09-21", "2026-09-28", "2026-10-05"
	d := newDesk(t, "en", "es")
	lay(t, d, ask[Act](t, d, "settings", Setting{"address", address}))
	onDay(t, d, first)
	sendHome(t, d, first)
	had := d.text(week.StoriesPath(first))

	lay(t, d, ask[Act](t, d, "calendar", CalendarWish{Date: off, Do: "off"}))
	year := ask[Year](t, d, "year", None{})
	if got := states(t, d, 4); !slices.Equal(got, []State{StateShown, StateOff, StateProposed, StateEmpty}) || year.Next != after {
		t.Fatalf("with a week off the year is %v, next %s", got, year.Next)
	}

	onDay(t, d, "2026-09-25") // the Friday before
	sent := sendHome(t, d, after)
	for _, home := range sent.Homes {
		if want := address + after + ".html"; home.Link != want || !strings.Contains(home.Message, want) || home.File == nil || len(home.Held) > 0 {
			t.Errorf("%s: link %s, message %q, file %v, held %v", home.Language.Tag, home.Link, home.Message, home.File != nil, home.Held)
		}
	}
	if len(sent.Waits) > 0 {
		t.Errorf("weeks wait: %+v", sent.Waits)
	}
	year = ask[Year](t, d, "year", None{})
	if got := states(t, d, 4); !slices.Equal(got, []State{StateShown, StateOff, StateShown, StateProposed}) || year.Newest != after || year.Next != later {
		t.Errorf("then the year is %v, newest %s, next %s", got, year.Newest, year.Next)
	}
	if now := d.text(week.StoriesPath(first)); had == "" || now != had {
		t.Errorf("the stories that families had are\n%s\nwere\n%s", now, had)
	}
	checkLinks(t, d, off, first, after)
}

// Nothing is sent for a week off, and a week that waited on it goes home after it.
func TestAWeekThatWaitedIsOff(t *testing.T) {
	const off, after = "2026-09-21", "2026-09-28"
	d := newDesk(t, "en", "es")
	lay(t, d, ask[Act](t, d, "calendar", CalendarWish{Date: off, Do: "take"}))
	title := ask[Week](t, d, "week", Monday{off}).Can
	lay(t, d, ask[Act](t, d, "calendar", CalendarWish{Date: off, Do: "move", To: after}))
	lay(t, d, ask[Act](t, d, "calendar", CalendarWish{Date: off, Do: "off"}))
	onDay(t, d, after)
	sendHome(t, d, after)
	if got := ask[Week](t, d, "week", Monday{after}).Can; got != title {
		t.Errorf("the week that moved is about %q, was about %q", got, title)
	}
	if got := states(t, d, 3); !slices.Equal(got, []State{StateShown, StateOff, StateShown}) {
		t.Errorf("the year is %v", got)
	}
	checkLinks(t, d, off, first, after)
}

// link is where a page leads, without the part of a page.
var link = regexp.MustCompile(`href="([^"#]+)`)

// checkLinks reads the zip of all pages: the weeks have theirs, a week off has none, and
// every link between pages leads to one.
func checkLinks(t *testing.T, d *Desk, off string, weeks ...string) {
	t.Helper()
	site := ask[File](t, d, "site", None{})
	files, err := zip.NewReader(bytes.NewReader(site.Bytes), int64(len(site.Bytes)))
	if err != nil {
		t.Fatal(err)
	}
	pages := map[string]string{}
	for _, f := range files.File {
		r, err := f.Open()
		if err != nil {
			t.Fatal(err)
		}
		text, err := io.ReadAll(r)
		if err != nil {
			t.Fatal(err)
		}
		pages[f.Name] = string(text)
		if strings.Contains(f.Name, off) || strings.Contains(string(text), off) {
			t.Errorf("%s is of the week off, or tells of it", f.Name)
		}
	}
	for _, date := range weeks {
		if _, ok := pages["public/"+date+".html"]; !ok {
			t.Errorf("the link of %s leads nowhere", date)
		}
	}
	followed := 0
	for name, text := range pages {
		if path.Ext(name) != ".html" {
			continue
		}
		for _, found := range link.FindAllStringSubmatch(text, -1) {
			to, absolute := strings.CutPrefix(found[1], address)
			if absolute {
				to = path.Join("public", to)
			} else {
				to = path.Join(path.Dir(name), to)
			}
			if followed++; pages[to] == "" {
				t.Errorf("%s leads to %s, and there is none", name, to)
			}
		}
	}
	if followed < 10*len(weeks) {
		t.Errorf("only %d links were followed", followed)
	}
}
