package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// A reader gets the hard sample as a file, writes below a sentence, and what she wrote
// comes back with the line of its message. Her file is never written over.
func TestHardSampleAndRemarks(t *testing.T) {
	folder := schoolWith(t, "vi")
	file := filepath.Join(t.TempDir(), "vi.txt")
	hard := []string{"language", "sample", "vi", folder, "--hard", "--out", file}
	if got := said(t, exitFine, hard...); !strings.Contains(got, "part 1 of ") || !strings.Contains(got, "language remarks vi "+file) {
		t.Errorf("writing it: %s", got)
	}
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	_, sentence, _ := strings.Cut(string(data), "\n1  ")
	sentence, _, _ = strings.Cut(sentence, "\n")
	remarked := strings.Replace(string(data), sentence+"\n>", sentence+"\n> say it so", 1)
	if err := os.WriteFile(file, []byte(remarked), 0o644); err != nil {
		t.Fatal(err)
	}
	got := said(t, exitFine, "language", "remarks", "vi", file, folder)
	for _, want := range []string{filepath.Join(folder, "locales", "vi.toml") + ":", "event.", "1       " + sentence, "remark  say it so", "1 message with a remark"} {
		if !strings.Contains(got, want) {
			t.Errorf("want %q in\n%s", want, got)
		}
	}
	if got := said(t, exitProblems, hard...); !strings.Contains(got, "there is already a file") {
		t.Errorf("writing it again: %s", got)
	}
	if got := said(t, exitWrongUse, "language", "sample", "vi", folder, "--out", file); !strings.Contains(got, "go with --hard") {
		t.Errorf("without --hard: %s", got)
	}
}
