package site

import (
	"io/fs"
	"os"
	"path/filepath"
	"testing"

	"homebuild/internal/activity"
	"homebuild/internal/i18n"
	"homebuild/internal/page"
	"homebuild/internal/problem"
	"homebuild/internal/story"
	"homebuild/internal/strategy"
	"homebuild/internal/week"
	"homebuild/locales"
	"homebuild/themes"
)

func TestScratch(t *testing.T) {
	cat, problems := i18n.Load([]string{"en"}, locales.Files)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	targets, err := activity.Targets()
	if err != nil {
		t.Fatal(err)
	}
	var ids, strat, kinds []string
	for _, x := range targets {
		ids = append(ids, x.ID)
	}
	for _, x := range strategy.Names() {
		strat = append(strat, x.String())
	}
	for _, x := range problem.Kinds() {
		kinds = append(kinds, x.String())
	}
	s, problems := week.Read(os.DirFS("../../site"), week.Allowed{Targets: ids, Strategies: strat, Kinds: kinds, Pictures: []string{"bar-model"}, Settings: []string{"harbour", "market"}, Themes: []string{"paper"}, Languages: []string{"en", "es", "ar"}})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	s.Languages = []string{"en"}
	stock, err := story.LoadStock()
	if err != nil {
		t.Fatal(err)
	}
	sub := func(d string) fs.FS { f, _ := fs.Sub(themes.Files, d); return f }
	theme, err := page.ReadTheme(sub("base"), sub("paper"))
	if err != nil {
		t.Fatal(err)
	}
	files, notices, problems := Assemble(Input{Site: s, Catalog: cat, Targets: targets, Stock: stock, Theme: theme})
	t.Log(len(files), notices, problems)
	for _, f := range files {
		b, err := f.Render()
		if err != nil {
			t.Fatal(err)
		}
		p := filepath.Join("/tmp/out", f.Path)
		os.MkdirAll(filepath.Dir(p), 0o755)
		os.WriteFile(p, b, 0o644)
	}
}
