package main

import (
	"time"

	"github.com/schollz/progressbar/v3"

	"homebuild/internal/publish"
	"homebuild/internal/site"
)

// progress is a line that grows while a person waits for long work. In scripts,
// and for work that is done at once, it shows nothing.
type progress struct{ bar *progressbar.ProgressBar }

// fewPages are done before anyone could read a line about them.
const fewPages = 400

// progress starts a line about so many pages.
func (s *streams) progress(what string, pages int) progress {
	if !s.watched || s.simple || pages < fewPages {
		return progress{}
	}
	return progress{progressbar.NewOptions(pages,
		progressbar.OptionSetWriter(s.err), progressbar.OptionSetDescription(what), progressbar.OptionSetWidth(30),
		progressbar.OptionSetTheme(progressbar.Theme{Saucer: "#", SaucerPadding: ".", BarStart: "[", BarEnd: "]"}),
		progressbar.OptionShowCount(), progressbar.OptionThrottle(100*time.Millisecond), progressbar.OptionClearOnFinish(),
	)}
}

// step says that a page is done; several callers at a time may.
func (p progress) step() {
	if p.bar != nil {
		_ = p.bar.Add(1) // a line that cannot be shown is no reason to stop
	}
}

// end takes the line away.
func (p progress) end() {
	if p.bar != nil {
		_ = p.bar.Finish()
	}
}

// watch counts the files that are rendered.
func (p progress) watch(files []publish.File) []publish.File {
	if p.bar == nil {
		return files
	}
	out := make([]publish.File, len(files))
	for i, f := range files {
		out[i] = f
		out[i].Render = func() ([]byte, error) {
			defer p.step()
			return f.Render()
		}
	}
	return out
}

// pagesOf is about how many pages a site will have: four a week, 22 to check
// numbers, and a home in each language, and the links to share.
func pagesOf(in site.Input) int {
	weeks, languages := len(in.Site.Weeks), len(in.Site.Languages)
	return languages*(4*weeks+23) + weeks + 2
}
