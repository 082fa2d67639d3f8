//go:build browser

package browser_test

import (
	"os"
	"path/filepath"
	"slices"
	"testing"

	"homebuild/internal/i18n"
	"homebuild/internal/site"
	"homebuild/internal/translate"
	"homebuild/locales"
)

// The sample of each language fits a small phone; with -all, one of them stands
// before the accessibility engine.
func TestSamplePages(t *testing.T) {
	t.Parallel()
	in := pseudoInput(t)
	dir := t.TempDir()
	engine, err := os.ReadFile("node_modules/axe-core/axe.min.js")
	must(t, err)
	b := openTab(t)
	b.trusted()
	for _, tag := range i18n.Tags(locales.Files) {
		if !*all && !slices.Contains(closely, tag) {
			continue
		}
		draft, problems := translate.Open(tag, locales.Files)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		f := site.Sample(site.SampleInput{Draft: draft, English: in.Catalog.Source(), Theme: in.Theme, Targets: in.Targets, Places: in.Places})
		data, err := f.Render()
		must(t, err)
		name := filepath.Join(dir, f.Path)
		must(t, os.WriteFile(name, data, 0o644))
		b.size(320, 740)
		b.visit("file://" + name)
		for _, fault := range eval[[]string](b, wide) {
			t.Errorf("%s, 320 pixels: %s", f.Path, fault)
		}
		if !*all || tag != "ar" { // the engine takes minutes for so many words
			continue
		}
		eval[bool](b, string(engine)+";true")
		for _, r := range b.axe() {
			t.Errorf("%s: %s: %s: %v", f.Path, r.Rule, r.Help, r.Places)
		}
	}
}
