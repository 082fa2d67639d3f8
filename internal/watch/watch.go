// Package watch tells when files of a folder were saved, however an editor saves them.
package watch

import (
	"context"
	"crypto/sha256"
	"fmt"
	"io/fs"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"github.com/fsnotify/fsnotify"
)

// One save makes several events, and an editor may write a file in pieces or
// rename it into place. It is told when it has been quiet for a moment, and before
// long in any case.
const (
	quiet    = 12 * time.Millisecond
	patience = 60 * time.Millisecond
	// Shared disks and some folders of the cloud tell nothing: look, too.
	lookEvery = time.Second
)

// watcher follows files.
type watcher struct {
	folder string
	parts  []string          // files and folders in it
	notify *fsnotify.Watcher // nil when the system has none to give
	seen   string            // the files as they were when they were last looked at
}

// Folder starts to follow files and folders in a folder. It calls changed after some
// of them were saved, with their names where the system tells them, one call at a
// time, until the context ends; wait waits for that end.
func Folder(ctx context.Context, folder string, parts []string, changed func(files []string)) (wait func()) {
	w := newWatcher(folder, parts) // before it returns, so that no change is missed
	ended := make(chan struct{})
	go func() {
		defer close(ended)
		w.run(ctx, changed)
	}()
	return func() { <-ended }
}

func newWatcher(folder string, parts []string) *watcher {
	w := &watcher{folder: folder, parts: parts}
	if real, err := filepath.EvalSymlinks(folder); err == nil {
		w.folder = real
	}
	if notify, err := fsnotify.NewWatcher(); err == nil {
		w.notify = notify
	}
	w.follow()
	w.seen = w.look()
	return w
}

func (w *watcher) run(ctx context.Context, changed func(files []string)) {
	var events chan fsnotify.Event
	if w.notify != nil {
		defer w.notify.Close()
		events = w.notify.Events
		go drain(w.notify.Errors)
	}
	ticker := time.NewTicker(lookEvery)
	defer ticker.Stop()
	for {
		select {
		case <-ctx.Done():
			return
		case e := <-events:
			if files := w.gather(ctx, e, events); len(files) > 0 {
				w.seen = w.look()
				changed(files)
			}
		case <-ticker.C:
			if now := w.look(); now != w.seen {
				w.seen = now
				w.follow()
				changed(nil)
			}
		}
	}
}

// drain reads errors: what the system could not tell, looking finds.
func drain(errors <-chan error) {
	for range errors {
	}
}

// gather waits until a burst of events is over, and lists the files it was
// about.
func (w *watcher) gather(ctx context.Context, e fsnotify.Event, events <-chan fsnotify.Event) []string {
	var files []string
	late := time.After(patience)
	for {
		if name, ok := w.ours(e.Name); ok && !slices.Contains(files, name) {
			files = append(files, name)
		}
		if e.Has(fsnotify.Create) {
			w.follow() // a folder, perhaps, with files in it already
		}
		select {
		case e = <-events:
			continue
		case <-time.After(quiet):
		case <-late:
		case <-ctx.Done():
			return nil
		}
		slices.Sort(files)
		return files
	}
}

// ours gives the name within the folder of a file that is followed.
func (w *watcher) ours(path string) (string, bool) {
	rel, err := filepath.Rel(w.folder, path)
	if err != nil {
		return "", false
	}
	name := filepath.ToSlash(rel)
	base := filepath.Base(rel)
	if strings.HasPrefix(base, ".") || strings.HasSuffix(base, "~") || strings.HasPrefix(base, "#") {
		return "", false
	}
	top, _, _ := strings.Cut(name, "/")
	return name, slices.Contains(w.parts, top)
}

// follow watches every folder that matters; the system watches no folder inside
// a folder by itself. Following twice does no harm.
func (w *watcher) follow() {
	if w.notify == nil {
		return
	}
	_ = w.notify.Add(w.folder)
	for _, part := range w.parts {
		_ = filepath.WalkDir(filepath.Join(w.folder, part), func(path string, entry fs.DirEntry, err error) error {
			if err == nil && entry.IsDir() {
				_ = w.notify.Add(path)
			}
			return nil
		})
	}
}

// look sums up names, sizes and times of the files.
func (w *watcher) look() string {
	sum := sha256.New()
	for _, part := range w.parts {
		_ = filepath.WalkDir(filepath.Join(w.folder, part), func(path string, entry fs.DirEntry, err error) error {
			if err != nil || entry.IsDir() {
				return nil
			}
			if _, ok := w.ours(path); !ok {
				return nil
			}
			if info, err := entry.Info(); err == nil {
				fmt.Fprintf(sum, "%s %d %d\n", path, info.Size(), info.ModTime().UnixNano())
			}
			return nil
		})
	}
	return string(sum.Sum(nil))
}
