package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/page"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/site"
	"homebuild/internal/story"
	"homebuild/internal/strategy"
	"homebuild/internal/week"
	"homebuild/locales"
	example "homebuild/site"
	"homebuild/themes"
)

const (
	localesFolder = "locales"
	themesFolder  = "themes"
	baseTheme     = "base"
	plainTheme    = "paper"
)

// school is a folder that a site is made from.
type school struct {
	name  string // as typed; "site" for the example
	files fs.FS
	close func() error
	kept  kept

	mayBeEmpty bool // whether it may have no week yet
}

// openSchool opens a folder, or the example school when none is given. Links
// that lead out of the folder are not followed.
func openSchool(folder string) (*school, error) {
	if folder == "" {
		return &school{name: "site", files: example.Files, close: func() error { return nil }}, nil
	}
	root, err := os.OpenRoot(folder)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, folderMissing(folder)
	case err != nil:
		return nil, wrongUse(fmt.Sprintf("%q cannot be opened as a folder", folder), `give the folder that holds "site.toml"`)
	}
	return &school{name: folder, files: root.FS(), close: root.Close}, nil
}

// input reads everything that the site is made from. The error is
// diag.Problems when the files are to be mended.
func (s *school) input() (site.Input, error) {
	targets, err := activity.Targets()
	if err != nil {
		return site.Input{}, err
	}
	stock, err := story.LoadStock()
	if err != nil {
		return site.Input{}, err
	}
	warmUps, err := site.WarmUps()
	if err != nil {
		return site.Input{}, err
	}
	languages := s.languages()
	read, problems := week.Read(s.files, week.Allowed{
		Targets:    each(targets, func(t activity.Target) string { return t.ID }),
		Strategies: each(strategy.Names(), strategy.Name.String),
		Pictures:   each(picture.Kinds(), picture.Kind.String),
		Settings:   each(stock.Settings(), func(id string) string { return strings.TrimPrefix(id, "setting.") }),
		WarmUps:    each(warmUps, func(w site.WarmUp) string { return w.ID }),
		Themes:     s.themes(),
		Kinds:      each(problem.Kinds(), problem.Kind.String),
		Languages:  i18n.Tags(languages...),
	})
	if s.mayBeEmpty {
		problems = slices.DeleteFunc(problems, week.OnlyNoWeek)
	}
	in := site.Input{Site: read, Targets: targets, Stock: stock, WarmUps: warmUps}
	if len(read.Languages) > 0 {
		var found diag.Problems
		in.Catalog, found = s.catalog(read.Languages)
		problems = append(problems, found...)
	}
	theme, found := s.look(read.Theme)
	in.Theme = theme
	problems = append(problems, found...)
	if len(problems) > 0 {
		problems.Sort()
		return site.Input{}, s.here(problems)
	}
	return in, nil
}

// here gives problems the path that a person sees from where they are. Files
// that come with the program keep their own.
func (s *school) here(problems diag.Problems) diag.Problems {
	out := slices.Clone(problems)
	for i, p := range out {
		_, err := fs.Stat(s.files, p.File)
		if ours := strings.HasPrefix(p.File, localesFolder+"/") || strings.HasPrefix(p.File, themesFolder+"/"); err == nil || !ours {
			out[i].File = path.Join(filepath.ToSlash(s.name), p.File)
		}
	}
	return out
}

// languages are the folders of language files, the school's own last.
func (s *school) languages() []fs.FS {
	folders := []fs.FS{locales.Files}
	if own, ok := s.folder(localesFolder); ok {
		folders = append(folders, own)
	}
	return folders
}

// folder opens a folder of the school's own, if it has one.
func (s *school) folder(name string) (fs.FS, bool) {
	if info, err := fs.Stat(s.files, name); err != nil || !info.IsDir() {
		return nil, false
	}
	own, err := fs.Sub(s.files, name)
	return own, err == nil
}

// themes lists the looks there are.
func (s *school) themes() []string {
	var names []string
	for _, folder := range s.themeFolders() {
		entries, _ := fs.ReadDir(folder, ".") // no folder, no themes
		for _, e := range entries {
			if e.IsDir() && e.Name() != baseTheme && !slices.Contains(names, e.Name()) {
				names = append(names, e.Name())
			}
		}
	}
	return names
}

// themeFolders are the folders of themes, the school's own first.
func (s *school) themeFolders() []fs.FS {
	var folders []fs.FS
	if own, ok := s.folder(themesFolder); ok {
		folders = append(folders, own)
	}
	return append(folders, themes.Files)
}

// theme reads the look that the site asks for.
func (s *school) theme(name string) (*page.Theme, diag.Problems) {
	if name == "" {
		name = plainTheme
	}
	base, err := fs.Sub(themes.Files, baseTheme)
	if err != nil {
		panic(err) // the name is ours
	}
	for _, folder := range s.themeFolders() {
		look, err := fs.Sub(folder, name)
		if err != nil {
			break
		}
		if _, err := fs.Lstat(look, "theme.toml"); err != nil {
			continue
		}
		theme, err := page.ReadTheme(base, look)
		var problems diag.Problems
		if err != nil && !errors.As(err, &problems) {
			problems = diag.Problems{{Text: err.Error()}}
		}
		for i := range problems {
			problems[i].File = path.Join(themesFolder, name, problems[i].File)
		}
		if len(problems) > 0 {
			return nil, problems
		}
		return theme, nil
	}
	return nil, diag.Problems{{File: path.Join(themesFolder, name), Text: `the theme has no file "theme.toml"`, Hint: "leave theme out for the plain look"}}
}

// each gives the words of a list.
func each[T any](list []T, word func(T) string) []string {
	words := make([]string, len(list))
	for i, v := range list {
		words[i] = word(v)
	}
	return words
}
