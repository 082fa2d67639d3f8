package publish

import (
	"bufio"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"strings"
	"time"

	"github.com/gofrs/flock"
)

// unlocker is a lock that is held.
type unlocker interface{ Close() error }

// take locks the folder against a second build: a build of the whole against
// all others, a build of a part against those of the whole and of the same
// part. The system lets go of a lock when a process ends, however it ends.
func (rec *record) take(published string) error {
	whole := Shard{}
	if rec.shard == whole {
		if err := rec.lock(published, whole, (*flock.Flock).TryLock); err != nil {
			return err
		}
	} else {
		if err := rec.lock(published, whole, (*flock.Flock).TryRLock); err != nil {
			return err
		}
		if err := rec.lock(published, rec.shard, (*flock.Flock).TryLock); err != nil {
			return err
		}
	}
	_, err := rec.root.Lstat(rec.file("running"))
	rec.interrupted = err == nil
	// The clock tells a person who holds the lock; no published byte knows it.
	who := fmt.Sprintf("process %d since %s\n", os.Getpid(), time.Now().Format(time.DateTime))
	return rec.write(rec.file("running"), func(w *bufio.Writer) { _, _ = w.WriteString(who) })
}

func (rec *record) lock(published string, shard Shard, try func(*flock.Flock) (bool, error)) error {
	name := fileOf(rec.name, shard, "lock")
	if info, err := rec.root.Lstat(name); err == nil && !info.Mode().IsRegular() {
		return &Trouble{Text: fmt.Sprintf("%q is not a plain file", rec.path(name)), Hint: "take it away"}
	}
	lock := flock.New(rec.path(name), flock.SetPermissions(0o644))
	got, err := try(lock)
	if err != nil {
		return trouble(rec.path(name), err)
	}
	if !got {
		_ = lock.Close()
		return &Trouble{
			Text: fmt.Sprintf("another build is writing %q (%s)", published, rec.who()),
			Hint: "wait until it is done, or end it",
		}
	}
	rec.locks = append(rec.locks, lock)
	return nil
}

// who says which builds have begun and not ended.
func (rec *record) who() string {
	var all []string
	entries, _ := fs.ReadDir(rec.root.FS(), ".")
	for _, e := range entries {
		rest, ours := strings.CutPrefix(e.Name(), rec.name)
		_, ending, part := parseShardRecord(rest)
		if ours && (rest == ".running" || part && ending == "running") {
			who, _ := rec.root.ReadFile(e.Name())
			all = append(all, strings.TrimSpace(string(who)))
		}
	}
	return strings.Join(all, "; ")
}

// close lets the locks go.
func (rec *record) close() {
	var errs []error
	for i := len(rec.locks) - 1; i >= 0; i-- {
		errs = append(errs, rec.locks[i].Close())
	}
	_ = errors.Join(append(errs, rec.root.Close())...)
}
