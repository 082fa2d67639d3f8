package publish

import (
	"archive/zip"
	"bytes"
	"cmp"
	"errors"
	"fmt"
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
	if err := replaceable(name); err != nil {
		return 0, err
	}
	temp, err := os.CreateTemp(filepath.Dir(name), partPrefix+"*"+partSuffix)
	if err != nil {
		return 0, trouble(name, err)
	}
	defer os.Remove(temp.Name()) // gone already when all went well
	defer temp.Close()
	if err := fill(temp, folder, files); err != nil {
		return 0, trouble(name, err)
	}
	info, err := temp.Stat()
	if err != nil {
		return 0, trouble(name, err)
	}
	if err := errors.Join(temp.Chmod(0o644), temp.Sync(), temp.Close()); err != nil {
		return 0, trouble(name, err)
	}
	if err := os.Rename(temp.Name(), name); err != nil {
		return 0, trouble(name, err)
	}
	return info.Size(), nil
}

// replaceable reports trouble unless a name is free or holds a zip.
func replaceable(name string) error {
	if !strings.EqualFold(filepath.Ext(name), ".zip") {
		return &Trouble{Text: fmt.Sprintf("%q does not end in .zip", name), Hint: "give it a name such as " + filepath.Base(name) + ".zip"}
	}
	info, err := os.Lstat(name)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err != nil {
		return trouble(name, err)
	}
	if !info.Mode().IsRegular() {
		return &Trouble{Text: fmt.Sprintf("%q is not a plain file", name), Hint: "choose another name"}
	}
	file, err := os.Open(name)
	if err != nil {
		return trouble(name, err)
	}
	defer file.Close()
	begins := make([]byte, 4)
	if n, _ := file.Read(begins); n > 0 && !bytes.HasPrefix(begins[:n], []byte("PK")) {
		return &Trouble{Text: fmt.Sprintf("%q is no zip, so it was left as it is", name), Hint: "choose another name"}
	}
	return nil
}

// fill writes the files in the order of their paths.
func fill(to *os.File, folder string, files []File) error {
	inOrder := slices.SortedFunc(slices.Values(files), func(a, b File) int { return cmp.Compare(a.Path, b.Path) })
	archive := zip.NewWriter(to)
	for _, f := range inOrder {
		data, err := render(f)
		if err != nil {
			return &Trouble{Text: fmt.Sprintf("the page %q cannot be made: %v", f.Path, err), Err: err}
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
