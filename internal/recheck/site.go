package recheck

import (
	"io/fs"
	"path"
	"runtime"
	"sync"

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

// checker gathers what is found.
type checker struct {
	files    map[string]bool   // every file
	feeds    map[string][]byte // Atom files
	pages    map[string]*page
	paths    []string // of the pages, sorted
	problems diag.Problems
}

// Site rechecks a published folder. Problems are for the person who publishes
// it: each names the page, where in it, and what was read. Pages are read as
// many at a time as there are processors, and are not kept.
func Site(fsys fs.FS) (Report, diag.Problems) {
	c := &checker{files: map[string]bool{}, feeds: map[string][]byte{}, pages: map[string]*page{}}
	if err := c.list(fsys); err != nil {
		c.problems = append(c.problems, diag.Problem{Text: "the folder cannot be read to its end", Hint: err.Error()})
	}
	if len(c.paths) == 0 {
		c.problems = append(c.problems, diag.Problem{Text: "there is no page here", Hint: `give the folder that holds "index.html"`})
		return Report{}, c.problems
	}
	c.each(func(p *page) { p.read(fsys) })
	c.each(c.follow)
	c.addresses()
	c.papers()
	c.languages()
	report := c.report()
	c.weeks(report)
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
			c.pages[name] = &page{path: name}
			c.paths = append(c.paths, name) // WalkDir is in the order of the names
		case ".xml":
			c.feeds[name], err = fs.ReadFile(fsys, name)
		}
		return err
	})
}

// each does something with every page, as many at a time as there are
// processors. It may change that page alone.
func (c *checker) each(do func(*page)) {
	var wait sync.WaitGroup
	next := make(chan *page)
	for range runtime.GOMAXPROCS(0) {
		wait.Go(func() {
			for p := range next {
				do(p)
			}
		})
	}
	for _, name := range c.paths {
		next <- c.pages[name]
	}
	close(next)
	wait.Wait()
}

// report adds up what was found on the pages.
func (c *checker) report() Report {
	var r Report
	for _, name := range c.paths {
		p := c.pages[name]
		c.problems = append(c.problems, p.problems...)
		r.Pages++
		r.Equations += p.found.Equations
		r.Stories += p.found.Stories
		r.Choices += p.found.Choices
		r.Pictures += p.found.Pictures
		r.Dots += p.found.Dots
		r.Estimates += p.found.Estimates
		r.Links += p.found.Links
		r.Weights = append(r.Weights, p.found.Weights...)
	}
	return r
}
