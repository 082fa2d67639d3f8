package publish

import (
	"cmp"
	"errors"
	"io/fs"
	"path"
	"slices"
	"strings"
)

// phase is a part of the files that moves into place together.
type phase struct {
	action action
	index  bool
}

// phases puts new files first, so that nothing leads to a place that is not
// there yet, then changed pages, then changed indexes.
func phases() []phase {
	return []phase{{create, false}, {create, true}, {replace, false}, {replace, true}}
}

// apply moves what is prepared into place; last it removes what is no longer
// made.
func (r *run) apply() error {
	for _, phase := range phases() {
		if err := r.move(phase); err != nil {
			return err
		}
	}
	r.count()
	r.folders.close()
	return r.remove()
}

// move renames the temporary files of one phase into place.
func (r *run) move(phase phase) error {
	var names []string
	for i, f := range r.files {
		if r.results[i].action == phase.action && f.Index == phase.index {
			names = append(names, f.Path)
		}
	}
	return r.each(len(names), func(i int) error {
		in, base := r.folders.at(names[i])
		if err := in.Rename(tempName(base), base); err != nil {
			return r.diskError(names[i], err)
		}
		return nil
	})
}

// count fills the report from the results.
func (r *run) count() {
	for i, res := range r.results {
		switch res.action {
		case keep:
			r.report.Unchanged++
			if res.skipped {
				r.report.Skipped++
			}
		case create, replace:
			r.report.Written++
			r.report.Bytes += res.size
		case foreign:
			r.report.Foreign = append(r.report.Foreign, r.files[i].Path)
		}
		if res.edited != "" {
			r.report.Edited = append(r.report.Edited, Edited{Path: r.files[i].Path, Copy: res.edited})
		}
	}
}

// remove takes away files of ours that are no longer made, and the folders
// that this leaves empty.
func (r *run) remove() error {
	for _, name := range r.gone {
		if err := r.removeOne(name); err != nil {
			return err
		}
	}
	return nil
}

// obsolete lists the files of ours that are no longer made: those to be removed, in
// the order of [leadingFirst]; and those that stay, where nobody has taken them away.
func (r *run) obsolete() (gone, kept []string) {
	made := make(map[string]bool, len(r.files))
	for _, f := range r.files {
		made[f.Path] = true
	}
	for name := range r.state.ours {
		switch {
		case made[name]:
		case !r.keeps(name):
			gone = append(gone, name)
		default:
			if _, err := r.root.Lstat(name); err == nil {
				kept = append(kept, name)
			}
		}
	}
	slices.SortFunc(gone, leadingFirst)
	slices.Sort(kept)
	return gone, kept
}

// leadingFirst is the order in which pages are removed: those that families hold a
// link to before those that they lead to, so that nobody is led to a page that is
// gone. 2026-09-14.html goes before es/2026-09-14.html, and es/index.html before that.
func leadingFirst(a, b string) int {
	return cmp.Or(
		cmp.Compare(strings.Count(a, "/"), strings.Count(b, "/")),
		strings.Compare(b, a),
	)
}

func (r *run) removeOne(name string) error {
	if err := r.folders.there(name); err != nil {
		if !errors.Is(err, fs.ErrNotExist) { // a link or a file where our folder was
			r.report.Foreign = append(r.report.Foreign, name)
		}
		return nil
	}
	info, err := r.root.Lstat(name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil
	case err != nil:
		return r.diskError(name, err)
	case !info.Mode().IsRegular():
		r.report.Foreign = append(r.report.Foreign, name)
		return nil
	}
	old, err := r.root.ReadFile(name)
	if err != nil {
		return r.diskError(name, err)
	}
	if !slices.Contains(r.state.ours[name], sumOf(old)) {
		target, err := r.state.saveEdited(name, old)
		if err != nil {
			return err
		}
		r.report.Edited = append(r.report.Edited, Edited{Path: name, Copy: target})
	}
	if err := r.root.Remove(name); err != nil {
		return r.diskError(name, err)
	}
	r.report.Removed++
	// The build of another part may be about to write into a folder that is empty.
	for dir := path.Dir(name); dir != "." && r.state.shard.whole(); dir = path.Dir(dir) {
		if r.root.Remove(dir) != nil { // not empty: someone still lives there
			break
		}
	}
	return nil
}

// discard takes away the temporary files of an unfinished run.
func (r *run) discard() {
	r.folders.close()
	for i, f := range r.files {
		if a := r.results[i].action; a == create || a == replace || a == 0 {
			_ = r.root.Remove(tempName(f.Path))
		}
	}
	if r.state.shard.whole() {
		for _, dir := range slices.Backward(r.folders.made) {
			_ = r.root.Remove(dir) // only when empty
		}
	}
	_ = r.state.remove(r.state.file("running"))
}

// sweep takes away the temporary files that a killed run has left.
func (r *run) sweep() {
	_ = fs.WalkDir(r.root.FS(), ".", func(name string, entry fs.DirEntry, err error) error {
		if err == nil && entry.Type().IsRegular() && isTemp(path.Base(name)) && !strings.Contains(name, "\\") && r.state.shard.Owns(finalName(name)) {
			_ = r.root.Remove(name)
		}
		return nil
	})
}
