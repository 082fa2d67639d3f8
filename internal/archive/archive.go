// Package archive reads and writes zips: those of pages, and those of a desk's
// files. Files come as values and zips go out as bytes.
package archive

import (
	"archive/zip"
	"fmt"
	"io"
	"path"
	"slices"
	"strings"
	"time"

	"homebuild/internal/output"
)

// Earliest stands on every file of a zip: the earliest day that the format can say,
// since a page knows no clock.
var Earliest = time.Date(1980, 1, 1, 0, 0, 0, 0, time.UTC)

// RenderError says which file could not be made.
type RenderError struct {
	Path string
	Err  error
}

func (e *RenderError) Error() string {
	return fmt.Sprintf("the page %q cannot be made: %v", e.Path, e.Err)
}

func (e *RenderError) Unwrap() error { return e.Err }

// Write writes the files into a zip, in a folder of the given name, in the order of
// their paths. The same files give the same bytes.
func Write(to io.Writer, folder string, files []output.File) error {
	inOrder := slices.SortedFunc(slices.Values(files), func(a, b output.File) int { return strings.Compare(a.Path, b.Path) })
	archive := zip.NewWriter(to)
	for _, f := range inOrder {
		data, err := f.Render()
		if err != nil {
			return &RenderError{f.Path, err}
		}
		w, err := archive.CreateHeader(&zip.FileHeader{Name: path.Join(folder, f.Path), Method: zip.Deflate, Modified: Earliest})
		if err != nil {
			return err
		}
		if _, err := w.Write(data); err != nil {
			return err
		}
	}
	return archive.Close()
}
