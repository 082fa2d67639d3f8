package check

import (
	"crypto/sha256"
	"errors"
	"fmt"
	"io/fs"
	"slices"

	"homebuild/internal/diag"
)

// Published looks at a published folder, too: whether it holds the pages of the
// files as they are now. What a stranger found who worked every number out again,
// internal/recheck, is told behind that. The name is the folder's, for the person.
func (r *Report) Published(public fs.FS, name string, found diag.Diagnostics) error {
	var old []string
	for _, p := range r.pages {
		data, err := fs.ReadFile(public, p.Name)
		if err != nil && !errors.Is(err, fs.ErrNotExist) {
			return err
		}
		if sha256.Sum256(data) != p.sum {
			old = append(old, p.Name)
		}
	}
	if slices.Sort(old); len(old) > 0 {
		r.add(diag.Diagnostic{File: name, Text: fmt.Sprintf("%d of %d pages are not those of your files: %s", len(old), len(r.pages), some(old)), Hint: "build again"})
	}
	for _, p := range found {
		p.File = name + "/" + p.File
		r.add(p)
	}
	return nil
}

func (r *Report) add(p diag.Diagnostic) {
	r.Findings = append(r.Findings, Finding{About: Published, Diagnostic: p, Mend: true})
}
