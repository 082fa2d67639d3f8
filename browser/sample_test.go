//go:build browser

package browser_test

import (
	"os"
	"path/filepath"
	"testing"

	"homebuild/internal/i18n"
	"homebuild/internal/site"
	"homebuild/internal/translate"
	"homebuild/locales"
)

// The sample of each language fits a small phone; one of them stands before the
// accessibility engine.
func TestSamplePages(t *testing.T) {
	t.Parallel()
	in := pseudoInput(t)
	dir := t.TempDir()
	engine, err := os.ReadFile("node_modules/axe-core/axe.min.js")
	must(t, err)
	b := openTab(t)
	b.trusted()
	for _, tag := range i18n.Tags(locales.Files) {
		draft, problems := translate.Open(tag, locales.Files)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		f := site.Sample(site.SampleInput{Draft: draft, English: in.Catalog.Source(), Theme: in.Theme, Targets: in.Targets, Places: in.Places})
		data, err := f.Render()
		must(t, err)
		name := filepath.Join(dir, f.Path)
		must(t, os.WriteFile(name, data, 0o644))
		for _, width := range []int64{320, 360} {
			b.size(width, 740)
			b.visit("file://" + name)
			for _, fault := range eval[[]string](b, wide) {
				t.Errorf("%s, %d pixels: %s", f.Path, width, fault)
			}
		}
		if tag != "ar" { // the engine takes half a minute for so many words
			continue
		}
		eval[bool](b, string(engine)+";true")
		for _, r := range b.axe() {
			t.Errorf("%s: %s: %s: %v", f.Path, r.Rule, r.Help, r.Places)
		}
	}
}
