package check

import (
	"crypto/sha256"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"slices"

	"homebuild/internal/diag"
	"homebuild/internal/recheck"
)

// Published looks at a published folder, too: whether it holds the pages of the
// files as they are now, and whether a stranger who works every number out again
// comes to the same. The name is the folder's, for the person.
func (r *Report) Published(public fs.FS, name string) (recheck.Report, error) {
	var old []string
	for _, path := range slices.Sorted(maps.Keys(r.sums)) {
		data, err := fs.ReadFile(public, path)
		if err != nil && !errors.Is(err, fs.ErrNotExist) {
			return recheck.Report{}, err
		}
		if sha256.Sum256(data) != r.sums[path] {
			old = append(old, path)
		}
	}
	if len(old) > 0 {
		r.add(diag.Problem{File: name, Text: fmt.Sprintf("%d of %d pages are not those of your files: %s", len(old), len(r.sums), some(old)), Hint: "build again"})
	}
	again, problems := recheck.Site(public)
	for _, p := range problems {
		p.File = name + "/" + p.File
		r.add(p)
	}
	return again, nil
}

func (r *Report) add(p diag.Problem) {
	r.Findings = append(r.Findings, Finding{About: Published, Problem: p, Mend: true})
}
