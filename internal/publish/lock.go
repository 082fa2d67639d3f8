package publish

import (
	"bufio"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"slices"
	"strings"
	"time"

	"github.com/gofrs/flock"
)

// take locks the folder against a second build: a build of the whole against
// all others, a build of a part against those of the whole and of the same
// part. The system lets go of a lock when a process ends, however it ends.
func (st *state) take(published string) error {
	whole := Shard{}
	if st.shard == whole {
		if err := st.lock(published, whole, (*flock.Flock).TryLock); err != nil {
			return err
		}
	} else {
		if err := st.lock(published, whole, (*flock.Flock).TryRLock); err != nil {
			return err
		}
		if err := st.lock(published, st.shard, (*flock.Flock).TryLock); err != nil {
			return err
		}
	}
	_, err := st.root.Lstat(st.file("running"))
	st.interrupted = err == nil
	// The clock tells a person who holds the lock; no published byte knows it.
	who := fmt.Sprintf("process %d since %s\n", os.Getpid(), time.Now().Format(time.DateTime))
	return st.write(st.file("running"), func(w *bufio.Writer) { _, _ = w.WriteString(who) })
}

func (st *state) lock(published string, shard Shard, try func(*flock.Flock) (bool, error)) error {
	name := fileOf(st.name, shard, "lock")
	if info, err := st.root.Lstat(name); err == nil && !info.Mode().IsRegular() {
		return &Error{Text: fmt.Sprintf("%q is not a plain file", st.path(name)), Hint: "take it away"}
	}
	lock := flock.New(st.path(name), flock.SetPermissions(0o644))
	got, err := try(lock)
	if err != nil {
		return diskError(st.path(name), err)
	}
	if !got {
		_ = lock.Close()
		return &Error{
			Text: fmt.Sprintf("another build is writing %q (%s)", published, st.who()),
			Hint: "wait until it is done, or end it",
		}
	}
	st.locks = append(st.locks, lock)
	return nil
}

// who says which builds have begun and not ended.
func (st *state) who() string {
	var all []string
	entries, _ := fs.ReadDir(st.root.FS(), ".")
	for _, e := range entries {
		rest, ours := strings.CutPrefix(e.Name(), st.name)
		_, ending, part := parseShardRecord(rest)
		if ours && (rest == ".running" || part && ending == "running") {
			who, _ := st.root.ReadFile(e.Name())
			all = append(all, strings.TrimSpace(string(who)))
		}
	}
	return strings.Join(all, "; ")
}

// close lets the locks go.
func (st *state) close() {
	var errs []error
	for _, lock := range slices.Backward(st.locks) {
		errs = append(errs, lock.Close())
	}
	_ = errors.Join(append(errs, st.root.Close())...)
}
