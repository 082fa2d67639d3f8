package main

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"homebuild/internal/diag"
)

// The example school is what teachers copy: its own files must be right.
func TestExampleSchool(t *testing.T) {
	from, err := openSchool("")
	if err != nil {
		t.Fatal(err)
	}
	_, err = from.input()
	var problems diag.Problems
	if err != nil && !errors.As(err, &problems) {
		t.Fatal(err)
	}
	for _, p := range problems {
		if strings.HasPrefix(p.File, "site/") {
			t.Error(p)
		}
	}
}

// Where a problem is told: the person's own file by the way to it, the
// program's own by its name.
func TestPlaceOfProblems(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "my class")
	for _, name := range []string{"locales/es.toml", "site.toml"} {
		if err := os.MkdirAll(filepath.Dir(filepath.Join(folder, name)), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(folder, name), []byte("x"), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	from, err := openSchool(folder)
	if err != nil {
		t.Fatal(err)
	}
	defer from.close()
	own := filepath.ToSlash(folder) + "/"
	tests := []struct{ file, want, why string }{
		{"site.toml", own + "site.toml", "it is theirs"},
		{"weeks", own + "weeks", "it is theirs to make"},
		{"locales/es.toml", own + "locales/es.toml", "it stands in place of ours"},
		{"locales/ar.toml", "locales/ar.toml", "it is ours"},
		{"themes/paper", "themes/paper", "it is ours"},
	}
	for _, test := range tests {
		if got := from.here(diag.Problems{{File: test.file}})[0].File; got != test.want {
			t.Errorf("here(%q): want %q, got %q, since %s", test.file, test.want, got, test.why)
		}
	}
}
