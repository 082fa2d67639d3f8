package recheck

import (
	"fmt"
	"io/fs"
	"path"
	"runtime"
	"slices"

	"golang.org/x/sync/errgroup"

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
}

// checker gathers what is found.
type checker struct {
	files     map[string]bool   // every file
	feeds     map[string][]byte // Atom files
	pages     map[string]*page
	paths     []string // of the pages, sorted
	languages []string // the folders with pages
	problems  diag.Diagnostics
}

// Site rechecks a published folder. Problems are for the person who publishes
// it: each names the page, where in it, and what was read. Pages are read as
// many at a time as there are processors, and are not kept.
func Site(fsys fs.FS) (Report, diag.Diagnostics) {
	c := &checker{files: map[string]bool{}, feeds: map[string][]byte{}, pages: map[string]*page{}}
	if err := c.list(fsys); err != nil {
		c.problems = append(c.problems, diag.Diagnostic{
			Text: fmt.Sprintf("the folder cannot be read to its end: %v", err),
			Hint: "look whether you may open all that is in it; or build into a new folder",
		})
	}
	if len(c.paths) == 0 {
		c.problems = append(c.problems, diag.Diagnostic{Text: "there is no page here", Hint: `give the folder that holds "index.html"`})
		return Report{}, c.problems
	}
	c.each(func(p *page) { p.read(fsys) })
	c.each(c.follow)
	c.addresses()
	c.papers()
	c.alike()
	c.weeks()
	var report Report
	for _, name := range c.paths {
		p := c.pages[name]
		c.problems = append(c.problems, p.problems...)
		report.Add(p.found)
	}
	c.problems.Sort()
	return report, c.problems
}

// list finds the files.
func (c *checker) list(fsys fs.FS) error {
	return fs.WalkDir(fsys, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		c.files[name] = true
		switch path.Ext(name) {
		case ".html":
			p := &page{path: name}
			c.pages[name] = p
			c.paths = append(c.paths, name) // WalkDir is in the order of the names
			if f := p.folder(); f != "" && !slices.Contains(c.languages, f) {
				c.languages = append(c.languages, f)
			}
		case ".xml":
			c.feeds[name], err = fs.ReadFile(fsys, name)
		}
		return err
	})
}

// each does something with every page, as many at a time as there are
// processors. It may change that page alone.
func (c *checker) each(do func(*page)) {
	var workers errgroup.Group
	workers.SetLimit(runtime.GOMAXPROCS(0))
	for _, name := range c.paths {
		workers.Go(func() error {
			do(c.pages[name])
			return nil
		})
	}
	workers.Wait() // none of them fails
}

// Add adds what was found elsewhere.
func (r *Report) Add(o Report) {
	r.Pages += o.Pages
	r.Equations += o.Equations
	r.Stories += o.Stories
	r.Choices += o.Choices
	r.Pictures += o.Pictures
	r.Dots += o.Dots
	r.Estimates += o.Estimates
	r.Links += o.Links
}
