package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// Where the tests fail by themselves each change would be noticed.
func TestProve(t *testing.T) {
	for _, row := range []struct{ tests, want string }{ // programs that do as they do
		{"exit 0", ""},
		{"exit 1", "the quick tests of testdata/tiny fail with nothing changed; mend them first (go test -short ./testdata/tiny)\n"},
		{"while :; do :; done", "the quick tests of testdata/tiny need more than 1 seconds of the processor with nothing changed; allow more (-cpu 5)"},
	} {
		p := program{filepath.Join(t.TempDir(), "tests"), "testdata/tiny", 1}
		if err := os.WriteFile(p.file, []byte("#!/bin/sh\n"+row.tests+"\n"), 0o755); err != nil {
			t.Fatal(err)
		}
		if got := text(p.prove(t.Context())); got != row.want {
			t.Errorf("%s: want the error %q, got %q", row.tests, row.want, got)
		}
		if p.seconds != 1 {
			t.Errorf("%s: a change may use %d seconds, want 1", row.tests, p.seconds)
		}
	}
}

func text(err error) string {
	if err == nil {
		return ""
	}
	return err.Error()
}

func TestNoPackage(t *testing.T) {
	if _, err := load(t.Context(), "testdata/nothing"); err == nil || !strings.Contains(err.Error(), "go list ./testdata/nothing") {
		t.Errorf("want an error that says what to do, got %v", err)
	}
}
