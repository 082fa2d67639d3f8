package publish

import (
	"errors"
	"io/fs"
	"path"
	"slices"
	"strings"
)

// turn is a part of the files that moves into place together.
type turn struct {
	action action
	index  bool
}

// turns puts new files first, so that nothing leads to a place that is not
// there yet, then changed pages, then changed indexes.
func turns() []turn {
	return []turn{{create, false}, {create, true}, {replace, false}, {replace, true}}
}

// settle moves what is prepared into place; last it removes what is no longer
// made.
func (r *run) settle() error {
	for _, turn := range turns() {
		if err := r.move(turn); err != nil {
			return err
		}
	}
	r.count()
	return r.remove()
}

// move renames the parts of one turn into place.
func (r *run) move(turn turn) error {
	var names []string
	for i, f := range r.files {
		if r.results[i].action == turn.action && f.Index == turn.index {
			names = append(names, f.Path)
		}
	}
	return r.each(len(names), func(i int) error {
		if err := r.root.Rename(part(names[i]), names[i]); err != nil {
			return r.trouble(names[i], err)
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
		case leave:
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
	for _, name := range r.gone() {
		if err := r.removeOne(name); err != nil {
			return err
		}
	}
	return nil
}

// gone lists the files of ours that are no longer made, from the last name to
// the first, so that es/index.html goes before the pages that it leads to.
func (r *run) gone() []string {
	made := make(map[string]bool, len(r.files))
	for _, f := range r.files {
		made[f.Path] = true
	}
	var gone []string
	for name := range r.record.ours {
		if !made[name] {
			gone = append(gone, name)
		}
	}
	slices.SortFunc(gone, func(a, b string) int { return compare(b, a) })
	return gone
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
		return r.trouble(name, err)
	case !info.Mode().IsRegular():
		r.report.Foreign = append(r.report.Foreign, name)
		return nil
	}
	old, err := r.root.ReadFile(name)
	if err != nil {
		return r.trouble(name, err)
	}
	if !slices.Contains(r.record.ours[name], sumOf(old)) {
		target, err := r.record.saveEdited(name, old)
		if err != nil {
			return err
		}
		r.report.Edited = append(r.report.Edited, Edited{Path: name, Copy: target})
	}
	if err := r.root.Remove(name); err != nil {
		return r.trouble(name, err)
	}
	r.report.Removed++
	// The build of another part may be about to write into a folder that is empty.
	for dir := path.Dir(name); dir != "." && r.record.shard.whole(); dir = path.Dir(dir) {
		if r.root.Remove(dir) != nil { // not empty: someone still lives there
			break
		}
	}
	return nil
}

// discard takes away what an unfinished run has put beside its places.
func (r *run) discard() {
	for i, f := range r.files {
		if a := r.results[i].action; a == create || a == replace || a == 0 {
			_ = r.root.Remove(part(f.Path))
		}
	}
	if r.record.shard.whole() {
		for _, dir := range slices.Backward(r.folders.made) {
			_ = r.root.Remove(dir) // only when empty
		}
	}
	_ = r.record.done()
}

// sweep takes away what a killed run has left beside its places.
func (r *run) sweep() {
	_ = fs.WalkDir(r.root.FS(), ".", func(name string, entry fs.DirEntry, err error) error {
		if err == nil && entry.Type().IsRegular() && isPart(path.Base(name)) && !strings.Contains(name, "\\") && r.record.shard.Owns(whole(name)) {
			_ = r.root.Remove(name)
		}
		return nil
	})
}
