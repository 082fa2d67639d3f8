package publish

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"strings"
	"time"

	"github.com/gofrs/flock"
)

// stateFolder stands next to the published folder.
const stateFolder = ".homebuild"

// record is what we know about a published folder from one run to the next.
type record struct {
	dir         string // of the state
	name        string // of the published folder: "public"
	root        *os.Root
	lock        *flock.Flock
	ours        manifest // what the last runs made
	interrupted bool     // the last run did not come to its end
}

// openRecord takes the lock and reads the record of the given name, or of the
// folder's.
func openRecord(published, name string) (*record, error) {
	if name == "" {
		name = filepath.Base(published)
	}
	rec := &record{dir: filepath.Join(filepath.Dir(published), stateFolder), name: name, ours: manifest{}}
	if err := makeFolder(rec.dir); err != nil {
		return nil, err
	}
	root, err := os.OpenRoot(rec.dir)
	if err != nil {
		return nil, trouble(rec.dir, err)
	}
	rec.root = root
	if err := rec.take(published); err != nil {
		root.Close()
		return nil, err
	}
	if err := rec.read(); err != nil {
		rec.close()
		return nil, err
	}
	return rec, nil
}

func (rec *record) file(ending string) string { return rec.name + "." + ending }
func (rec *record) path(name string) string   { return filepath.Join(rec.dir, name) }

// take locks the folder against a second build. The system lets go of the lock
// when a process ends, however it ends.
func (rec *record) take(published string) error {
	name := rec.file("lock")
	if info, err := rec.root.Lstat(name); err == nil && !info.Mode().IsRegular() {
		return &Trouble{Text: fmt.Sprintf("%q is not a plain file", rec.path(name)), Hint: "take it away"}
	}
	rec.lock = flock.New(rec.path(name), flock.SetPermissions(0o644))
	got, err := rec.lock.TryLock()
	if err != nil {
		return trouble(rec.path(name), err)
	}
	if !got {
		who, _ := rec.root.ReadFile(rec.file("running"))
		return &Trouble{
			Text: fmt.Sprintf("another build is writing %q (%s)", published, strings.TrimSpace(string(who))),
			Hint: "wait until it is done, or end it",
		}
	}
	_, err = rec.root.Lstat(rec.file("running"))
	rec.interrupted = err == nil
	// The clock tells a person who holds the lock; no published byte knows it.
	who := fmt.Sprintf("process %d since %s\n", os.Getpid(), time.Now().Format(time.DateTime))
	return rec.write(rec.file("running"), []byte(who))
}

// read takes in what is ours: the record, and what an interrupted run promised.
func (rec *record) read() error {
	for _, name := range []string{rec.file("manifest"), rec.file("next")} {
		data, err := rec.root.ReadFile(name)
		if errors.Is(err, fs.ErrNotExist) {
			continue
		}
		if err == nil {
			err = rec.ours.decode(data)
		}
		if err != nil {
			return &Trouble{
				Text: fmt.Sprintf("%q cannot be read: %v", rec.path(name), reason(err)),
				Hint: fmt.Sprintf("remove %q and the folder %q, and build again", rec.path(name), rec.name),
				Err:  err,
			}
		}
	}
	return nil
}

// promise writes down what the site will be, together with all that was ours:
// whatever stops the run, the next one still knows every file of ours.
func (rec *record) promise(next manifest) error {
	all := make(manifest, len(rec.ours)+len(next))
	for _, m := range []manifest{rec.ours, next} {
		for name, sums := range m {
			for _, s := range sums {
				all.add(name, s)
			}
		}
	}
	return rec.write(rec.file("next"), all.encode())
}

// keep makes the site's list the record: the run is done.
func (rec *record) keep(next manifest) error {
	if err := rec.write(rec.file("manifest"), next.encode()); err != nil {
		return err
	}
	if err := rec.root.Remove(rec.file("next")); err != nil {
		return trouble(rec.path(rec.file("next")), err)
	}
	return rec.done()
}

// done takes back the sign of a running build: nothing half made is left.
func (rec *record) done() error {
	if err := rec.root.Remove(rec.file("running")); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return trouble(rec.path(rec.file("running")), err)
	}
	return nil
}

// saveEdited keeps a copy of bytes that someone put into a file of ours and
// says where.
func (rec *record) saveEdited(name string, data []byte) (string, error) {
	target := path.Join("edited", rec.name, name+"."+sumOf(data).String()[:8])
	if err := rec.root.MkdirAll(path.Dir(target), 0o755); err != nil {
		return "", trouble(rec.path(path.Dir(target)), err)
	}
	return rec.path(filepath.FromSlash(target)), rec.write(target, data)
}

// write puts a whole file in place at once.
func (rec *record) write(name string, data []byte) error {
	err := rec.root.WriteFile(part(name), data, 0o644)
	if err == nil {
		err = rec.root.Rename(part(name), name)
	}
	if err != nil {
		_ = rec.root.Remove(part(name))
		return trouble(rec.path(name), err)
	}
	return nil
}

// close lets the lock go.
func (rec *record) close() {
	_ = rec.lock.Close()
	rec.root.Close()
}
