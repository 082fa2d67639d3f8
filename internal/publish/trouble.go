package publish

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"syscall"
)

// Trouble is an error for the person who must act: lower case, no full stop,
// with the next step where there is one.
type Trouble struct {
	Text string
	Hint string
	Err  error // the cause; may be nil
}

func (t *Trouble) Error() string { return t.Text }

// Unwrap gives the cause.
func (t *Trouble) Unwrap() error { return t.Err }

// trouble explains an error of the disk.
func (r *run) trouble(name string, err error) error {
	return trouble(filepath.Join(r.dir, filepath.FromSlash(name)), err)
}

// trouble explains an error of the disk about a path.
func trouble(path string, err error) error {
	var known *Trouble
	if errors.As(err, &known) {
		return known
	}
	t := &Trouble{Text: fmt.Sprintf("%q cannot be written: %s", path, reason(err)), Err: err}
	switch {
	case errors.Is(err, syscall.ENOSPC), errors.Is(err, syscall.EDQUOT):
		t.Text = fmt.Sprintf("the disk is full: no room for %q", path)
		t.Hint = "make room and build again; every page on disk is whole"
	case errors.Is(err, syscall.EROFS):
		t.Text = fmt.Sprintf("%q is on a disk that cannot be written to", path)
		t.Hint = "choose another folder"
	case errors.Is(err, fs.ErrPermission):
		t.Text = fmt.Sprintf("%q may not be written to by you", path)
		t.Hint = "choose another folder, or ask whoever looks after the computer"
	case errors.Is(err, fs.ErrNotExist):
		t.Text = fmt.Sprintf("%q went away while the site was written", path)
		t.Hint = "is the folder on a stick or a shared disk? build again when it is back"
	}
	return t
}

// reason is what the system says, without the path in front.
func reason(err error) string {
	var at *fs.PathError
	if errors.As(err, &at) {
		return at.Err.Error()
	}
	var link *os.LinkError
	if errors.As(err, &link) {
		return link.Err.Error()
	}
	return err.Error()
}
