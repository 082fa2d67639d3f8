package publish

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
)

// Change is a file of a person's folder that is to hold something else: nil is no
// file.
type Change struct {
	Path          string // slash separated
	Before, After []byte
}

// Changed says that a file is another by now than the one that was read.
type Changed struct{ Path string }

func (e *Changed) Error() string { return fmt.Sprintf("%q was changed by another program", e.Path) }

// ChangeFiles changes files of a folder, each all at once or not at all. When one of
// them is not as it was before, nothing is written: the error is a *Changed. Paths
// lead through no link.
func ChangeFiles(dir string, changes []Change) error {
	root, err := os.OpenRoot(dir)
	if err != nil {
		return diskError(dir, err)
	}
	defer root.Close()
	folders := &folders{root: root, dir: dir, known: map[string]error{}}
	for _, c := range changes {
		if !validPath(c.Path) {
			return &Error{Text: fmt.Sprintf("%q cannot be the path of a file", c.Path)}
		}
		if err := unchanged(root, folders, c); err != nil {
			return err
		}
	}
	for _, c := range changes {
		if err := change(root, folders, dir, c); err != nil {
			return err
		}
	}
	return nil
}

// unchanged wants a file as it was read.
func unchanged(root *os.Root, folders *folders, c Change) error {
	if err := folders.there(c.Path); err != nil {
		if c.Before == nil && errors.Is(err, fs.ErrNotExist) {
			return nil // its folder will be made
		}
		return err
	}
	info, err := root.Lstat(c.Path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		if c.Before != nil {
			return &Changed{c.Path}
		}
		return nil
	case err != nil:
		return diskError(c.Path, err)
	case !info.Mode().IsRegular():
		return &Error{Text: fmt.Sprintf("%q is not a plain file", c.Path)}
	case c.Before == nil || info.Size() != int64(len(c.Before)): // it may be too large to read
		return &Changed{c.Path}
	}
	now, err := root.ReadFile(c.Path)
	if err != nil {
		return diskError(c.Path, err)
	}
	if !bytes.Equal(now, c.Before) {
		return &Changed{c.Path}
	}
	return nil
}

func change(root *os.Root, folders *folders, dir string, c Change) error {
	name := filepath.Join(dir, filepath.FromSlash(c.Path))
	switch {
	case c.After == nil && c.Before == nil:
		return nil
	case c.After == nil:
		if err := root.Remove(c.Path); err != nil {
			return diskError(name, err)
		}
		return nil
	case c.Before == nil:
		if err := folders.need(c.Path); err != nil {
			return err
		}
		return createOne(folders, File{Path: c.Path, Render: func() ([]byte, error) { return c.After, nil }})
	}
	return Replace(name, c.Before, c.After)
}
