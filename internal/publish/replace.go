package publish

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// Replace gives one file that a person keeps other bytes, all at once or not at
// all. before is what was read: a file that holds something else by now is
// being written by somebody, and stays as it is.
func Replace(name string, before, after []byte) error {
	info, err := os.Lstat(name)
	if err != nil {
		return diskError(name, err)
	}
	if !info.Mode().IsRegular() {
		return &Error{Text: fmt.Sprintf("%q is not a plain file", name), Hint: "give the file itself"}
	}
	_, err = replaceWhole(name, info.Mode().Perm(), func(w io.Writer) error {
		_, err := w.Write(after)
		return err
	}, func() error {
		now, err := os.ReadFile(name)
		if err == nil && !bytes.Equal(now, before) {
			err = &Error{Text: fmt.Sprintf("%q was saved by somebody at this very moment", name), Hint: "run the command again"}
		}
		return err
	})
	return err
}

// Put creates a file in a folder that a person keeps, or gives the one that is
// there other bytes.
func Put(dir string, f File) error {
	name := filepath.Join(dir, filepath.FromSlash(f.Path))
	before, err := os.ReadFile(name)
	if errors.Is(err, fs.ErrNotExist) {
		_, err = Create(dir, []File{f})
		return err
	}
	if err != nil {
		return diskError(name, err)
	}
	after, err := f.Render()
	if err != nil {
		return err
	}
	return Replace(name, before, after)
}

// replaceWhole fills a temporary file beside its place, has it reach the disk,
// and renames it into place when ready, asked last, has no objection. It gives
// the size.
func replaceWhole(name string, mode fs.FileMode, fill func(io.Writer) error, ready func() error) (int64, error) {
	temp, err := os.CreateTemp(filepath.Dir(name), tempPrefix+"*"+tempSuffix)
	if err != nil {
		return 0, diskError(name, err)
	}
	defer os.Remove(temp.Name()) // gone already when all went well
	defer temp.Close()
	if err := fill(temp); err != nil {
		return 0, diskError(name, err)
	}
	info, err := temp.Stat()
	if err := errors.Join(err, temp.Chmod(mode), temp.Sync(), temp.Close()); err != nil {
		return 0, diskError(name, err)
	}
	if err := ready(); err != nil {
		return 0, diskError(name, err)
	}
	if err := os.Rename(temp.Name(), name); err != nil {
		return 0, diskError(name, err)
	}
	return info.Size(), nil
}
