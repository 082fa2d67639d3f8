package main

import (
	"os"
	"path/filepath"
	"testing"
	"time"
)

// The desk of a double click, from folders as teachers have them.
func TestDeskBeside(t *testing.T) {
	year := time.Date(2026, 9, 1, 12, 0, 0, 0, time.UTC)
	for _, c := range []struct {
		name    string
		schools map[string]int // each with the day on which its weeks were changed last
		lies    string         // where the program lies
		want    string
	}{
		{"downloads", nil, ".", "my-class"},
		{"the school's own folder", map[string]int{".": 1}, ".", "."},
		{"the school's own folder, with another school in it", map[string]int{".": 1, "old": 9}, ".", "."},
		{"beside the school's folder", map[string]int{"room-12": 1}, ".", "room-12"},
		{"beside two", map[string]int{"room-12": 1, "room-14": 2, "a": 1}, ".", "room-14"},
		{"in a folder of the school's", map[string]int{".": 1}, "tools", "."},
	} {
		t.Run(c.name, func(t *testing.T) {
			dir := t.TempDir()
			must := func(err error) {
				if err != nil {
					t.Fatal(err)
				}
			}
			must(os.MkdirAll(filepath.Join(dir, c.lies), 0o755))
			for school, day := range c.schools {
				weeks := filepath.Join(dir, school, "weeks")
				must(os.MkdirAll(weeks, 0o755))
				must(os.WriteFile(filepath.Join(dir, school, "site.toml"), []byte("name = \"Pebble\"\n"), 0o644))
				must(os.Chtimes(weeks, year, year.AddDate(0, 0, day)))
			}
			got := deskBeside(filepath.Join(dir, c.lies))
			if want := filepath.Join(dir, c.want); got != want {
				t.Errorf("want %s, got %s", want, got)
			}
		})
	}
}
