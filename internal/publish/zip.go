package publish

import (
	"archive/zip"
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"time"
)

// zipTime stands on every file of a zip: the earliest that the format can say,
// since a page knows no clock.
var zipTime = time.Date(1980, 1, 1, 0, 0, 0, 0, time.UTC)

// Zip writes the files into one zip, in a folder of the given name. The same
// files give the same bytes. An older zip is replaced only when the new one is
// whole; anything else of that name is left alone. It gives the size.
func Zip(name, folder string, files []File) (int64, error) {
	if err := checkPaths(files); err != nil {
		return 0, err
	}
	ready := func() error { return replaceable(name) }
	if err := ready(); err != nil { // before the work, too
		return 0, err
	}
	return replaceWhole(name, 0o644, func(w io.Writer) error { return fill(w, folder, files) }, ready)
}

// replaceable gives an error unless a name is free or holds a zip.
func replaceable(name string) error {
	if !strings.EqualFold(filepath.Ext(name), ".zip") {
		return &Error{Text: fmt.Sprintf("%q does not end in .zip", name), Hint: "give it a name such as " + filepath.Base(name) + ".zip"}
	}
	info, err := os.Lstat(name)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err != nil {
		return diskError(name, err)
	}
	if !info.Mode().IsRegular() {
		return &Error{Text: fmt.Sprintf("%q is not a plain file", name), Hint: "choose another name"}
	}
	file, err := os.Open(name)
	if err != nil {
		return diskError(name, err)
	}
	defer file.Close()
	begins := make([]byte, 4)
	if n, _ := file.Read(begins); n > 0 && !bytes.HasPrefix(begins[:n], []byte("PK")) {
		return &Error{Text: fmt.Sprintf("%q is no zip, so it was left as it is", name), Hint: "choose another name"}
	}
	return nil
}

// fill writes the files in the order of their paths.
func fill(to io.Writer, folder string, files []File) error {
	inOrder := slices.SortedFunc(slices.Values(files), func(a, b File) int { return strings.Compare(a.Path, b.Path) })
	archive := zip.NewWriter(to)
	for _, f := range inOrder {
		data, err := render(f)
		if err != nil {
			return &Error{Text: fmt.Sprintf("the page %q cannot be made: %v", f.Path, err), Err: err}
		}
		w, err := archive.CreateHeader(&zip.FileHeader{Name: path.Join(folder, f.Path), Method: zip.Deflate, Modified: zipTime})
		if err != nil {
			return err
		}
		if _, err := w.Write(data); err != nil {
			return err
		}
	}
	return archive.Close()
}
