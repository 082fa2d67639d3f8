package publish

import (
	"bufio"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"sync"

	"homebuild/internal/output"
)

// File is a file to publish. It is rendered at most once, on any worker; one
// whose key is that of the bytes on the disk is not rendered.
type File = output.File

// Options of Write; the zero value is right for most.
type Options struct {
	Workers int // renderers at a time; 0 for one per processor
	// Manifest names the list of what is ours, so that several makers can share
	// a folder and each keep to its own files; empty for the folder's name.
	Manifest string
	Shard    Shard // the part of the files to make; the zero value for all
	// Program names the program for a part: it goes with those that the same program
	// made from the same files. Empty for a part that goes with any.
	Program string
	// Keep reports whether a file of ours that is no longer made stays, and stays
	// ours; nil removes them all.
	Keep func(path string) bool
	// Rendered is called after each file with how many there are, by several
	// callers at a time; may be nil.
	Rendered func(of int)
}

// Report says what Write did.
type Report struct {
	Written   int // new or changed
	Unchanged int
	Skipped   int // of those unchanged: known to be so without being rendered
	Removed   int
	Kept      []string // no longer made, and left where they are: see Options.Keep
	Bytes     int64    // of the files written
	Foreign   []string // files of someone else in the way, left alone
	Edited    []Edited // files of ours that someone had edited
}

// Edited is a file of ours that held other bytes than we gave it.
type Edited struct {
	Path string
	Copy string // where the edited bytes were put
}

// Write makes the folder hold the files, and no others of ours. For a part, the
// files of all parts are given, and those of this one are made. The error is a
// *Error, with what to do about it.
func Write(dir string, files []File, o Options) (Report, error) {
	if err := checkPaths(files); err != nil {
		return Report{}, err
	}
	if !o.Shard.Valid() {
		return Report{}, &Error{Text: fmt.Sprintf("there is no part %d of %d", o.Shard.I, o.Shard.N), Hint: "parts are counted from 1"}
	}
	r, err := open(dir, files, o)
	if err != nil {
		return Report{}, err
	}
	defer r.close()
	var from origin
	if !o.Shard.whole() && o.Program != "" {
		from = originOf(o.Program, files)
	}
	err = r.state.fits(from)
	if err == nil {
		err = r.prepare()
	}
	if err == nil {
		err = r.state.claim(from)
	}
	if err != nil {
		r.discard()
		return Report{}, err
	}
	r.gone, r.kept = r.obsolete()
	if !r.changes() {
		r.count()
		return r.report, r.finish()
	}
	if err := r.writeJournal(); err != nil {
		r.discard()
		return Report{}, err
	}
	if err := r.apply(); err != nil {
		r.discard()
		return r.report, err
	}
	return r.report, r.finish()
}

// run is one call of Write.
type run struct {
	dir     string // absolute
	files   []File
	keeps   func(path string) bool
	workers int
	root    *os.Root // the folder
	state   *state   // what is ours
	folders folders
	results []result // one for each file
	gone    []string // files of ours that are to be removed
	kept    []string // and those that stay, though they are no longer made
	report  Report
	done    func(of int)
	rooms   sync.Pool // of *[]byte, to make files in
}

// open takes the lock and reads what is ours.
func open(dir string, files []File, o Options) (*run, error) {
	dir, err := filepath.Abs(dir)
	if err != nil {
		return nil, diskError(dir, err)
	}
	if err := makeFolder(dir); err != nil {
		return nil, err
	}
	state, err := openState(dir, o.Manifest, o.Shard)
	if err != nil {
		return nil, err
	}
	root, err := os.OpenRoot(dir)
	if err != nil {
		state.close()
		return nil, diskError(dir, err)
	}
	files = o.Shard.of(files)
	r := &run{
		dir: dir, files: files, keeps: o.Keep, workers: o.Workers, root: root, state: state,
		folders: folders{root: root, dir: dir, known: map[string]error{}},
		results: make([]result, len(files)), done: o.Rendered,
		rooms: sync.Pool{New: func() any { return new([]byte) }},
	}
	if r.keeps == nil {
		r.keeps = func(string) bool { return false }
	}
	if r.done == nil {
		r.done = func(int) {}
	}
	if r.workers <= 0 {
		r.workers = runtime.GOMAXPROCS(0)
	}
	if state.interrupted {
		r.sweep()
	}
	return r, nil
}

func (r *run) close() {
	r.folders.close()
	r.root.Close()
	r.state.close()
}

// changes reports whether anything is to be put into the folder or taken away.
func (r *run) changes() bool {
	if slices.ContainsFunc(r.results, func(res result) bool { return res.action == create || res.action == replace }) {
		return true
	}
	return len(r.gone) > 0
}

// writeJournal has the temporary files reach the disk and lays the list of the
// coming site beside the folder, before anything changes there.
func (r *run) writeJournal() error {
	if err := syncFolder(r.root); err != nil {
		return diskError(r.dir, err)
	}
	return r.state.writeJournal(r.next)
}

// finish makes that list the manifest.
func (r *run) finish() error {
	r.report.Kept = r.kept
	slices.Sort(r.report.Foreign)
	slices.SortFunc(r.report.Edited, func(a, b Edited) int { return strings.Compare(a.Path, b.Path) })
	return r.state.commit(r.next, r.writeStamps)
}

// next lists the coming site's files that are ours, as a manifest does. It is
// written as it is listed: a large site's list would be held several times.
func (r *run) next(w *bufio.Writer) {
	for _, i := range r.byPath() {
		if r.results[i].action != foreign {
			writeSum(w, r.results[i].sum, r.files[i].Path)
		}
	}
	for _, name := range r.kept {
		for _, s := range r.state.ours[name] {
			writeSum(w, s, name)
		}
	}
}

// byPath are the places of the files in the order of their paths.
func (r *run) byPath() []int {
	places := make([]int, len(r.files))
	for i := range places {
		places[i] = i
	}
	slices.SortFunc(places, func(a, b int) int { return strings.Compare(r.files[a].Path, r.files[b].Path) })
	return places
}
