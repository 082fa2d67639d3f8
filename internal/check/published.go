package check

import (
	"crypto/sha256"
	"errors"
	"fmt"
	"io/fs"
	"slices"

	"homebuild/internal/diag"
	"homebuild/internal/recheck"
)

// Published looks at a published folder, too: whether it holds the pages of the
// files as they are now, and whether a stranger who works every number out again
// comes to the same. The name is the folder's, for the person.
func (r *Report) Published(public fs.FS, name string) (recheck.Report, error) {
	var old []string
	for _, p := range r.pages {
		data, err := fs.ReadFile(public, p.Name)
		if err != nil && !errors.Is(err, fs.ErrNotExist) {
			return recheck.Report{}, err
		}
		if sha256.Sum256(data) != p.sum {
			old = append(old, p.Name)
		}
	}
	if slices.Sort(old); len(old) > 0 {
		r.add(diag.Diagnostic{File: name, Text: fmt.Sprintf("%d of %d pages are not those of your files: %s", len(old), len(r.pages), some(old)), Hint: "build again"})
	}
	again, problems := recheck.Site(public)
	for _, p := range problems {
		p.File = name + "/" + p.File
		r.add(p)
	}
	return again, nil
}

func (r *Report) add(p diag.Diagnostic) {
	r.Findings = append(r.Findings, Finding{About: Published, Diagnostic: p, Mend: true})
}
