//go:build browser

package browser_test

import (
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"homebuild/internal/activity"
	"homebuild/internal/i18n"
	"homebuild/internal/page"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/site"
	"homebuild/internal/story"
	"homebuild/internal/strategy"
	schoolweek "homebuild/internal/week"
	"homebuild/locales"
	example "homebuild/site"
	"homebuild/themes"
)

// pseudoSite writes the example school in the two languages that are made up
// for tests: English with accents, 40 % longer, and the same from right to left.
func pseudoSite(t *testing.T) string {
	t.Helper()
	dir := t.TempDir()
	files, _, problems := site.Assemble(pseudoInput(t))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	for _, f := range files {
		data, err := f.Render()
		must(t, err)
		name := filepath.Join(dir, filepath.FromSlash(f.Path))
		must(t, os.MkdirAll(filepath.Dir(name), 0o755))
		must(t, os.WriteFile(name, data, 0o644))
	}
	return dir
}

func pseudoInput(t *testing.T) site.Input {
	t.Helper()
	var in site.Input
	var err error
	in.Targets, err = activity.Targets()
	must(t, err)
	in.Stock, err = story.LoadStock()
	must(t, err)
	in.WarmUps, err = site.WarmUps()
	must(t, err)
	base, err := fs.Sub(themes.Files, "base")
	must(t, err)
	paper, err := fs.Sub(themes.Files, "paper")
	must(t, err)
	in.Theme, err = page.ReadTheme(base, paper)
	must(t, err)
	read, problems := schoolweek.Read(example.Files, schoolweek.Allowed{
		Targets:    names(in.Targets, func(x activity.Target) string { return x.ID }),
		Strategies: names(strategy.Names(), strategy.Name.String),
		Pictures:   names(picture.Kinds(), picture.Kind.String),
		Settings:   names(in.Stock.Settings(), func(x string) string { return strings.TrimPrefix(x, "setting.") }),
		WarmUps:    names(in.WarmUps, func(x site.WarmUp) string { return x.ID }),
		Kinds:      names(problem.Kinds(), problem.Kind.String),
		Themes:     []string{"paper"},
		Languages:  i18n.Tags(locales.Files),
	})
	catalog, found := i18n.Load([]string{"en"}, locales.Files)
	if problems = append(problems, found...); len(problems) > 0 {
		t.Fatal(problems)
	}
	longer, mirrored := i18n.Pseudo(catalog.Source(), false), i18n.Pseudo(catalog.Source(), true)
	in.Site = read
	in.Catalog = catalog.With(longer, mirrored)
	in.Site.Languages, in.Site.School = []string{longer.Tag(), mirrored.Tag()}, longer.Tag()
	return in
}

func names[T any](list []T, name func(T) string) []string {
	var out []string
	for _, x := range list {
		out = append(out, name(x))
	}
	return out
}

// plainEnglish is a word that no made-up language has: all their vowels have
// accents, or are Arabic.
var plainEnglish = regexp.MustCompile(`[A-Za-z]*[AEIOUaeiou][A-Za-z]*`)

// No page takes words from anywhere but the language files.
func TestNoWordsButTheLanguages(t *testing.T) {
	t.Parallel()
	dir := pseudoSite(t)
	b := openTab(t)
	for _, tag := range []string{"en-XA", "ar-XB"} {
		for _, v := range views(tag) {
			b.visit("file://" + filepath.Join(dir, filepath.FromSlash(v.path)))
			text := eval[string](b, `(() => { for (const e of document.querySelectorAll(".note, .mark, [lang]:not(html)")) e.remove(); return document.body.textContent })()`)
			if found := plainEnglish.FindString(text); found != "" {
				t.Errorf("%s %s: %q is not from the language's file", tag, v.name, found)
			}
		}
	}
}

// Texts that are 40 % longer than English leave nothing cut off and nothing to
// scroll sideways, in both directions, on small phones. 40 % is common practice,
// no published source.
func TestLongTextsFit(t *testing.T) {
	t.Parallel()
	dir := pseudoSite(t)
	b := openTab(t)
	for _, width := range []int64{320, 360} {
		b.size(width, 740)
		for _, v := range append(topViews(), append(views("en-XA"), views("ar-XB")...)...) {
			b.visit("file://" + filepath.Join(dir, filepath.FromSlash(v.path)))
			for _, fault := range eval[[]string](b, wide) {
				t.Errorf("%s, %d pixels: %s", v.path, width, fault)
			}
		}
	}
}
