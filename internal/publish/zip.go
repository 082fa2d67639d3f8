package publish

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"homebuild/internal/archive"
)

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

// fill writes the zip, and says in a person's words what keeps it from being made.
func fill(w io.Writer, folder string, files []File) error {
	careful := slices.Clone(files)
	for i, f := range files {
		careful[i].Render = func() ([]byte, error) { return render(f, nil) }
	}
	err := archive.Write(w, folder, careful)
	if broken := (*archive.RenderError)(nil); errors.As(err, &broken) {
		return &Error{Text: broken.Error(), Err: broken.Err}
	}
	return err
}
