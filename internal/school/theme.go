package school

import (
	"errors"
	"fmt"
	"io/fs"
	"path"
	"slices"

	"homebuild/internal/diag"
	"homebuild/internal/page"
	"homebuild/themes"
)

const (
	baseTheme   = "base"  // what all themes have in common
	plainTheme  = "paper" // for a site that names none
	coloursFile = "colours.toml"
	oldColours  = "theme.toml" // what it was called once
)

// Theme reads the theme of a name; the plain one where there is none.
func (s *School) Theme(name string) (*page.Theme, diag.Diagnostics) {
	if name == "" {
		name = plainTheme
	}
	return s.memory.theme(name).get("themes "+s.sum(ThemesFolder), func() (*page.Theme, diag.Diagnostics) { return s.readTheme(name) })
}

// Palette reads the colors of a look alone, which is quick; false where they cannot
// be used.
func (s *School) Palette(name string) (page.Palette, bool) {
	if name == "" {
		name = plainTheme
	}
	for _, folder := range s.themeFolders() {
		if _, err := fs.Lstat(folder, path.Join(name, coloursFile)); err == nil {
			colors, err := page.ReadPalette(must(fs.Sub(folder, name)))
			return colors, err == nil
		}
	}
	return page.Palette{}, false
}

func (s *School) readTheme(name string) (*page.Theme, diag.Diagnostics) {
	wrong := func(text, hint string) (*page.Theme, diag.Diagnostics) {
		return nil, diag.Diagnostics{{File: path.Join(ThemesFolder, name), Text: text, Hint: hint}}
	}
	for _, folder := range s.themeFolders() {
		look, err := fs.Sub(folder, name)
		if err != nil {
			break
		}
		if _, err := fs.Lstat(look, coloursFile); err != nil {
			if _, err := fs.Lstat(look, oldColours); err == nil {
				return wrong(fmt.Sprintf("a theme's colors are in a file %q now", coloursFile), fmt.Sprintf("name %s that", oldColours))
			}
			continue
		}
		theme, err := page.ReadTheme(must(fs.Sub(themes.Files, baseTheme)), look)
		var problems diag.Diagnostics
		switch {
		case errors.As(err, &problems):
			for i := range problems {
				problems[i].File = path.Join(ThemesFolder, name, problems[i].File)
			}
			return nil, problems
		case err != nil:
			return wrong(err.Error(), "")
		}
		return theme, nil
	}
	return wrong(fmt.Sprintf("the theme has no file %q", coloursFile), "leave theme out for the plain look")
}

// Themes lists the themes there are.
func (s *School) Themes() []string {
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
func (s *School) themeFolders() []fs.FS { return append(s.folders(ThemesFolder), themes.Files) }
