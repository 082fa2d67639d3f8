package school

import (
	"bytes"
	"fmt"
	"testing"
	"testing/fstest"
	"time"

	"homebuild/internal/week"
)

// yearOfKept is a school of some weeks whose stories are kept.
func yearOfKept(t *testing.T, weeks int) fstest.MapFS {
	t.Helper()
	files := folder(map[string]string{"site.toml": plainSite})
	day := time.Date(2026, 9, 14, 0, 0, 0, 0, time.UTC)
	for i := range weeks {
		date := day.AddDate(0, 0, 7*i).Format(time.DateOnly)
		target := []string{"add-within-20", "subtract-within-20", "compare-within-20"}[i%3]
		files[week.Path(date)] = &fstest.MapFile{Data: []byte(fmt.Sprintf("target = %q\n", target))}
	}
	made, problems := Open("", files).Assemble(nil)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	for _, f := range made.Keep() {
		files[f.Path] = &fstest.MapFile{Data: must(f.Render())}
	}
	return files
}

// One week of a year is shared: it alone is worked out, and every byte is that of
// the whole year's.
func TestWeekIsWorkedOutAlone(t *testing.T) {
	const weeks, date = 12, "2026-10-19"
	kept := yearOfKept(t, weeks)
	chosen := folder(map[string]string{})
	for name, file := range kept {
		if name != week.StoriesPath(date) {
			chosen[name] = file
		}
	}
	for _, test := range []struct {
		name   string
		files  fstest.MapFS
		worked int // weeks
	}{
		{"its stories are kept", kept, 1},
		{"they are chosen: they depend on the weeks before", chosen, 6},
	} {
		school := Open("", test.files)
		alone, problems := school.Week(date, nil)
		if len(problems) > 0 {
			t.Fatalf("%s: %v", test.name, problems)
		}
		if got := len(alone.Site.Weeks); got != test.worked {
			t.Errorf("%s: %d weeks were worked out, want %d", test.name, got, test.worked)
		}
		whole, _ := school.Assemble(nil)
		want := map[string][]byte{}
		for _, f := range whole.Desk(date) {
			if InWeekFolder(f.Path, date) {
				want[f.Path] = must(f.Render())
			}
		}
		_, messages, files := alone.Send()
		if len(files) != len(want) || len(messages) != 1 {
			t.Errorf("%s: %d files and %d messages, want %d and 1", test.name, len(files), len(messages), len(want))
		}
		for _, f := range files {
			if !bytes.Equal(must(f.Render()), want[f.Path]) {
				t.Errorf("%s: %s is not that of the whole year", test.name, f.Path)
			}
		}
	}
}

// What sharing asks of the machine does not grow with the year.
func TestSharingDoesNotGrowWithTheYear(t *testing.T) {
	allocations := func(weeks int) float64 {
		school := Open("", yearOfKept(t, weeks))
		load := testing.AllocsPerRun(2, func() { school.Load() })
		return testing.AllocsPerRun(2, func() { school.Week("2026-09-21", nil) }) - load
	}
	few, many := allocations(3), allocations(36)
	if many > 1.2*few {
		t.Errorf("%.0f allocations in a year of 36 weeks, %.0f in one of 3", many, few)
	}
}
