package main

import (
	"bytes"
	"os"
	"testing"

	"homebuild/internal/i18n"
	"homebuild/internal/school"
	"homebuild/internal/site"
)

// Pages in the lighter languages are those in the whole ones.
func TestLighterLanguages(t *testing.T) {
	t.Chdir("../..")
	dir, replace := t.TempDir(), map[string]string{}
	if err := lighterLanguages(dir, replace); err != nil {
		t.Fatal(err)
	}
	in, problems := school.Example().Load()
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	if want := len(in.Site.Languages); len(replace) != want {
		t.Fatalf("%d files are lighter, want %d", len(replace), want)
	}
	in.Site.Weeks = in.Site.Weeks[:1]
	whole := pagesOf(t, in)
	if in.Catalog, problems = i18n.Load(in.Site.Languages, os.DirFS("locales"), os.DirFS(dir)); len(problems) > 0 {
		t.Fatal(problems)
	}
	for path, html := range pagesOf(t, in) {
		if !bytes.Equal(html, whole[path]) {
			t.Errorf("%s differs", path)
		}
	}
}

func pagesOf(t *testing.T, in site.Input) map[string][]byte {
	t.Helper()
	files, _, problems := site.Assemble(in)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	out := map[string][]byte{}
	for _, f := range files {
		html, err := f.Render()
		if err != nil {
			t.Fatal(err)
		}
		out[f.Path] = html
	}
	return out
}
