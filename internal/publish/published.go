package publish

import (
	"errors"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
)

// Published lists what homebuild published in a folder and is still there, for
// another folder to take over: nothing where nothing was published. Nothing is
// written.
func Published(dir string) ([]File, error) {
	dir, err := filepath.Abs(dir)
	if err != nil {
		return nil, diskError(dir, err)
	}
	st := &state{dir: filepath.Join(filepath.Dir(dir), stateFolder), name: filepath.Base(dir), ours: manifest{}, stamps: stamps{}}
	st.root, err = os.OpenRoot(st.dir)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, diskError(st.dir, err)
	}
	defer st.root.Close()
	if err := st.read(); err != nil {
		return nil, err
	}
	root, err := os.OpenRoot(dir)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, diskError(dir, err)
	}
	defer root.Close()
	var out []File
	for _, name := range slices.Sorted(maps.Keys(st.ours)) {
		if info, err := root.Lstat(name); err == nil && info.Mode().IsRegular() {
			out = append(out, File{Path: name, Render: func() ([]byte, error) { return readIn(dir, name) }})
		}
	}
	return out, nil
}

// readIn reads a file of a folder, and follows no link out of it.
func readIn(dir, name string) ([]byte, error) {
	root, err := os.OpenRoot(dir)
	if err != nil {
		return nil, err
	}
	defer root.Close()
	return root.ReadFile(name)
}
