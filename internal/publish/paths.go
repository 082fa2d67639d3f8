package publish

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"strings"
	"sync"
)

const (
	partPrefix = "."
	partSuffix = ".homebuild-part"
	maxBase    = 200 // letters of a file's name, so that a part's name fits too
)

// part is the temporary name beside a file's place. It is fixed, so that a
// part left by a kill is overwritten and never piles up.
func part(name string) string {
	dir, base := path.Split(name)
	return dir + partPrefix + base + partSuffix
}

// whole is the path whose part has a temporary name.
func whole(name string) string {
	dir, base := path.Split(name)
	return dir + strings.TrimSuffix(strings.TrimPrefix(base, partPrefix), partSuffix)
}

func isPart(base string) bool {
	return strings.HasPrefix(base, partPrefix) && strings.HasSuffix(base, partSuffix)
}

// checkPaths refuses a list that some system could not hold as it is meant:
// that is a mistake of the caller.
func checkPaths(files []File) error {
	if len(files) == 0 {
		return &Trouble{Text: "there is nothing to publish"}
	}
	seen := make(map[string]bool, len(files)) // by small letters
	for _, f := range files {
		if !goodPath(f.Path) {
			return &Trouble{Text: fmt.Sprintf("%q cannot be the path of a published file", f.Path)}
		}
		if folded := strings.ToLower(f.Path); seen[folded] {
			return &Trouble{Text: fmt.Sprintf("two published files are named %q", f.Path)}
		} else {
			seen[folded] = true
		}
	}
	for _, f := range files {
		for dir := path.Dir(f.Path); dir != "."; dir = path.Dir(dir) {
			if seen[strings.ToLower(dir)] {
				return &Trouble{Text: fmt.Sprintf("%q is to be a file and a folder", dir)}
			}
		}
	}
	return nil
}

// goodPath reports whether a path stays within the folder on every system.
func goodPath(name string) bool {
	if !fs.ValidPath(name) || name == "." || !filepath.IsLocal(filepath.FromSlash(name)) {
		return false
	}
	if len(path.Base(name)) > maxBase || isPart(path.Base(name)) {
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
			return &Trouble{Text: fmt.Sprintf("%q cannot be made: %s", dir, reason(err)), Hint: "choose another folder", Err: err}
		}
		if err != nil {
			return trouble(dir, err)
		}
		return nil
	case err != nil:
		return trouble(dir, err)
	case info.Mode()&fs.ModeSymlink != 0:
		return &Trouble{Text: fmt.Sprintf("%q is a link to another place", dir), Hint: "take the link away, or choose another folder"}
	case !info.IsDir():
		return &Trouble{Text: fmt.Sprintf("%q is a file, and a folder is needed there", dir), Hint: "move the file, or choose another folder"}
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
			return trouble(full, err)
		}
		f.made = append(f.made, dir)
		return nil
	case err != nil:
		return trouble(full, err)
	case info.Mode()&fs.ModeSymlink != 0:
		return &Trouble{Text: fmt.Sprintf("%q is a link to another place", full), Hint: "take the link away; pages are not written through links"}
	case !info.IsDir():
		return &Trouble{Text: fmt.Sprintf("%q is a file, and a folder is needed there", full), Hint: "move the file away"}
	}
	return nil
}
