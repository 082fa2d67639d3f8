package main

import (
	"bufio"
	"bytes"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"

	"homebuild/internal/school"
)

// asked runs a command as on a terminal, with these answers.
func asked(t *testing.T, answers []string, args ...string) (code int, out, errs string) {
	t.Helper()
	var stdout, stderr bytes.Buffer
	s := testStreams(&stdout, &stderr)
	s.in = bufio.NewReader(strings.NewReader(strings.Join(answers, "\n") + "\n"))
	s.person = true
	s.now = func() time.Time { return time.Date(2026, 9, 9, 12, 0, 0, 0, time.UTC) }
	return s.run(args), stdout.String(), stderr.String()
}

// testStreams are those of nobody, on the day of the tests, with one name for the
// running program.
func testStreams(out, errs io.Writer) *streams {
	s := newStreams(strings.NewReader(""), out, errs)
	s.now = testDay
	s.program = theProgram
	return s
}

// testDay is when tests run: a day on which families see every week of the example
// school.
func testDay() time.Time { return time.Date(2027, 3, 1, 12, 0, 0, 0, time.UTC) }

// theProgram is asked for in every build, and does not change while tests run.
var theProgram = sync.OnceValue(programSum)

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

// numberOf is the number of a language among the ready ones, as a person types
// it.
func numberOf(t *testing.T, tag, without string) string {
	t.Helper()
	ready := slices.DeleteFunc(school.Ready(), func(l school.Language) bool { return l.Tag == without })
	i := slices.IndexFunc(ready, func(l school.Language) bool { return l.Tag == tag })
	if i < 0 {
		t.Fatalf("%q is not ready", tag)
	}
	return strconv.Itoa(i + 1)
}

func TestStartAsks(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "my-class")
	code, out, errs := asked(t, []string{
		"",                    // no name: asked again
		"Call 555 123 4567",   // a number of a person: asked again
		"Pebble Lane School",  // the name
		"99",                  // no such language: asked again
		numberOf(t, "en", ""), // the class's language
		"x",                   // no number: asked again
		numberOf(t, "ar", "en") + "," + numberOf(t, "es", "en") + " " + numberOf(t, "ar", "en"), // others, one twice
		"2026-09-15",                  // a Tuesday: asked again
		"",                            // the Monday that is proposed
		"1",                           // kindergarten
		"2",                           // its second target
		"https://",                    // no web address: asked again
		"https://pebblelane.example/", // the address
	}, "start", folder)
	if code != exitFine {
		t.Fatalf("exit code %d\n%s\n%s", code, out, errs)
	}
	for _, want := range []string{
		"the site has no name", "name holds a phone number", `"99" is not in the list`, `"x" is not in the list`, "hint: type a number from 1 to ",
		"2026-09-15 is a Tuesday", `"https://" is not where a site can live`, "First Monday, year-month-day [2026-09-14]: ", "1 to 4 [2]: ",
	} {
		if !strings.Contains(errs, want) {
			t.Errorf("want %q among the questions, got\n%s", want, errs)
		}
	}
	has(t, filepath.Join(folder, "site.toml"), `name = "Pebble Lane School"`, `languages = ["en", "ar", "es"]`, `address = "https://pebblelane.example/"`, "\ngrade = 0\n")
	has(t, filepath.Join(folder, "weeks", "2026-09-14.toml"), `target = "subtract-within-5"`, "other language of the site, each with its three quotes: ar, es")
}

// A year begins with the weeks of another: the first Monday and the days off are asked.
func TestStartFromAsks(t *testing.T) {
	year := t.TempDir()
	before, after := filepath.Join(year, "before"), filepath.Join(year, "after")
	if code, _, errs := asked(t, nil, "start", before, "--yes", "--monday", "2025-09-15"); code != exitFine {
		t.Fatal(errs)
	}
	code, out, errs := asked(t, []string{
		"2026-09-15",       // a Tuesday: asked again
		"",                 // the Monday that is proposed
		"2026-09-14 to me", // no days: asked again
		"2026-09-14 to 2026-09-18, 2026-11-26",
	}, "start", after, "--from", before)
	if code != exitFine || !strings.Contains(out, "2026-09-21  was 2025-09-15") {
		t.Fatalf("exit code %d\n%s\n%s", code, out, errs)
	}
	for _, want := range []string{"First Monday, year-month-day [2026-09-14]: ", "2026-09-15 is a Tuesday", "is not a day of the calendar"} {
		if !strings.Contains(errs, want) {
			t.Errorf("want %q among the questions, got\n%s", want, errs)
		}
	}
	has(t, filepath.Join(after, "site.toml"), `days-off = ["2026-09-14 to 2026-09-18", "2026-11-26"]`)
}

// What a flag has answered is not asked.
func TestStartAsksTheRestOnly(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "my-class")
	code, out, errs := asked(t, []string{"Pebble Lane School"},
		"start", folder, "--languages", "en", "--monday", "2026-10-05", "--target", "add-within-10", "--address", "https://pebblelane.example")
	if code != exitFine || strings.Contains(errs, "Monday") || strings.Contains(errs, "Grade") {
		t.Errorf("exit code %d, want the name asked and nothing else\n%s\n%s", code, out, errs)
	}
	has(t, filepath.Join(folder, "weeks", "2026-10-05.toml"), `target = "add-within-10"`)
	_, _, errs = asked(t, nil, "start", folder+"2", "--yes")
	if errs != "" {
		t.Errorf("--yes: want nothing asked, got\n%s", errs)
	}
}

func TestWeekAsks(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "my-class")
	if code, _, errs := asked(t, nil, "start", folder, "--yes", "--monday", "2026-09-14"); code != exitFine {
		t.Fatal(errs)
	}
	code, out, errs := asked(t, []string{"", "", "", ""}, "week", folder) // all as proposed
	if code != exitFine || !strings.Contains(out, "subtract-within-20") || !strings.Contains(out, "no week was about") {
		t.Errorf("exit code %d, want the proposal taken, with its reason\n%s\n%s", code, out, errs)
	}
	has(t, filepath.Join(folder, "weeks", "2026-09-21.toml"), `target = "subtract-within-20"`, `focus = "bridge-back"`)

	code, out, errs = asked(t, []string{"2026-10-05", "2", "4", "6"}, "week", folder) // all otherwise
	if code != exitFine || strings.Contains(out, "no week was about") || !strings.Contains(out, "focus    none\n  picture  none\n") {
		t.Errorf("exit code %d, want one's own choices, and no reason made up\n%s\n%s", code, out, errs)
	}
	has(t, filepath.Join(folder, "weeks", "2026-10-05.toml"), `target = "partners-of-ten"`, `# focus = "..."`, `# picture = "..."`)
}

// A terminal that hangs up leaves nothing half done.
func TestNoAnswer(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "my-class")
	var stderr bytes.Buffer
	s := testStreams(io.Discard, &stderr)
	s.person = true
	if code := s.run([]string{"start", folder}); code != exitWrongUse || !strings.Contains(stderr.String(), "nobody answers; nothing was written") {
		t.Errorf("exit code: want %d, got %d\n%s", exitWrongUse, code, stderr.String())
	}
	if _, err := os.Stat(folder); err == nil {
		t.Error("want nothing written")
	}
}
