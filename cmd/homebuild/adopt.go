package main

import (
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/output"
	"homebuild/internal/page"
	"homebuild/internal/publish"
)

// takeOver shows which files in the two folders are homebuild's and not in its record;
// with --yes they are from now on, and the build that follows renews or removes them.
func (b build) takeOver(public string, pages []output.File, desk string, hers []output.File, stays func(path string) bool) error {
	found := map[string]publish.Adoption{}
	look := func(folder string, files []output.File, keep func(string) bool) (err error) {
		found[folder], err = publish.Unrecorded(folder, files, publish.Options{Keep: keep}, page.Recognize)
		b.showFound(folder, found[folder])
		return err
	}
	err := look(public, pages, stays)
	if err == nil && b.out == "" {
		err = look(desk, hers, nil)
	}
	if err != nil {
		return err
	}
	if !b.yes {
		b.say("nothing was changed; with --yes it is done")
		return nil
	}
	for folder, files := range found {
		if err := publish.Adopt(folder, files); err != nil {
			return err
		}
	}
	return nil
}

// showFound lists the first of the files of each fate.
func (b build) showFound(folder string, found publish.Adoption) {
	const shown = 10
	for _, group := range []struct {
		fate  string
		names []string
	}{{"made anew", found.Again}, {"removed: no longer made", found.Gone}, {"left: families had them", found.Kept}} {
		if len(group.names) == 0 {
			continue
		}
		b.say("%s in %s would be %s", diag.Amount(len(group.names), "file", "files"), folder, group.fate)
		b.say("  %s", strings.Join(group.names[:min(shown, len(group.names))], "\n  "))
		if more := len(group.names) - shown; more > 0 {
			b.say("  and %d more", more)
		}
	}
	if found.Len() == 0 {
		b.say("all that homebuild made in %s is in its record", folder)
	}
}
