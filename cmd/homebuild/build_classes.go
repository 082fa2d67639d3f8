package main

import (
	"fmt"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
)

// anyFolders checks what is typed after a command that takes one school or many.
func anyFolders(cmd *cobra.Command, args []string) error {
	if len(args) < 2 {
		return atMostOneFolder(cmd, args)
	}
	names := map[string]string{}
	for _, folder := range args {
		if err := atMostOneFolder(cmd, []string{folder}); err != nil {
			return err
		}
		if !isFolder(folder) {
			return wrongUse(fmt.Sprintf("there is no folder %q", folder), `put quotes around a name with spaces: "my class"`)
		}
		name := filepath.Base(filepath.Clean(folder))
		if other, twice := names[name]; twice {
			return wrongUse(fmt.Sprintf("%q and %q have one name, and would go into one place", other, folder), "build them one after the other, each with an --out of its own")
		}
		names[name] = folder
	}
	return nil
}

// classes builds several schools, each by itself: one that cannot be built keeps the
// pages that it has, and the others are made all the same.
func (b build) classes(cmd *cobra.Command, folders []string) error {
	if b.zip != "" || len(b.remove) > 0 || b.adopt {
		return wrongUse("--zip, --remove and --adopt are for one class at a time", "build that class alone")
	}
	var left []string
	for _, folder := range folders {
		b.say("%s:", filepath.ToSlash(folder))
		if b.exitCode(b.class(cmd, folder)) != exitFine {
			left = append(left, filepath.ToSlash(folder))
		}
	}
	b.say("%d of %s built", len(folders)-len(left), diag.Amount(len(folders), "class", "classes"))
	if len(left) > 0 {
		b.tell("not built: "+strings.Join(left, ", "), "what is said above is to mend; the pages that these have are as they were")
		return errReported
	}
	return nil
}

// class builds one of several schools; below --out it has a place of its own.
func (b build) class(cmd *cobra.Command, folder string) error {
	from, err := openSchool(cmd, folder)
	if err != nil {
		return err
	}
	defer from.close()
	from.Today = b.today
	b.from = from
	if b.out != "" {
		b.out = filepath.Join(b.out, filepath.Base(filepath.Clean(folder)))
	}
	return b.run()
}
