package site

import (
	"bytes"

	"homebuild/internal/page"
)

// A source is what a file is made from: its fields hold all of it, beyond the
// program and what is common to every page. So they name the bytes of the file,
// too, and a file whose source is as it was need not be rendered again.
//
// The fields are exported for digest to read them; a language or a lesson among
// them is named by its own sum. A week's settings are given one by one to the
// pages that show them. The tests change every input in turn and hold the keys
// against the bytes.

// pageSource is made into a page.
type pageSource interface {
	path() string
	view(*common) page.View
}

// dataSource is made into a file that is no page.
type dataSource interface {
	path() string
	render() ([]byte, error)
}

// lister lists the files of a site.
type lister struct {
	*common
	program string
	files   []File
}

// page lists a page that its language can say. Its view is made only when it is rendered, so that memory
// does not grow with the site.
func (l *lister) page(p pageSource) {
	if l.unmade[p.path()] {
		return
	}
	add := func(b []byte) ([]byte, error) { return l.append(b, p) }
	l.files = append(l.files, File{Path: p.path(), Key: l.key(l.sum, p), Append: add, Render: func() ([]byte, error) { return add(nil) }})
}

func (l *lister) data(d dataSource) {
	l.files = append(l.files, File{Path: d.path(), Key: l.key(d), Render: d.render})
}

// key names what a file is made from; empty when the program has no name, so
// that every file is rendered.
func (l *lister) key(from ...any) string {
	if l.program == "" {
		return ""
	}
	return digest(l.program, from)
}

// append makes a page.
func (c *common) append(b []byte, p pageSource) ([]byte, error) {
	out := bytes.NewBuffer(b)
	err := page.Render(out, p.view(c))
	return out.Bytes(), err
}
