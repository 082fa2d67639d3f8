package recheck

import (
	"bytes"
	"cmp"
	"fmt"
	"io/fs"
	"strings"

	"golang.org/x/net/html"

	"homebuild/internal/diag"
)

// page is one HTML file: what it is while it is read, and what is kept of it to
// compare it with others.
type page struct {
	path    string
	raw     []byte                 // while it is read
	root    *html.Node             // <html>, while it is read
	figures map[*html.Node]*figure // while it is read

	lang      string
	ids       map[string]int // how often each id is there
	hrefs     []string       // links to follow
	canonical string
	versions  map[string]string // links to the same page in other languages
	parts     []part
	told      []string // its stories, each in one piece
	answers   []string // their answers said in full
	shapes    []string // their equations, with a box for each number and each sign
	foot      []string // answers at the foot of the paper
	weight    int
	found     Report
	problems  diag.Diagnostics
}

// folder is the language folder that the page is in; "" at the top.
func (p *page) folder() string {
	if head, _, ok := strings.Cut(p.path, "/"); ok {
		return head
	}
	return ""
}

// name is the path without the language folder: the same in every language.
func (p *page) name() string { return strings.TrimPrefix(p.path, p.folder()+"/") }

// add notes a problem of the page.
func (p *page) add(text string, values ...any) {
	p.problems = append(p.problems, diag.Diagnostic{File: p.path, Text: fmt.Sprintf(text, values...)})
}

// read reads the page and rechecks all that can be seen on it alone.
func (p *page) read(fsys fs.FS) {
	raw, err := fs.ReadFile(fsys, p.path)
	doc, wrong := html.Parse(bytes.NewReader(raw))
	if err = cmp.Or(err, wrong); err != nil {
		p.add("it cannot be read: %v", err)
		return
	}
	p.found.Pages = 1
	p.raw, p.root, p.figures = raw, find(doc, "html"), map[*html.Node]*figure{}
	p.versions = map[string]string{}
	p.lang = attr(p.root, "lang")
	p.head()
	p.checkIDs()
	p.links()
	p.direction()
	p.equations()
	p.pictures()
	p.senses()
	p.stories()
	p.walk()
	p.model()
	p.steps()
	p.pairs()
	p.keep()
	p.weigh()
	p.raw, p.root, p.figures = nil, nil, nil
}

// figure takes a picture apart, once.
func (p *page) figure(svg *html.Node) *figure {
	f := p.figures[svg]
	if f == nil {
		f = figureOf(svg)
		p.figures[svg] = f
	}
	return f
}
