package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/school"
	"homebuild/internal/week"
	example "homebuild/site"
)

// One rule says which folder a command is about, whatever the command: the one
// that was typed, else the one that the person is in when "site.toml" is there.
// A command that only shows or makes pages takes the example school when there
// is neither, and says so; the others end with the next step.

// here is the folder that a person is in.
const here = "."

// Where pages go in a school's folder: those for families, and those for the
// teacher alone.
const (
	publicFolder = "public"
	deskFolder   = "desk"
)

// folder is a school's folder on the disk, or the example school.
type folder struct {
	*school.School
	path  string // as typed; empty for the example school
	files fs.FS
	close func() error
}

// place is the folder that something is written into.
func (f *folder) place() string {
	if f.path == "" {
		return here
	}
	return f.path
}

// openFolder opens a folder, or the example school when none is given. Links
// that lead out of the folder are not followed.
func openFolder(path string) (*folder, error) {
	if path == "" {
		return &folder{School: school.Example(), files: example.Files, close: func() error { return nil }}, nil
	}
	root, err := os.OpenRoot(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, folderMissing(path)
	case err != nil:
		return nil, wrongUse(fmt.Sprintf("%q cannot be opened as a folder", path), `give the folder that holds "site.toml"`)
	}
	files := root.FS()
	f := &folder{school.Open(filepath.ToSlash(path), files), path, files, root.Close}
	if err := f.share(); err != nil {
		root.Close()
		return nil, err
	}
	return f, nil
}

// share opens the folder of languages and looks that the school's settings name.
func (f *folder) share() error {
	name, line := school.Shared(f.files)
	if name == "" {
		return nil
	}
	place := filepath.FromSlash(name)
	if !filepath.IsAbs(place) {
		place = filepath.Join(f.path, place)
	}
	shared, err := os.OpenRoot(place)
	if err != nil {
		return diag.Diagnostics{{
			File: filepath.ToSlash(filepath.Join(f.path, week.SiteFile)), Line: line, Text: fmt.Sprintf("there is no folder %q to share", name),
			Hint: fmt.Sprintf("shared names a folder with %q or %q in it, beginning at this file: \"../../shared\"", school.LocalesFolder, school.ThemesFolder),
		}}
	}
	f.Share(filepath.ToSlash(place), shared.FS())
	own := f.close
	f.close = func() error { return errors.Join(shared.Close(), own()) }
	return nil
}

// exampleRule says whether a command can take the example school.
type exampleRule bool

const (
	orExample exampleRule = true
	noExample exampleRule = false
)

// schoolCommand is a command about a school: it opens the one that was typed or
// that the person is in. A person who is in a folder of a school does not mean
// the example.
func (s *streams) schoolCommand(use, short string, example exampleRule, do func(*cobra.Command, *folder) error) *cobra.Command {
	return &cobra.Command{Use: use, Short: short, Args: atMostOneFolder, ValidArgsFunction: folders, RunE: func(cmd *cobra.Command, args []string) error {
		from, err := s.find(cmd, args, example)
		if err != nil {
			return err
		}
		from.Today = s.today
		defer from.close()
		return do(cmd, from)
	}}
}

// takesWeek has a command about a school take a week as well: a date after the
// folder, or alone.
func takesWeek(cmd *cobra.Command, date *string) {
	run := cmd.RunE
	without := func(args []string) []string {
		if last := len(args) - 1; last >= 0 && looksLikeWeek(args[last]) {
			*date = args[last]
			return args[:last]
		}
		return args
	}
	cmd.Args = func(cmd *cobra.Command, args []string) error { return atMostOneFolder(cmd, without(args)) }
	cmd.RunE = func(cmd *cobra.Command, args []string) error { return run(cmd, without(args)) }
}

// looksLikeWeek reports whether a word is a date, in whatever form, and no
// folder.
func looksLikeWeek(word string) bool {
	return len(word) >= len("1.9.26") && strings.Trim(word, "0123456789-./") == "" && !isSchool(word)
}

// find opens the school that a command is about, or says what to type.
func (s *streams) find(cmd *cobra.Command, args []string, example exampleRule) (*folder, error) {
	if len(args) > 0 {
		return openSchool(cmd, args[0])
	}
	if isSchool(here) {
		return openSchool(cmd, here)
	}
	above, below := schoolsNear(here)
	absent := fmt.Sprintf("there is no %q here", week.SiteFile)
	if !bool(example) || above != "" {
		return nil, wrongUse(absent, orNear(cmd, above, below, cmd.CommandPath()+" my-class, or homebuild start my-class for a new site"))
	}
	if quiet, _ := cmd.Flags().GetBool("quiet"); !quiet {
		s.tell("this is the example school: no folder was given, and "+absent, orNear(cmd, "", below, "homebuild start my-class begins one of your own"))
	}
	return openFolder("")
}

// openSchool opens a school that must be there: a folder in which nothing is a
// school's is most likely the wrong one.
func openSchool(cmd *cobra.Command, path string) (*folder, error) {
	from, err := openFolder(path)
	if err != nil || school.IsSchool(from.files) {
		return from, err
	}
	from.close()
	above, below := schoolsNear(path)
	hint := fmt.Sprintf("homebuild start%s begins a school there", argument(path))
	if path == here {
		hint = "go to the folder that holds it, or type the folder; homebuild start my-class begins a new one"
	}
	return nil, wrongUse(fmt.Sprintf("%q is not a school's folder: there is no %q in it", path, week.SiteFile), orNear(cmd, above, below, hint))
}

// orNear says which schools near a person may mean; otherwise something else.
func orNear(cmd *cobra.Command, above string, below []string, otherwise string) string {
	command := func(folder string) string { return cmd.CommandPath() + argument(folder) }
	const shown = 3
	switch {
	case above != "":
		return "the school's folder is the one above: " + command(above)
	case len(below) > 0:
		return strings.Join(each(below[:min(shown, len(below))], command), ", or ")
	}
	return otherwise
}

// isSchool reports whether a folder has the settings of a school.
func isSchool(folder string) bool {
	info, err := os.Stat(filepath.Join(folder, week.SiteFile))
	return err == nil && info.Mode().IsRegular()
}

// schoolsNear finds the schools that a person may mean who is in a folder that
// is none: the one above, or those in it.
func schoolsNear(folder string) (above string, below []string) {
	if up := filepath.Join(folder, ".."); isSchool(up) {
		return up, nil
	}
	return "", each(school.SchoolsIn(os.DirFS(folder)), func(name string) string { return filepath.Join(folder, name) })
}

// folderMissing is what is told of a folder that is not there, with the one of
// a similar name if there is one.
func folderMissing(folder string) error {
	hint := fmt.Sprintf("give the folder that holds %q", week.SiteFile)
	if near := nearFolder(folder); near != "" {
		hint = fmt.Sprintf("did you mean %q?", near)
	}
	return wrongUse(fmt.Sprintf("there is no folder %q", folder), hint)
}

// nearFolder is a folder beside one that is not there, of a name near to its; empty
// for none.
func nearFolder(folder string) string {
	entries, _ := os.ReadDir(filepath.Dir(folder))
	var names []string
	for _, e := range entries {
		if e.IsDir() {
			names = append(names, e.Name())
		}
	}
	if near := diag.Nearest(filepath.Base(folder), names); near != "" {
		return filepath.Join(filepath.Dir(folder), near)
	}
	return ""
}

func isFolder(name string) bool {
	info, err := os.Stat(name)
	return err == nil && info.IsDir()
}

// argument is a folder as one types it after a command.
func argument(folder string) string {
	switch {
	case folder == "" || folder == here:
		return ""
	case strings.ContainsAny(folder, " '()&;"):
		return fmt.Sprintf(" %q", folder)
	}
	return " " + folder
}
