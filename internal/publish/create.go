package publish

import (
	"os"
	"path/filepath"
	"slices"
)

// Create puts new files into a folder, which it makes where there is none, and
// overwrites nothing. When one of the files is there already, nothing is
// written at all and the paths that are taken are given. What an error leaves
// unfinished is taken away again.
func Create(dir string, files []File) (taken []string, err error) {
	if err := checkPaths(files); err != nil {
		return nil, err
	}
	if err := makeFolder(dir); err != nil {
		return nil, err
	}
	root, err := os.OpenRoot(dir)
	if err != nil {
		return nil, diskError(dir, err)
	}
	defer root.Close()
	for _, f := range files {
		if _, err := root.Lstat(f.Path); err == nil {
			taken = append(taken, f.Path)
		}
	}
	if len(taken) > 0 {
		slices.Sort(taken)
		return taken, nil
	}
	folders := folders{root: root, dir: dir, known: map[string]error{}}
	for i, f := range files {
		if err := createOne(&folders, f); err != nil {
			for _, made := range files[:i] {
				_ = root.Remove(made.Path)
			}
			return nil, err
		}
	}
	return nil, nil
}

// createOne writes a file that must not be there yet. It reaches the disk
// before it is said to be written.
func createOne(folders *folders, f File) error {
	full := filepath.Join(folders.dir, filepath.FromSlash(f.Path))
	data, err := render(f, nil)
	if err != nil {
		return diskError(full, err)
	}
	if err := folders.need(f.Path); err != nil {
		return err
	}
	file, err := folders.root.OpenFile(f.Path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err != nil {
		return diskError(full, err)
	}
	_, err = file.Write(data)
	if err == nil {
		err = file.Sync()
	}
	if closed := file.Close(); err == nil {
		err = closed
	}
	if err != nil {
		_ = folders.root.Remove(f.Path)
		return diskError(full, err)
	}
	return nil
}
