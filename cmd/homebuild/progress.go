package main

import (
	"io"
	"sync"
	"time"

	"github.com/schollz/progressbar/v3"

	"homebuild/internal/publish"
)

// progress is a line that grows while a person waits for long work. In scripts,
// and for work that is done at once, it shows nothing.
type progress struct {
	to    io.Writer // nil for nobody who waits
	what  string
	start sync.Once
	bar   *progressbar.ProgressBar
}

// fewPages are done before anyone could read a line about them.
const fewPages = 400

// progress begins a line about pages.
func (s *streams) progress(what string) *progress {
	if !s.watched || s.simple {
		return &progress{}
	}
	return &progress{to: s.err, what: what}
}

// step says that one page of so many is done; several callers at a time may.
func (p *progress) step(of int) {
	if p.to == nil || of < fewPages {
		return
	}
	p.start.Do(func() {
		p.bar = progressbar.NewOptions(of,
			progressbar.OptionSetWriter(p.to), progressbar.OptionSetDescription(p.what), progressbar.OptionSetWidth(30),
			progressbar.OptionSetTheme(progressbar.Theme{Saucer: "#", SaucerPadding: ".", BarStart: "[", BarEnd: "]"}),
			progressbar.OptionShowCount(), progressbar.OptionThrottle(100*time.Millisecond), progressbar.OptionClearOnFinish(),
		)
	})
	_ = p.bar.Add(1) // a line that cannot be shown is no reason to stop
}

// end takes the line away.
func (p *progress) end() {
	if p.bar != nil {
		_ = p.bar.Finish()
	}
}

// watch counts the files that are rendered.
func (p *progress) watch(files []publish.File) []publish.File {
	if p.to == nil {
		return files
	}
	out := make([]publish.File, len(files))
	for i, f := range files {
		out[i] = f
		out[i].Render = func() ([]byte, error) {
			defer p.step(len(files))
			return f.Render()
		}
	}
	return out
}
