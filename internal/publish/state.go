package publish

import (
	"bufio"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"strings"

	"github.com/gofrs/flock"
)

// stateFolder stands next to the published folder.
const stateFolder = ".homebuild"

// state is what we know about a published folder from one run to the next. Each
// of its files is named by the folder and, for a part of a site, the part:
//
//	public.manifest           what is ours
//	public.3-of-8.manifest    the same, of a part
//	public.next               the journal: what will be ours when this run ends
//	public.seen               stamps, to save work
//	public.3-of-8.from        what the part is made from: see origin
//	public.running            a run has begun and not ended
//	public.lock
type state struct {
	dir         string // of the state
	name        string // of the published folder: "public"
	shard       Shard
	root        *os.Root
	locks       []*flock.Flock
	ours        manifest // what the last runs made
	stamps      stamps
	shards      []string // the state files of parts
	interrupted bool     // the last run did not come to its end
}

// openState takes the lock and reads the state of the given name, or of the
// folder's.
func openState(published, name string, shard Shard) (*state, error) {
	if name == "" {
		name = filepath.Base(published)
	}
	st := &state{dir: filepath.Join(filepath.Dir(published), stateFolder), name: name, shard: shard, ours: manifest{}, stamps: stamps{}}
	if err := makeFolder(st.dir); err != nil {
		return nil, err
	}
	root, err := os.OpenRoot(st.dir)
	if err != nil {
		return nil, diskError(st.dir, err)
	}
	st.root = root
	if err := st.take(published); err != nil {
		st.close()
		return nil, err
	}
	if err := st.read(); err != nil {
		st.close()
		return nil, err
	}
	return st, nil
}

// file is the name of one of the state's own files.
func (st *state) file(ending string) string { return fileOf(st.name, st.shard, ending) }

func fileOf(name string, shard Shard, ending string) string {
	if shard.whole() {
		return name + "." + ending
	}
	return name + "." + shard.String() + "." + ending
}

func (st *state) path(name string) string { return filepath.Join(st.dir, name) }

// read takes in what is ours: the manifest, and the journal of an interrupted
// run. The manifest of a part is newer than that of the whole, which takes it in
// and removes it; so where a part has one, it alone says what is ours.
func (st *state) read() error {
	parts, err := st.findShards()
	if err != nil {
		return err
	}
	wholeToo := func(path string) bool {
		for s, done := range parts {
			if done && s.Owns(path) {
				return false
			}
		}
		return st.shard.Owns(path)
	}
	if err := st.readManifest(fileOf(st.name, Shard{}, "manifest"), wholeToo); err != nil {
		return err
	}
	if err := st.readManifest(fileOf(st.name, Shard{}, "next"), st.shard.Owns); err != nil {
		return err
	}
	st.readStamps(fileOf(st.name, Shard{}, "seen"))
	for s := range parts {
		if !st.shard.whole() && s != st.shard {
			continue
		}
		for _, ending := range []string{"manifest", "next"} {
			if err := st.readManifest(fileOf(st.name, s, ending), s.Owns); err != nil {
				return err
			}
		}
		st.readStamps(fileOf(st.name, s, "seen"))
	}
	return nil
}

// findShards lists the parts that have a state, and whether a build of them was
// ever done.
func (st *state) findShards() (map[Shard]bool, error) {
	entries, err := fs.ReadDir(st.root.FS(), ".")
	if err != nil {
		return nil, diskError(st.dir, err)
	}
	parts := map[Shard]bool{}
	for _, e := range entries {
		rest, ours := strings.CutPrefix(e.Name(), st.name)
		s, ending, ok := parseShardRecord(rest)
		if !ours || !ok {
			continue
		}
		st.shards = append(st.shards, e.Name())
		switch {
		case ending == "running" && (st.shard.whole() || s == st.shard):
			st.interrupted = true
		case ending == "manifest" || ending == "next":
			parts[s] = parts[s] || ending == "manifest"
			if !st.shard.whole() && s.N != st.shard.N {
				return nil, &Error{
					Text: fmt.Sprintf("the site in %q was made in %d parts, and this is one of %d", st.name, s.N, st.shard.N),
					Hint: "build it as a whole once, or into another folder",
				}
			}
		}
	}
	return parts, nil
}

func (st *state) readManifest(name string, owns func(path string) bool) error {
	file, err := st.root.Open(name)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err == nil {
		err = st.ours.decode(file, owns)
		file.Close()
	}
	if err != nil {
		return &Error{
			Text: fmt.Sprintf("%q cannot be read: %v", st.path(name), reason(err)),
			Hint: fmt.Sprintf("remove %q and the folder %q, and build again", st.path(name), st.name),
			Err:  err,
		}
	}
	return nil
}

func (st *state) readStamps(name string) {
	file, err := st.root.Open(name)
	if err != nil {
		return
	}
	defer file.Close()
	if info, err := file.Stat(); err == nil {
		st.stamps.decode(file, info.ModTime())
	}
}

// writeJournal writes down what the site will be, together with all that was
// ours: whatever stops the run, the next one still knows every file of ours.
func (st *state) writeJournal(next func(*bufio.Writer)) error {
	return st.write(st.file("next"), func(w *bufio.Writer) {
		st.ours.encode(w)
		next(w)
	})
}

// commit makes the site's list the manifest: the run is done. What a build of
// the whole has taken in of its parts is removed.
func (st *state) commit(next, stamps func(*bufio.Writer)) error {
	if err := st.write(st.file("manifest"), next); err != nil {
		return err
	}
	if err := st.write(st.file("seen"), stamps); err != nil {
		return err
	}
	done := []string{st.file("next"), st.file("running")}
	if st.shard.whole() {
		done = append(st.shards, done...)
	}
	for _, name := range done {
		if err := st.remove(name); err != nil {
			return err
		}
	}
	return nil
}

// remove takes one of the state's own files away, if it is there.
func (st *state) remove(name string) error {
	if err := st.root.Remove(name); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return diskError(st.path(name), err)
	}
	return nil
}

// saveEdited keeps a copy of bytes that someone put into a file of ours and
// says where.
func (st *state) saveEdited(name string, data []byte) (string, error) {
	target := path.Join("edited", st.name, name+"."+sumOf(data).String()[:8])
	if err := st.root.MkdirAll(path.Dir(target), 0o755); err != nil {
		return "", diskError(st.path(path.Dir(target)), err)
	}
	return st.path(filepath.FromSlash(target)), st.write(target, func(w *bufio.Writer) { _, _ = w.Write(data) })
}

// write puts a whole file in place at once. What fill cannot write, w keeps the
// error of.
func (st *state) write(name string, fill func(w *bufio.Writer)) error {
	file, err := st.root.OpenFile(tempName(name), os.O_WRONLY|os.O_CREATE|os.O_TRUNC, 0o644)
	if err == nil {
		w := bufio.NewWriter(file)
		fill(w)
		err = errors.Join(w.Flush(), file.Close())
	}
	if err == nil {
		err = st.root.Rename(tempName(name), name)
	}
	if err != nil {
		_ = st.root.Remove(tempName(name))
		return diskError(st.path(name), err)
	}
	return nil
}
