package publish

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"syscall"
)

// Error is an error for the person who must act: lower case, no full stop,
// with the next step where there is one.
type Error struct {
	Text string
	Hint string
	Err  error // the cause; may be nil
}

func (e *Error) Error() string { return e.Text }

// Unwrap gives the cause.
func (e *Error) Unwrap() error { return e.Err }

// diskError explains an error of the disk.
func (r *run) diskError(name string, err error) error {
	return diskError(filepath.Join(r.dir, filepath.FromSlash(name)), err)
}

// diskError explains an error of the disk about a path.
func diskError(path string, err error) error {
	var known *Error
	if errors.As(err, &known) {
		return known
	}
	e := &Error{Text: fmt.Sprintf("%q cannot be written: %s", path, reason(err)), Err: err}
	switch {
	case errors.Is(err, syscall.ENOSPC), errors.Is(err, syscall.EDQUOT):
		e.Text = fmt.Sprintf("the disk is full: no room for %q", path)
		e.Hint = "make room, and give the same command again; what is on the disk is whole"
	case errors.Is(err, syscall.EROFS):
		e.Text = fmt.Sprintf("%q is on a disk that cannot be written to", path)
		e.Hint = "choose another folder"
	case errors.Is(err, fs.ErrPermission):
		e.Text = fmt.Sprintf("%q may not be written to by you", path)
		e.Hint = "choose another folder, or ask whoever looks after the computer"
	case errors.Is(err, fs.ErrNotExist):
		e.Text = fmt.Sprintf("%q went away while the site was written", path)
		e.Hint = "is the folder on a stick or a shared disk? build again when it is back"
	}
	return e
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
