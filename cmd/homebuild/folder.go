package main

import (
	"bytes"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/week"
	example "homebuild/site"
)

// One rule says which folder a command is about, whatever the command: the one
// that was typed, else the one that the person is in when "site.toml" is there.
// A command that only shows or makes pages takes the example school when there
// is neither, and says so; the others end with the next step.

// someFolder is what commands that take a folder say of it; exampleFolder is
// for those that can take the example school.
const (
	someFolder    = `Without a folder it takes the one you are in, when "site.toml" is there.`
	exampleFolder = `Without a folder it takes the one you are in, when "site.toml" is there; else
the example school, and says so.`
)

// here is the folder that a person is in.
const here = "."

// schoolFolder gives the folder that a command is about, or what to type.
func schoolFolder(cmd *cobra.Command, args []string) (string, error) {
	if len(args) > 0 {
		return args[0], nil
	}
	if isSchool(here) {
		return here, nil
	}
	return "", wrongUse(fmt.Sprintf("there is no %q here", week.SiteFile), notHere(cmd))
}

// schoolOrExample is schoolFolder for a command that can take the example
// school: its folder is empty. A person who is in a folder of a school does not
// mean the example.
func schoolOrExample(cmd *cobra.Command, args []string) (string, error) {
	folder, err := schoolFolder(cmd, args)
	if above, _ := schoolsNear(here); err == nil || above != "" {
		return folder, err
	}
	return "", nil
}

// tellExample says that the example school stands in.
func (s *streams) tellExample() {
	hint := "homebuild start my-class begins one of your own"
	if _, below := schoolsNear(here); len(below) > 0 {
		hint = "type the folder of yours after the command: " + strings.Join(below, ", or ")
	}
	s.tell(fmt.Sprintf("this is the example school: no folder was given, and there is no %q here", week.SiteFile), hint)
}

// notHere says what to type where no school is.
func notHere(cmd *cobra.Command) string {
	above, below := schoolsNear(here)
	switch {
	case above != "":
		return "the school's folder is the one above: " + asTyped(cmd, []string{above})
	case len(below) > 0:
		return asTyped(cmd, below)
	}
	return asTyped(cmd, []string{"my-class"}) + ", or homebuild start my-class for a new site"
}

// asTyped is the command for each of these folders.
func asTyped(cmd *cobra.Command, folders []string) string {
	const most = 3
	if len(folders) > most {
		folders = folders[:most]
	}
	return strings.Join(each(folders, func(folder string) string { return cmd.CommandPath() + argument(folder) }), ", or ")
}

// isSchool reports whether a folder has the settings of a school.
func isSchool(folder string) bool {
	info, err := os.Stat(filepath.Join(folder, week.SiteFile))
	return err == nil && info.Mode().IsRegular()
}

// schoolsNear finds the schools that a person may mean who is in a folder that
// is none: the one above, or those in it. The example is not meant.
func schoolsNear(folder string) (above string, below []string) {
	if up := filepath.Join(folder, ".."); isSchool(up) {
		return up, nil
	}
	ours, err := fs.ReadFile(example.Files, week.SiteFile)
	if err != nil {
		panic(err) // it is part of the program
	}
	entries, _ := os.ReadDir(folder) // what cannot be read is not near
	for _, e := range entries {
		inside := filepath.Join(folder, e.Name())
		if !isSchool(inside) {
			continue
		}
		if text, err := os.ReadFile(filepath.Join(inside, week.SiteFile)); err == nil && !bytes.Equal(text, ours) {
			below = append(below, inside)
		}
	}
	return "", below
}

// openOne opens a school that must be there: a folder in which nothing is a
// school's is most likely the wrong one.
func openOne(folder string) (*school, error) {
	from, err := openSchool(folder)
	if err != nil || folder == "" {
		return from, err
	}
	for _, name := range []string{week.Folder, week.SiteFile} {
		if _, err := fs.Lstat(from.files, name); err == nil {
			return from, nil
		}
	}
	entries, _ := fs.ReadDir(from.files, ".")
	for _, e := range entries {
		if strings.HasPrefix(strings.ToLower(e.Name()), "site.") {
			return from, nil // week says how to name it
		}
	}
	from.close()
	above, below := schoolsNear(folder)
	hint := fmt.Sprintf("homebuild start%s begins a school there", argument(folder))
	switch {
	case folder == here && above == "" && len(below) == 0:
		hint = "go to the folder that holds it, or type the folder; homebuild start my-class begins a new one"
	case above != "":
		hint = fmt.Sprintf("the school's folder is the one above: %s", above)
	case len(below) > 0:
		hint = "there is one in it: " + strings.Join(below, ", ")
	}
	return nil, wrongUse(fmt.Sprintf("%q is not a school's folder: there is no %q in it", folder, week.SiteFile), hint)
}

// atMostOneFolder is the rule for commands that take a folder or none.
func atMostOneFolder(cmd *cobra.Command, args []string) error {
	for i, word := range args {
		if flag := plainFlag(cmd, word); flag != "" && (i > 0 || !isFolder(word)) {
			return wrongUse(fmt.Sprintf("%s cannot do anything with %q", cmd.Name(), word), "write two plain dashes before it: "+flag)
		}
	}
	if len(args) > 1 {
		return wrongUse(fmt.Sprintf("%s takes one folder, not %d", cmd.Name(), len(args)), `put quotes around a name with spaces: "my class"`)
	}
	return nil
}

func isFolder(name string) bool {
	info, err := os.Stat(name)
	return err == nil && info.IsDir()
}

// plainFlag is the flag that was meant by a word with a word processor's dash,
// one dash or none; empty when none was.
func plainFlag(cmd *cobra.Command, word string) string {
	name, _, _ := strings.Cut(strings.TrimLeft(word, "-‐‑‒–—―−"), "=")
	if name == "" || cmd.Flags().Lookup(name) == nil {
		return ""
	}
	return "--" + name
}

// folderMissing is what is told of a folder that is not there, with the one of
// a similar name if there is one.
func folderMissing(folder string) error {
	hint := fmt.Sprintf("give the folder that holds %q", week.SiteFile)
	entries, _ := os.ReadDir(filepath.Dir(folder))
	var names []string
	for _, e := range entries {
		if e.IsDir() {
			names = append(names, e.Name())
		}
	}
	if near := diag.Nearest(filepath.Base(folder), names); near != "" {
		hint = fmt.Sprintf("did you mean %q?", filepath.Join(filepath.Dir(folder), near))
	}
	return wrongUse(fmt.Sprintf("there is no folder %q", folder), hint)
}
