// Package weight says what a page may weigh, and weighs it.
package weight

import (
	"compress/gzip"
	"errors"
	"io"
	"path"
	"sync"

	"homebuild/internal/pattern"
)

// The budget, in bytes as they travel, compressed with gzip -9. A page of 14,000
// bytes comes with the first answer of a fresh connection: the initial window is
// 14,600 bytes (RFC 6928, section 2), less what the headers take. A
// week of eight stories to 1,000 has six pages, of which three are to try.
const (
	Page = 14_000
	Week = 72_000 // all pages of one week in one language
)

// best and quick are at rest until a page is weighed: one has a megabyte of tables.
var best, quick = writers(gzip.BestCompression), writers(gzip.BestSpeed)

func writers(level int) *sync.Pool {
	return &sync.Pool{New: func() any {
		w, err := gzip.NewWriterLevel(io.Discard, level)
		if err != nil {
			panic(err) // the level is gzip's own
		}
		return w
	}}
}

// Of is what a page weighs.
func Of(page []byte) int { return packed(page, best) }

// Fits reports whether a page weighs no more than a page may. Most do even when they
// are compressed in a hurry, in a fifth of the time.
func Fits(page []byte) bool { return packed(page, quick) <= Page || Of(page) <= Page }

func packed(page []byte, writers *sync.Pool) int {
	var packed counter
	w := writers.Get().(*gzip.Writer)
	defer writers.Put(w)
	w.Reset(&packed)
	_, err := w.Write(page)
	if err := errors.Join(err, w.Close()); err != nil {
		panic(err) // a counter takes everything
	}
	return int(packed)
}

// counter counts bytes.
type counter int

func (c *counter) Write(p []byte) (int, error) {
	*c += counter(len(p))
	return len(p), nil
}

var inWeek = pattern.Of(`^([^/]+)/(\d{4}-\d{2}-\d{2})[-.]`)

// WeekOf is the week that a page's path belongs to, with its language:
// "es/2026-09-14". It reports false for pages of no week.
func WeekOf(name string) (string, bool) {
	m := inWeek().FindStringSubmatch(name)
	if m == nil {
		return "", false
	}
	return path.Join(m[1], m[2]), true
}
