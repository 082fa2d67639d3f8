package main

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/iotest"
	"time"

	"github.com/charmbracelet/huh"
)

// asked runs a command as on a terminal that is read line by line, with these
// answers.
func asked(t *testing.T, answers []string, args ...string) (code int, out, errs string) {
	t.Helper()
	var stdout, stderr bytes.Buffer
	// A terminal gives a line at a time, and no more.
	in := iotest.OneByteReader(strings.NewReader(strings.Join(answers, "\n") + "\n"))
	s := &streams{in: in, out: &stdout, err: &stderr, watched: true, person: true, simple: true,
		today: func() time.Time { return time.Date(2026, 9, 9, 12, 0, 0, 0, time.UTC) }}
	root := newRootCmd(s)
	root.SetArgs(args)
	code = s.report(root.Execute())
	return code, stdout.String(), stderr.String()
}

// has wants every text in the file.
func has(t *testing.T, file string, texts ...string) {
	t.Helper()
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	for _, text := range texts {
		if !strings.Contains(string(data), text) {
			t.Errorf("%s: want %q in it, got\n%s", filepath.Base(file), text, data)
		}
	}
}

// place is where a word stands among the ready languages, as a person types it.
func place(t *testing.T, tag, without string) string {
	t.Helper()
	ready, _, err := readyLanguages()
	if err != nil {
		t.Fatal(err)
	}
	ready = slices.DeleteFunc(ready, func(r string) bool { return r == without })
	for i, r := range ready {
		if r == tag {
			return string(rune('1' + i))
		}
	}
	t.Fatalf("%q is not ready", tag)
	return ""
}

func TestStartAsks(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "my-class")
	english, arabic := place(t, "en", ""), place(t, "ar", "en")
	code, out, errs := asked(t, []string{
		"",                   // no name: asked again
		"Pebble Lane School", // the name
		english,              // the class's language
		arabic, "0",          // another language, and no more
		"2026-09-15",                  // a Tuesday: asked again
		"",                            // the Monday that is proposed
		"1",                           // kindergarten
		"2",                           // its second target
		"pebblelane.example",          // no web address: asked again
		"https://pebblelane.example/", // the address
	}, "start", folder)
	if code != exitFine {
		t.Fatalf("exit code %d\n%s\n%s", code, out, errs)
	}
	for _, want := range []string{"the name is empty", "2026-09-15 is a Tuesday", "is not a web address", "First Monday (year-month-day) [2026-09-14]:"} {
		if !strings.Contains(errs, want) {
			t.Errorf("want %q among the questions, got\n%s", want, errs)
		}
	}
	has(t, filepath.Join(folder, "site.toml"), `name = "Pebble Lane School"`, `languages = ["en", "ar"]`, `address = "https://pebblelane.example/"`)
	has(t, filepath.Join(folder, "weeks", "2026-09-14.md"), `target = "subtract-within-5"`, "weeks/2026-09-14.ar.md")
}

// What a flag has answered is not asked.
func TestStartAsksTheRestOnly(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "my-class")
	code, out, errs := asked(t, []string{"Pebble Lane School"},
		"start", folder, "--languages", "en", "--monday", "2026-10-05", "--target", "add-within-10", "--address", "https://pebblelane.example")
	if code != exitFine || strings.Contains(errs, "Monday") || strings.Contains(errs, "Grade") {
		t.Errorf("exit code %d, want the name asked and nothing else\n%s\n%s", code, out, errs)
	}
	has(t, filepath.Join(folder, "weeks", "2026-10-05.md"), `target = "add-within-10"`)
	_, _, errs = asked(t, nil, "start", folder+"2", "--yes")
	if errs != "" {
		t.Errorf("--yes: want nothing asked, got\n%s", errs)
	}
}

// A form on a terminal shows every choice, whichever is proposed, and says on
// its one line what to write instead.
func TestFormShowsAll(t *testing.T) {
	s := &streams{}
	for _, proposed := range []int{0, 1, 2} { // 0 stands last, as "none" does
		value := proposed
		field := choose(s, "Which?", "", &value, []int{1, 2, 0}, func(n int) string { return []string{"none", "count-on", "doubles"}[n] })
		field.WithTheme(huh.ThemeBase()).WithWidth(60)
		seen := field.View()
		for _, word := range []string{"none", "count-on", "doubles"} {
			if !strings.Contains(seen, word) {
				t.Errorf("proposed %d: want %q to be seen, got\n%s", proposed, word, seen)
			}
		}
		if chosen := "> " + []string{"none", "count-on", "doubles"}[proposed]; !strings.Contains(seen, chosen) || value != proposed {
			t.Errorf("want %q proposed, got %d\n%s", chosen, value, seen)
		}
	}
	for typed, want := range map[string]string{
		"14.9.2026":  `"14.9.2026" is not a day of the calendar: write year-month-day, such as 2026-09-14`,
		"2026-09-15": "2026-09-15 is a Tuesday: a week is named by its Monday: 2026-09-14",
		"2026-09-14": "<nil>",
	} {
		if got := fmt.Sprint(onOneLine(checkMonday(typed))); got != want {
			t.Errorf("%s: want %q, got %q", typed, want, got)
		}
	}
}

func TestWeekAsks(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "my-class")
	if code, _, errs := asked(t, nil, "start", folder, "--yes", "--monday", "2026-09-14"); code != exitFine {
		t.Fatal(errs)
	}
	code, out, errs := asked(t, []string{"", "", "", ""}, "week", folder) // all as proposed
	if code != exitFine || !strings.Contains(out, "partners-of-ten") || !strings.Contains(out, "no week had yet") {
		t.Errorf("exit code %d, want the proposal taken, with its reason\n%s\n%s", code, out, errs)
	}
	has(t, filepath.Join(folder, "weeks", "2026-09-21.md"), `target = "partners-of-ten"`, `focus = "partners-of-ten"`)

	code, out, errs = asked(t, []string{"2026-10-05", "1", "4", "6"}, "week", folder) // all otherwise
	if code != exitFine || strings.Contains(out, "no week had yet") || !strings.Contains(out, "focus    none\n  picture  none\n") {
		t.Errorf("exit code %d, want one's own choices, and no reason made up\n%s\n%s", code, out, errs)
	}
	has(t, filepath.Join(folder, "weeks", "2026-10-05.md"), `target = "partners-of-ten"`, `# focus = "..."`, `# picture = "..."`)
}

// A terminal that hangs up leaves nothing half done.
func TestNoAnswer(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "my-class")
	var stderr bytes.Buffer
	s := &streams{in: strings.NewReader(""), out: io.Discard, err: &stderr, person: true, simple: true, today: time.Now}
	root := newRootCmd(s)
	root.SetArgs([]string{"start", folder})
	if code := s.report(root.Execute()); code != exitWrongUse {
		t.Errorf("exit code: want %d, got %d\n%s", exitWrongUse, code, stderr.String())
	}
	if _, err := os.Stat(folder); err == nil {
		t.Error("want nothing written")
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
		day, err := time.Parse(time.DateOnly, row.day)
		if err != nil {
			t.Fatal(err)
		}
		if from, after := mondayFrom(day), mondayAfter(row.day); from != row.from || after != row.after {
			t.Errorf("%s: want %s and %s, got %s and %s", row.day, row.from, row.after, from, after)
		}
	}
}

func TestQuoted(t *testing.T) {
	for _, row := range []struct{ text, want string }{
		{"Pebble Lane", `"Pebble Lane"`}, {"l'École", `"l'École"`}, {`The "Heron" class`, `'The "Heron" class'`}, {`a\b`, `'a\b'`},
	} {
		if got := quoted(row.text); got != row.want {
			t.Errorf("quoted(%s): want %s, got %s", row.text, row.want, got)
		}
	}
}
