package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// A language goes to another program and comes back: what is right is taken, what is not
// is told with its line, and texts that were not brought back are never written over.
func TestExportAndImport(t *testing.T) {
	folder := schoolWith(t, "es")
	path := filepath.Join(folder, "locales", "es.po")
	change := func(old, new string) {
		t.Helper()
		data, err := os.ReadFile(path)
		if err != nil || !strings.Contains(string(data), old) {
			t.Fatalf("%s has no %q: %v", path, old, err)
		}
		if err := os.WriteFile(path, []byte(strings.Replace(string(data), old, new, 1)), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	locale := func() string {
		data, err := os.ReadFile(filepath.Join(folder, "locales", "es.toml"))
		if err != nil {
			t.Fatal(err)
		}
		return string(data)
	}
	before := locale()
	said(t, exitWrongUse, "language", "export", "en", folder)
	said(t, exitFine, "language", "export", "es", folder)
	change(`msgstr "Ir al contenido"`, `msgstr "Al contenido"`)
	change(`msgstr "Idiomas"`, `msgstr "Idiomas "`)
	if got := said(t, exitProblems, "language", "export", "es", folder); !strings.Contains(got, "nothing was changed") {
		t.Errorf("an export over texts that were not brought back: got %s", got)
	}
	got := said(t, exitProblems, "language", "import", "es", folder)
	if !strings.Contains(got, "1 changed text taken") || !strings.Contains(got, "page.languages begins or ends with a space") || !strings.Contains(got, "es.po:") {
		t.Errorf("want one text taken and one told, got %s", got)
	}
	if want := strings.Replace(before, `"Ir al contenido"`, `"Al contenido"`, 1); locale() != want {
		t.Error("the file says something else than what was taken")
	}
	change(`msgstr "Idiomas "`, `msgstr "Lenguas"`)
	said(t, exitFine, "language", "import", "es", folder)
	said(t, exitFine, "language", "export", "es", folder)
	said(t, exitFine, "language", "check", "es", folder)
	said(t, exitFine, "language", "new", "pl", folder)
	said(t, exitFine, "language", "export", "pl", folder)
	if got := said(t, exitFine, "language", "import", "pl", folder); !strings.Contains(got, "0 changed texts taken") {
		t.Errorf("a file that nobody has written in: got %s", got)
	}
	said(t, exitWrongUse, "language", "import", "fr", folder)
}

// Status, check and build agree about a file in which nothing is written yet.
func TestEmptyFile(t *testing.T) {
	folder := schoolWith(t)
	addToSite(t, folder, "pl")
	said(t, exitFine, "language", "new", "pl", folder)
	status := strings.Fields(strings.Split(said(t, exitFine, "language", "status", folder), "\npl ")[1])
	check := said(t, exitFine, "language", "check", "pl", folder)
	if done, missing, mend := status[0], status[1], status[4]; done != "0" || mend != "0" || !strings.Contains(check, "0 of "+missing+" messages") {
		t.Errorf("status says %s done, %s missing, %s to mend; check says %s", done, missing, mend, check)
	}
	said(t, exitFine, "build", folder)
}
