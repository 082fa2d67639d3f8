package main

import (
	"fmt"
	"io"
	"sync"
)

// progress is a line that is written again and again while a person waits for
// long work. In scripts, and for work that is done at once, it shows nothing.
type progress struct {
	to   io.Writer // nil for nobody who waits
	what string

	mu      sync.Mutex
	done    int
	percent int // shown
}

// fewPages are done before anyone could read a line about them.
const fewPages = 400

// progress begins a line about pages.
func (s *streams) progress(what string) *progress {
	if !s.watched {
		return &progress{}
	}
	return &progress{to: s.err, what: what}
}

// step says that one page of so many is done; several callers at a time may.
func (p *progress) step(of int) {
	if p.to == nil || of < fewPages {
		return
	}
	p.mu.Lock()
	defer p.mu.Unlock()
	p.done++
	if percent := 100 * p.done / of; percent > p.percent {
		p.percent = percent
		fmt.Fprintf(p.to, "\r%s  %d of %d  %d%%", p.what, p.done, of, percent)
	}
}

// end takes the line away.
func (p *progress) end() {
	if p.percent > 0 {
		fmt.Fprintf(p.to, "\r%*s\r", 60, "") // not every terminal can erase
	}
}
