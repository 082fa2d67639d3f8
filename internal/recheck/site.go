package recheck

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"

	"golang.org/x/net/html"

	"homebuild/internal/diag"
)

// Report counts what was read again. A count of nothing where something should
// be is as telling as a problem.
type Report struct {
	Pages     int
	Equations int // equations, chains and sums, all worked out again
	Stories   int // worked and to try
	Choices   int // numbers and pairs to tap
	Pictures  int
	Dots      int // counted one by one
	Estimates int
	Links     int
	Weights   []Weight // of every page, by path
}

// page is one HTML file.
type page struct {
	path string
	raw  []byte
	root *html.Node     // <html>
	ids  map[string]int // how often each id is there
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

// checker gathers what is found.
type checker struct {
	files    map[string][]byte
	pages    map[string]*page
	paths    []string // of the pages, sorted
	report   Report
	problems diag.Problems
}

// Site rechecks a published folder. Problems are for the person who publishes
// it: each names the page, where in it, and what was read.
func Site(fsys fs.FS) (Report, diag.Problems) {
	c := &checker{files: map[string][]byte{}, pages: map[string]*page{}}
	c.read(fsys)
	if len(c.pages) == 0 {
		c.problems = append(c.problems, diag.Problem{Text: "there is no page here", Hint: `give the folder that holds "index.html"`})
		return c.report, c.problems
	}
	c.report.Pages = len(c.pages)
	for _, name := range c.paths {
		p := c.pages[name]
		c.head(p)
		c.ids(p)
		c.links(p)
		c.direction(p)
		c.equations(p)
		c.pictures(p)
		c.senses(p)
		c.stories(p)
		c.walk(p)
		c.pairs(p)
	}
	c.addresses()
	c.papers()
	c.languages()
	c.weigh()
	c.problems.Sort()
	return c.report, c.problems
}

// read takes the whole folder in. A site of a school year is a few megabytes.
func (c *checker) read(fsys fs.FS) {
	err := fs.WalkDir(fsys, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() {
			return nil
		}
		raw, err := fs.ReadFile(fsys, name)
		if err != nil {
			return err
		}
		c.files[name] = raw
		if path.Ext(name) == ".html" {
			return c.parse(name, raw)
		}
		return nil
	})
	if err != nil {
		c.problems = append(c.problems, diag.Problem{Text: "the folder cannot be read to its end", Hint: err.Error()})
	}
	slices.Sort(c.paths)
}

var errNoRoot = errors.New("no <html> in it")

func (c *checker) parse(name string, raw []byte) error {
	doc, err := html.Parse(bytes.NewReader(raw))
	if err != nil {
		return fmt.Errorf("%s: %w", name, err)
	}
	root := find(doc, tag("html"))
	if root == nil {
		return fmt.Errorf("%s: %w", name, errNoRoot)
	}
	p := &page{path: name, raw: raw, root: root, ids: map[string]int{}}
	for _, n := range all(root, func(n *html.Node) bool { _, ok := lookup(n, "id"); return ok }) {
		p.ids[attr(n, "id")]++
	}
	c.pages[name] = p
	c.paths = append(c.paths, name)
	return nil
}

// add notes a problem of a page.
func (c *checker) add(p *page, text string, values ...any) {
	c.problems = append(c.problems, diag.Problem{File: p.path, Text: fmt.Sprintf(text, values...)})
}
