// Package deskfolder keeps the files of a desk in a folder on the disk: those that
// pages are made from, and no others.
package deskfolder

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"homebuild/internal/desk"
	"homebuild/internal/publish"
	"homebuild/internal/school"
	"homebuild/internal/textfile"
)

// Sources are the files and folders that the desk reads and writes: those that pages
// are made from, and what tells how to go on.
func Sources() []string { return append(school.Sources(), "README.txt") }

// Folder is a folder on the disk as the desk keeps its files there.
type Folder string

// Name is the whole path.
func (f Folder) Name() string {
	whole, err := filepath.Abs(string(f))
	if err != nil {
		return string(f)
	}
	return whole
}

// Read reads the files of the desk.
func (f Folder) Read() (desk.Files, error) {
	root, err := os.OpenRoot(string(f))
	if err != nil {
		return nil, err
	}
	defer root.Close()
	out := desk.Files{}
	for _, source := range Sources() {
		err := fs.WalkDir(root.FS(), source, func(name string, entry fs.DirEntry, err error) error {
			switch {
			case errors.Is(err, fs.ErrNotExist), err == nil && entry.IsDir():
				return nil
			case err != nil:
				return err
			}
			if text, problem := textfile.Read(root.FS(), name); problem == nil {
				out[name] = text
			}
			return nil
		})
		if err != nil {
			return nil, err
		}
	}
	return out, nil
}

// Write changes files of the desk, and no others of the folder.
func (f Folder) Write(changes, before desk.Changes) error {
	root, err := os.OpenRoot(string(f))
	if err != nil {
		return err
	}
	defer root.Close()
	var all []publish.Change
	for name, text := range changes {
		if top, _, _ := strings.Cut(name, "/"); !slices.Contains(Sources(), top) {
			return errors.New("the desk has no file " + name)
		}
		change := publish.Change{Path: name}
		if text != nil {
			change.After = []byte(*text)
		}
		// A text may stand on the disk with the line ends of another computer; and
		// without any word of what was there, she wants hers in its place.
		now, problem := textfile.Read(root.FS(), name)
		switch was := before[name]; {
		case problem == nil && (before == nil || was != nil && *was == now):
			if change.Before, err = root.ReadFile(name); err != nil {
				return err
			}
		case was != nil:
			change.Before = []byte(*was)
		}
		all = append(all, change)
	}
	err = publish.ChangeFiles(string(f), all)
	if changed := (*publish.Changed)(nil); errors.As(err, &changed) {
		return desk.ErrChanged
	}
	return err
}
