package publish

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"sync"
)

const (
	tempPrefix = "."
	tempSuffix = ".homebuild-part"
	maxBase    = 200 // letters of a file's name, so that the temporary name fits too
)

// tempName is the temporary name beside a file's place. It is fixed, so that
// what a kill has left is overwritten and never piles up.
func tempName(name string) string {
	dir, base := path.Split(name)
	return dir + tempPrefix + base + tempSuffix
}

// finalName is the path that a temporary name stands for.
func finalName(name string) string {
	dir, base := path.Split(name)
	return dir + strings.TrimSuffix(strings.TrimPrefix(base, tempPrefix), tempSuffix)
}

func isTemp(base string) bool {
	return strings.HasPrefix(base, tempPrefix) && strings.HasSuffix(base, tempSuffix)
}

// checkPaths refuses a list that some system could not hold as it is meant:
// that is a mistake of the caller.
func checkPaths(files []File) error {
	if len(files) == 0 {
		return &Error{Text: "there is nothing to publish"}
	}
	seen := make(map[string]bool, len(files)) // by small letters
	for _, f := range files {
		if !validPath(f.Path) {
			return &Error{Text: fmt.Sprintf("%q cannot be the path of a published file", f.Path)}
		}
		if folded := strings.ToLower(f.Path); seen[folded] {
			return &Error{Text: fmt.Sprintf("two published files are named %q", f.Path)}
		} else {
			seen[folded] = true
		}
	}
	for _, f := range files {
		for dir := path.Dir(f.Path); dir != "."; dir = path.Dir(dir) {
			if seen[strings.ToLower(dir)] {
				return &Error{Text: fmt.Sprintf("%q is to be a file and a folder", dir)}
			}
		}
	}
	return nil
}

// validPath reports whether a path stays within the folder on every system.
func validPath(name string) bool {
	if !fs.ValidPath(name) || name == "." || !filepath.IsLocal(filepath.FromSlash(name)) {
		return false
	}
	if len(path.Base(name)) > maxBase || isTemp(path.Base(name)) {
		return false
	}
	return !strings.ContainsFunc(name, func(c rune) bool {
		return c < 0x20 || c == 0x7f || strings.ContainsRune(`\:*?"<>|`, c)
	})
}

// makeFolder makes the folder to publish into. A link there is refused: it
// would lead our writing somewhere that nobody named.
func makeFolder(dir string) error {
	info, err := os.Lstat(dir)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		err := os.MkdirAll(dir, 0o755)
		if errors.Is(err, fs.ErrNotExist) {
			return &Error{Text: fmt.Sprintf("%q cannot be made: %s", dir, reason(err)), Hint: "choose another folder", Err: err}
		}
		if err != nil {
			return diskError(dir, err)
		}
		return nil
	case err != nil:
		return diskError(dir, err)
	case info.Mode()&fs.ModeSymlink != 0:
		return &Error{Text: fmt.Sprintf("%q is a link to another place", dir), Hint: "take the link away, or choose another folder"}
	case !info.IsDir():
		return &Error{Text: fmt.Sprintf("%q is a file, and a folder is needed there", dir), Hint: "move the file, or choose another folder"}
	}
	return nil
}

// folders makes and remembers the folders within the folder.
type folders struct {
	root *os.Root
	dir  string

	mu    sync.Mutex
	known map[string]error // nil for a folder that is there
	made  []string         // by this run, outer ones first
	open  map[string]*os.Root
}

// mostOpen is how many folders are open at a time: those of the languages, into which
// most pages go.
const mostOpen = 64

// at gives a file's folder, which must be there, and the name of the file in it.
func (f *folders) at(name string) (in *os.Root, base string) {
	dir := path.Dir(name)
	if dir == "." {
		return f.root, name
	}
	f.mu.Lock()
	defer f.mu.Unlock()
	if in := f.open[dir]; in != nil {
		return in, path.Base(name)
	}
	if len(f.open) == mostOpen {
		return f.root, name
	}
	in, err := f.root.OpenRoot(dir)
	if err != nil {
		return f.root, name // what is wrong shows when the file is opened
	}
	if f.open == nil {
		f.open = map[string]*os.Root{}
	}
	f.open[dir] = in
	return in, path.Base(name)
}

// fresh reports whether a file's folder was made by this run, so that nobody's file
// can be in the way.
func (f *folders) fresh(name string) bool {
	f.mu.Lock()
	defer f.mu.Unlock()
	return slices.Contains(f.made, path.Dir(name))
}

// close closes the folders that are open.
func (f *folders) close() {
	f.mu.Lock()
	defer f.mu.Unlock()
	for _, in := range f.open {
		in.Close()
	}
	f.open = nil
}

// need makes sure that a file's folder is there and reached through no link.
func (f *folders) need(name string) error {
	f.mu.Lock()
	defer f.mu.Unlock()
	return f.walk(path.Dir(name), true)
}

// there is like need, but makes nothing.
func (f *folders) there(name string) error {
	f.mu.Lock()
	defer f.mu.Unlock()
	return f.walk(path.Dir(name), false)
}

func (f *folders) walk(dir string, create bool) error {
	if dir == "." {
		return nil
	}
	if err, ok := f.known[dir]; ok {
		return err
	}
	if err := f.walk(path.Dir(dir), create); err != nil {
		return err
	}
	err := f.look(dir, create)
	if create || err == nil {
		f.known[dir] = err
	}
	return err
}

func (f *folders) look(dir string, create bool) error {
	full := filepath.Join(f.dir, filepath.FromSlash(dir))
	info, err := f.root.Lstat(dir)
	switch {
	case errors.Is(err, fs.ErrNotExist) && create:
		err := f.root.Mkdir(dir, 0o755)
		if errors.Is(err, fs.ErrExist) { // by the build of another part, since we looked
			return f.look(dir, create)
		}
		if err != nil {
			return diskError(full, err)
		}
		f.made = append(f.made, dir)
		return nil
	case err != nil:
		return diskError(full, err)
	case info.Mode()&fs.ModeSymlink != 0:
		return &Error{Text: fmt.Sprintf("%q is a link to another place", full), Hint: "take the link away; pages are not written through links"}
	case !info.IsDir():
		return &Error{Text: fmt.Sprintf("%q is a file, and a folder is needed there", full), Hint: "move the file away"}
	}
	return nil
}
