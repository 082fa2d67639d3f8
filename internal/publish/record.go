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
)

// stateFolder stands next to the published folder.
const stateFolder = ".homebuild"

// record is what we know about a published folder from one run to the next.
// Each of its files is named by the folder and, for a part of a site, the
// part: public.manifest, public.3-of-8.manifest.
type record struct {
	dir         string // of the state
	name        string // of the published folder: "public"
	shard       Shard
	root        *os.Root
	locks       []unlocker
	ours        manifest // what the last runs made
	seen        seen
	shards      []string // the files of the records of parts
	interrupted bool     // the last run did not come to its end
}

// openRecord takes the lock and reads the record of the given name, or of the
// folder's.
func openRecord(published, name string, shard Shard) (*record, error) {
	if name == "" {
		name = filepath.Base(published)
	}
	rec := &record{dir: filepath.Join(filepath.Dir(published), stateFolder), name: name, shard: shard, ours: manifest{}, seen: seen{}}
	if err := makeFolder(rec.dir); err != nil {
		return nil, err
	}
	root, err := os.OpenRoot(rec.dir)
	if err != nil {
		return nil, trouble(rec.dir, err)
	}
	rec.root = root
	if err := rec.take(published); err != nil {
		rec.close()
		return nil, err
	}
	if err := rec.read(); err != nil {
		rec.close()
		return nil, err
	}
	return rec, nil
}

// file is the name of one of the record's own files.
func (rec *record) file(ending string) string { return fileOf(rec.name, rec.shard, ending) }

func fileOf(name string, shard Shard, ending string) string {
	if shard.whole() {
		return name + "." + ending
	}
	return name + "." + shard.String() + "." + ending
}

func (rec *record) path(name string) string { return filepath.Join(rec.dir, name) }

// read takes in what is ours: the record, and what an interrupted run
// promised. The record of a part is newer than that of the whole, which takes
// it in and removes it; so where a part has one, it alone says what is ours.
func (rec *record) read() error {
	parts, err := rec.findShards()
	if err != nil {
		return err
	}
	wholeToo := func(path string) bool {
		for s, done := range parts {
			if done && s.Owns(path) {
				return false
			}
		}
		return rec.shard.Owns(path)
	}
	if err := rec.readManifest(fileOf(rec.name, Shard{}, "manifest"), wholeToo); err != nil {
		return err
	}
	if err := rec.readManifest(fileOf(rec.name, Shard{}, "next"), rec.shard.Owns); err != nil {
		return err
	}
	rec.readSeen(fileOf(rec.name, Shard{}, "seen"))
	for s := range parts {
		if !rec.shard.whole() && s != rec.shard {
			continue
		}
		for _, ending := range []string{"manifest", "next"} {
			if err := rec.readManifest(fileOf(rec.name, s, ending), s.Owns); err != nil {
				return err
			}
		}
		rec.readSeen(fileOf(rec.name, s, "seen"))
	}
	return nil
}

// findShards lists the parts that have a record, and whether a build of them was
// ever done.
func (rec *record) findShards() (map[Shard]bool, error) {
	entries, err := fs.ReadDir(rec.root.FS(), ".")
	if err != nil {
		return nil, trouble(rec.dir, err)
	}
	parts := map[Shard]bool{}
	for _, e := range entries {
		rest, ours := strings.CutPrefix(e.Name(), rec.name)
		s, ending, ok := parseShardRecord(rest)
		if !ours || !ok {
			continue
		}
		rec.shards = append(rec.shards, e.Name())
		switch {
		case ending == "running" && (rec.shard.whole() || s == rec.shard):
			rec.interrupted = true
		case ending == "manifest" || ending == "next":
			parts[s] = parts[s] || ending == "manifest"
			if !rec.shard.whole() && s.N != rec.shard.N {
				return nil, &Trouble{
					Text: fmt.Sprintf("the site in %q was made in %d parts, and this is one of %d", rec.name, s.N, rec.shard.N),
					Hint: "build it as a whole once, or into another folder",
				}
			}
		}
	}
	return parts, nil
}

func (rec *record) readManifest(name string, owns func(path string) bool) error {
	file, err := rec.root.Open(name)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err == nil {
		err = rec.ours.decode(file, owns)
		file.Close()
	}
	if err != nil {
		return &Trouble{
			Text: fmt.Sprintf("%q cannot be read: %v", rec.path(name), reason(err)),
			Hint: fmt.Sprintf("remove %q and the folder %q, and build again", rec.path(name), rec.name),
			Err:  err,
		}
	}
	return nil
}

func (rec *record) readSeen(name string) {
	file, err := rec.root.Open(name)
	if err != nil {
		return
	}
	defer file.Close()
	if info, err := file.Stat(); err == nil {
		rec.seen.decode(file, info.ModTime())
	}
}

// promise writes down what the site will be, together with all that was ours:
// whatever stops the run, the next one still knows every file of ours.
func (rec *record) promise(next func(*bufio.Writer)) error {
	return rec.write(rec.file("next"), func(w *bufio.Writer) {
		rec.ours.encode(w)
		next(w)
	})
}

// keep makes the site's list the record: the run is done. What a build of the
// whole has taken in of its parts is removed.
func (rec *record) keep(next, now func(*bufio.Writer)) error {
	if err := rec.write(rec.file("manifest"), next); err != nil {
		return err
	}
	if err := rec.write(rec.file("seen"), now); err != nil {
		return err
	}
	if rec.shard.whole() {
		for _, name := range rec.shards {
			if err := rec.root.Remove(name); err != nil && !errors.Is(err, fs.ErrNotExist) {
				return trouble(rec.path(name), err)
			}
		}
	}
	if err := rec.root.Remove(rec.file("next")); err != nil && !errors.Is(err, fs.ErrNotExist) {
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
	return rec.path(filepath.FromSlash(target)), rec.write(target, func(w *bufio.Writer) { _, _ = w.Write(data) })
}

// write puts a whole file in place at once. What fill cannot write, w keeps the
// error of.
func (rec *record) write(name string, fill func(w *bufio.Writer)) error {
	file, err := rec.root.OpenFile(part(name), os.O_WRONLY|os.O_CREATE|os.O_TRUNC, 0o644)
	if err == nil {
		w := bufio.NewWriter(file)
		fill(w)
		err = errors.Join(w.Flush(), file.Close())
	}
	if err == nil {
		err = rec.root.Rename(part(name), name)
	}
	if err != nil {
		_ = rec.root.Remove(part(name))
		return trouble(rec.path(name), err)
	}
	return nil
}
