package main

import (
	"fmt"
	"sync"
)

// fewPages are done before anyone could read a line about them.
const fewPages = 400

// progress begins a line that is written again and again while a person waits for
// long work. Step says that one page of so many is done, several callers at a time
// may; end takes the line away. In scripts, and for work that is done at once, it
// shows nothing.
func (s *streams) progress(what string) (step func(of int), end func()) {
	var mu sync.Mutex
	done, shown := 0, 0 // pages, and percent
	step = func(of int) {
		if !s.watched || of < fewPages {
			return
		}
		mu.Lock()
		defer mu.Unlock()
		done++
		if percent := 100 * done / of; percent > shown {
			shown = percent
			fmt.Fprintf(s.err, "\r%s  %d of %d  %d%%", what, done, of, percent)
		}
	}
	end = func() {
		if shown > 0 {
			fmt.Fprintf(s.err, "\r%*s\r", 60, "") // not every terminal can erase
		}
	}
	return step, end
}
