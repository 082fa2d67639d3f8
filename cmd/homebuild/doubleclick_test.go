package main

import (
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"time"
)

// A double click where there is a screen and no terminal: the browser is opened at a
// desk of a new folder beside the program, and nothing is left of it when nothing was
// done there.
func TestDoubleClick(t *testing.T) {
	if runtime.GOOS != "linux" {
		t.Skip("the signs of a double click are others here")
	}
	dir, bin := t.TempDir(), t.TempDir()
	here, err := os.Executable() // TestMain makes it the program, under its name
	if err != nil {
		t.Fatal(err)
	}
	data, err := os.ReadFile(here)
	if err != nil {
		t.Fatal(err)
	}
	program, asked := filepath.Join(dir, "homebuild"), filepath.Join(bin, "asked")
	for name, text := range map[string]string{program: string(data), filepath.Join(bin, "xdg-open"): "#!/bin/sh\nprintf '%s\\n' \"$1\" > " + asked + "\n"} {
		if err := os.WriteFile(name, []byte(text), 0o755); err != nil {
			t.Fatal(err)
		}
	}
	run := exec.Command(program)
	run.Env = []string{"DISPLAY=:0", "PATH=" + bin + ":/usr/bin:/bin", "HOME=" + t.TempDir(), "TMPDIR=" + t.TempDir()}
	if err := run.Start(); err != nil {
		t.Fatal(err)
	}
	url := wait(t, func() string {
		text, _ := os.ReadFile(asked)
		line, _, _ := strings.Cut(string(text), "\n")
		return line
	})
	if page, err := http.Get(url); err != nil || page.StatusCode != http.StatusOK {
		t.Errorf("the desk at %s: %v", url, err)
	}
	if !isFolder(filepath.Join(dir, "my-class")) {
		t.Error("there is no folder for the desk")
	}
	again := exec.Command(program)
	again.Env = run.Env
	if err := os.Remove(asked); err != nil {
		t.Fatal(err)
	}
	if err := again.Run(); err != nil {
		t.Errorf("a second double click: %v", err)
	}
	if second, _ := os.ReadFile(asked); strings.TrimSpace(string(second)) != url {
		t.Errorf("a second double click opened %q, want the first desk, %q", second, url)
	}
	if err := run.Process.Signal(os.Interrupt); err != nil {
		t.Fatal(err)
	}
	if err := run.Wait(); err != nil {
		t.Errorf("want a clean end, got %v", err)
	}
	if left, err := os.ReadDir(dir); err != nil || len(left) != 1 {
		t.Errorf("left are %v, %v", left, err)
	}
}

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
