package site

import (
	"io/fs"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"homebuild/internal/i18n"
	"homebuild/locales"
)

// inputLacking is the example's first weeks in English and Spanish, whose file lacks
// some texts.
func inputLacking(t *testing.T, texts ...string) Input {
	t.Helper()
	var changes []string
	for _, text := range texts {
		changes = append(changes, `"`+text+`"`, `""`)
	}
	return inputWith(t, changes...)
}

// inputWith is the same with changes in the Spanish file: what stands there, and what
// takes its place.
func inputWith(t *testing.T, changes ...string) Input {
	t.Helper()
	in := exampleInput(t, "en", "es")
	in.Program = "under test"
	in.Site.Weeks = in.Site.Weeks[:2]
	data, err := fs.ReadFile(locales.Files, "es.toml")
	if err != nil {
		t.Fatal(err)
	}
	file := string(data)
	for i := 0; i < len(changes); i += 2 {
		if !strings.Contains(file, changes[i]) {
			t.Fatalf("es.toml has no %q", changes[i])
		}
		file = strings.Replace(file, changes[i], changes[i+1], 1)
	}
	catalog, problems := i18n.Load([]string{"en", "es"}, locales.Files, fstest.MapFS{"es.toml": {Data: []byte(file)}})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	in.Catalog = catalog
	return in
}

// A text that is missing keeps back the pages that say it, and no others; nothing leads
// to them, and pages whose links change are made anew.
func TestMissingTextKeepsBackItsPages(t *testing.T) {
	whole, _, problems := Plan(inputLacking(t))
	lacking, _, more := Plan(inputLacking(t, "Esta vez, el cuento es tuyo. Elige, cuenta, dibuja y resuelve."))
	if len(problems)+len(more) > 0 {
		t.Fatal(problems, more)
	}
	all, made := map[string]string{}, map[string]string{}
	for _, f := range whole.Pages() {
		all[f.Path] = f.Key
	}
	for _, f := range lacking.Pages() {
		made[f.Path] = f.Key
		if html, err := f.Render(); err != nil || strings.HasPrefix(f.Path, "es/") && strings.Contains(string(html), "-story.html") {
			t.Errorf("%s leads to a page that is not made, or has an error: %v", f.Path, err)
		}
	}
	for path := range all {
		if _, ok := made[path]; ok == (strings.HasPrefix(path, "es/") && strings.HasSuffix(path, "-story.html")) {
			t.Errorf("%s: made %v", path, ok)
		}
	}
	if learn := "es/" + whole.lessons[0].date + ".html"; all[learn] == made[learn] {
		t.Errorf("%s has lost a link and keeps its key", learn)
	}
	for _, g := range lacking.Gaps("es") {
		story := strings.HasSuffix(g.Path, "-story.html") || strings.Contains(g.Path, "to-send")
		if slices.Contains(g.Lacks, "own.intro") != story || len(g.Lacks) > 0 != story {
			t.Errorf("%s lacks %v", g.Path, g.Lacks)
		}
	}
	if notes := lacking.Withheld(); len(notes) != 1 || !strings.Contains(notes[0].Text, "es (Español) has its page in 2 of 2 weeks so far, and 2 pages wait") {
		t.Errorf("want a note about two pages, got %v", notes)
	}
	if notes := whole.Withheld(); len(notes) > 0 {
		t.Errorf("whole: %v", notes)
	}
}
