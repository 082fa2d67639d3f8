package publish

import (
	"bufio"
	"errors"
	"io"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
)

// Adoption is what a folder holds that homebuild made and its record does not know,
// because the record was lost or the folder came from elsewhere.
type Adoption struct {
	Again []string // made now, too: the next Write puts its own bytes there
	Gone  []string // no longer made: the next Write removes them
	Kept  []string // no longer made, and left where they are: see Options.Keep
}

// Len is the number of files.
func (a Adoption) Len() int { return len(a.Again) + len(a.Gone) + len(a.Kept) }

// headSize is how much of a file tells what it is.
const headSize = 1000

// Unrecorded finds the files of a folder that the record does not know and that are
// homebuild's: those at the paths of the files, and those that isOurs says from their
// first bytes. Nothing is written.
func Unrecorded(dir string, files []File, o Options, isOurs func(head []byte) bool) (Adoption, error) {
	made := make(map[string]bool, len(files))
	for _, f := range files {
		made[f.Path] = true
	}
	var a Adoption
	known, err := recorded(dir)
	if err != nil {
		return a, err
	}
	err = walk(dir, func(name string, head func() ([]byte, error)) error {
		_, is := known[name]
		if is || isTemp(path.Base(name)) {
			return nil
		}
		if made[name] {
			a.Again = append(a.Again, name)
			return nil
		}
		first, err := head()
		switch {
		case err != nil || !isOurs(first):
			return err
		case o.Keep != nil && o.Keep(name):
			a.Kept = append(a.Kept, name)
		default:
			a.Gone = append(a.Gone, name)
		}
		return nil
	})
	if err != nil {
		return a, diskError(dir, err)
	}
	return a, nil
}

// Adopt puts files into the record as they are: from now on they are ours.
func Adopt(dir string, a Adoption) error {
	dir, err := filepath.Abs(dir)
	if err != nil {
		return diskError(dir, err)
	}
	st, err := openState(dir, "", Shard{})
	if err != nil {
		return err
	}
	defer st.close()
	for _, name := range slices.Concat(a.Again, a.Gone, a.Kept) {
		data, err := readIn(dir, filepath.FromSlash(name))
		if err != nil {
			return diskError(filepath.Join(dir, name), err)
		}
		st.ours.add(name, sumOf(data))
	}
	return st.commit(st.ours.encode, func(*bufio.Writer) {}) // without stamps all is compared once
}

// recorded is what the record of a folder says is ours; nothing where there is none.
func recorded(dir string) (manifest, error) {
	published, err := Published(dir)
	known := manifest{}
	for _, f := range published {
		known[f.Path] = nil
	}
	return known, err
}

// walk calls visit for each plain file below a folder, in the order of their paths; a
// folder that is not there holds none.
func walk(dir string, visit func(name string, head func() ([]byte, error)) error) error {
	root, err := os.OpenRoot(dir)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err != nil {
		return err
	}
	defer root.Close()
	return fs.WalkDir(root.FS(), ".", func(name string, entry fs.DirEntry, err error) error {
		if err != nil || !entry.Type().IsRegular() {
			return err
		}
		return visit(name, func() ([]byte, error) {
			file, err := root.Open(name)
			if err != nil {
				return nil, err
			}
			defer file.Close()
			return io.ReadAll(io.LimitReader(file, headSize))
		})
	})
}
