package publish

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync/atomic"

	"golang.org/x/sync/errgroup"
)

// action is what becomes of a file.
type action uint8

const (
	keep    action = iota + 1 // the bytes are there already
	create                    // no such file yet
	replace                   // ours, with other bytes
	foreign                   // someone else's, in our way
)

// result is what was found out about a file.
type result struct {
	action  action
	skipped bool // not rendered
	sum     sum
	size    int64
	time    int64  // of the file's last change, in nanoseconds; 0 when not known
	edited  string // where the edited bytes were put; empty for most
}

// maxListed is how many pages that cannot be made are told at once.
const maxListed = 10

// prepare renders every file that may have changed and puts what differs under
// a temporary name beside its place.
func (r *run) prepare() error {
	notMade := make([]error, len(r.files))
	var anyNotMade atomic.Bool
	err := r.each(len(r.files), func(i int) error {
		defer r.done(len(r.files))
		if res, ok := r.unchanged(r.files[i]); ok {
			r.results[i] = res
			return nil
		}
		room := r.rooms.Get().(*[]byte)
		defer r.rooms.Put(room)
		data, err := render(r.files[i], *room)
		if cap(data) > cap(*room) {
			*room = data[:0]
		}
		if err != nil {
			notMade[i] = err
			anyNotMade.Store(true)
			return nil // go on: all pages that cannot be made are told at once
		}
		if anyNotMade.Load() {
			return nil
		}
		r.results[i], err = r.compare(r.files[i].Path, data)
		return err
	})
	if err == nil && anyNotMade.Load() {
		err = joinErrors(r.files, notMade)
	}
	return err
}

// render makes a file's bytes, in a room whose bytes are not needed any more. A bug in
// one page names the page.
func render(f File, room []byte) (data []byte, err error) {
	defer func() {
		if bug := recover(); bug != nil {
			err = fmt.Errorf("bug: %v", bug)
		}
	}()
	if f.Append != nil {
		return f.Append(room[:0])
	}
	return f.Render()
}

// joinErrors gathers the first errors of rendering, in the order of the files.
func joinErrors(files []File, notMade []error) error {
	var lines []string
	var first error
	count := 0
	for i, err := range notMade {
		if err == nil {
			continue
		}
		if first == nil {
			first = err
		}
		if count++; count <= maxListed {
			lines = append(lines, fmt.Sprintf("the page %q cannot be made: %v", files[i].Path, err))
		}
	}
	if count > maxListed {
		lines = append(lines, fmt.Sprintf("and %d more", count-maxListed))
	}
	return &Error{Text: strings.Join(lines, "\n"), Hint: "the site on disk is as it was", Err: first}
}

// compare decides what becomes of a file, and writes it under its temporary
// name when it differs.
func (r *run) compare(name string, data []byte) (result, error) {
	if err := r.folders.need(name); err != nil {
		return result{}, err
	}
	res := result{sum: sumOf(data), size: int64(len(data))}
	in, base := r.folders.at(name)
	info, err := fs.FileInfo(nil), error(fs.ErrNotExist)
	if !r.folders.fresh(name) {
		info, err = in.Lstat(base)
	}
	switch {
	case errors.Is(err, fs.ErrNotExist):
		res.action = create
		res.time, err = r.writeTemp(name, data)
		return res, err
	case err != nil:
		return res, r.diskError(name, err)
	case !info.Mode().IsRegular():
		res.action = foreign
		return res, nil
	}
	old, err := in.ReadFile(base)
	if err != nil {
		return res, r.diskError(name, err)
	}
	known, ours := r.state.ours[name]
	switch was := sumOf(old); {
	case was == res.sum:
		res.action, res.time = keep, info.ModTime().UnixNano()
		return res, nil
	case !ours:
		res.action = foreign
		return res, nil
	case !slices.Contains(known, was):
		if res.edited, err = r.state.saveEdited(name, old); err != nil {
			return res, err
		}
	}
	res.action = replace
	res.time, err = r.writeTemp(name, data)
	return res, err
}

// writeTemp writes bytes beside their place, and gives the time of the file.
func (r *run) writeTemp(name string, data []byte) (int64, error) {
	file, err := r.createTemp(name)
	if err != nil {
		return 0, err
	}
	_, err = file.Write(data)
	var time int64
	if info, no := file.Stat(); no == nil {
		time = info.ModTime().UnixNano()
	}
	if err := errors.Join(err, file.Close()); err != nil {
		return 0, r.diskError(name, err)
	}
	return time, nil
}

// createTemp opens the file beside a place: a new one, or what a killed run has left.
// A link of that name would lead our writing elsewhere.
func (r *run) createTemp(name string) (*os.File, error) {
	in, base := r.folders.at(tempName(name))
	file, err := in.OpenFile(base, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if errors.Is(err, fs.ErrExist) {
		if info, err := in.Lstat(base); err == nil && !info.Mode().IsRegular() {
			return nil, &Error{Text: fmt.Sprintf("%q is in the way", filepath.Join(r.dir, tempName(name))), Hint: "take it away"}
		}
		file, err = in.OpenFile(base, os.O_WRONLY|os.O_CREATE|os.O_TRUNC, 0o644)
	}
	if err != nil {
		return nil, r.diskError(name, err)
	}
	return file, nil
}

// each calls do for 0 to n-1 on all workers until one fails.
func (r *run) each(n int, do func(int) error) error {
	workers, ctx := errgroup.WithContext(context.Background())
	var next atomic.Int64
	for range min(r.workers, n) {
		workers.Go(func() error {
			for i := int(next.Add(1)) - 1; i < n; i = int(next.Add(1)) - 1 {
				if ctx.Err() != nil { // another one failed
					return nil
				}
				if err := do(i); err != nil {
					return err
				}
			}
			return nil
		})
	}
	return workers.Wait()
}
