package publish

import (
	"bufio"
	"encoding/hex"
	"fmt"
	"io"
	"io/fs"
	"slices"
	"strconv"
	"strings"
	"time"
)

// stamp is what was last seen of a file that we put in place.
type stamp struct {
	key  string // what it was made from
	sum  sum
	size int64
	time int64 // of its last change, in nanoseconds
	// reliable says that the file was older than the note of it: a change since
	// shows in its time. Times of some disks tell 2 seconds apart at best (FAT,
	// as on most memory sticks).
	reliable bool
}

const coarsest = 2 * time.Second

// proves reports whether a file's size and time prove that its bytes are as
// they were seen.
func (s stamp) proves(info fs.FileInfo) bool {
	return s.reliable && s.size == info.Size() && s.time == info.ModTime().UnixNano()
}

// stamps are kept by path. They save work and nothing depends on them:
// stamps that cannot be read count as none.
type stamps map[string]stamp

// write writes a line of the stamps' file.
func (s stamp) write(w *bufio.Writer, name string) {
	_, _ = fmt.Fprintf(w, "%s %s %d %d %s\n", s.key, s.sum, s.size, s.time, name) // w keeps its first error
}

// decode adds the stamps of a file that was written at a time.
func (s stamps) decode(from io.Reader, written time.Time) {
	lines := bufio.NewScanner(from)
	for lines.Scan() {
		words := strings.SplitN(lines.Text(), " ", 5)
		if len(words) < 5 {
			return
		}
		raw, err := hex.DecodeString(words[1])
		size, errSize := strconv.ParseInt(words[2], 10, 64)
		at, errTime := strconv.ParseInt(words[3], 10, 64)
		if err != nil || errSize != nil || errTime != nil || len(raw) != len(sum{}) {
			return
		}
		s[strings.Clone(words[4])] = stamp{strings.Clone(words[0]), sum(raw), size, at, at < written.Add(-coarsest).UnixNano()}
	}
}

// validKey reports whether a key can stand in a line.
func validKey(key string) bool { return key != "" && !strings.ContainsAny(key, " \n\r") }

// unchanged gives the result for a file whose bytes need not be made: its key
// is that of the bytes on the disk. Size and time show that nobody changed it
// since; where they do not, its bytes are read and compared with the sum.
func (r *run) unchanged(f File) (result, bool) {
	was, ok := r.state.stamps[f.Path]
	if !ok || !validKey(f.Key) || was.key != f.Key || !slices.Contains(r.state.ours[f.Path], was.sum) {
		return result{}, false
	}
	if r.folders.there(f.Path) != nil {
		return result{}, false
	}
	info, err := r.root.Lstat(f.Path)
	if err != nil || !info.Mode().IsRegular() || info.Size() != was.size {
		return result{}, false
	}
	if !was.proves(info) {
		data, err := r.root.ReadFile(f.Path)
		if err != nil || sumOf(data) != was.sum {
			return result{}, false
		}
	}
	return result{action: keep, skipped: true, sum: was.sum, size: was.size, time: info.ModTime().UnixNano()}, true
}

// writeStamps writes the stamps of the files in place.
func (r *run) writeStamps(w *bufio.Writer) {
	for _, i := range r.byPath() {
		if f, res := r.files[i], r.results[i]; res.action != foreign && res.time != 0 && validKey(f.Key) {
			stamp{key: f.Key, sum: res.sum, size: res.size, time: res.time}.write(w, f.Path)
		}
	}
	for _, name := range r.kept {
		if s, ok := r.state.stamps[name]; ok {
			s.write(w, name)
		}
	}
}
