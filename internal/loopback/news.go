package loopback

import (
	"fmt"
	"net/http"
	"sync"
	"time"
)

const (
	writeTime = 5 * time.Second  // how long a client may take for one message
	beat      = 15 * time.Second // how often a waiting client hears that we are there
)

// News tells the pages that are open that something is another now.
type News struct {
	mu      sync.Mutex
	count   int           // of what was told
	next    chan struct{} // closed when there is more
	readers int           // pages that are open
}

// NewNews has nothing to tell yet.
func NewNews() *News { return &News{next: make(chan struct{})} }

// Tell tells all pages.
func (n *News) Tell() {
	n.mu.Lock()
	defer n.mu.Unlock()
	n.count++
	close(n.next)
	n.next = make(chan struct{})
}

// Readers is how many pages are open.
func (n *News) Readers() int {
	n.mu.Lock()
	defer n.mu.Unlock()
	return n.readers
}

func (n *News) now() (count int, next <-chan struct{}) {
	n.mu.Lock()
	defer n.mu.Unlock()
	return n.count, n.next
}

func (n *News) reads(more int) {
	n.mu.Lock()
	defer n.mu.Unlock()
	n.readers += more
}

// ServeHTTP sends how often something was told, at once and after each time, as
// server-sent events (HTML Living Standard, section 9.2). A page that is behind gets
// the newest only; one that does not read is let go.
func (n *News) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	n.reads(1)
	defer n.reads(-1)
	w.Header().Set("Content-Type", "text/event-stream")
	control := http.NewResponseController(w)
	tell := func(format string, args ...any) bool {
		if control.SetWriteDeadline(time.Now().Add(writeTime)) != nil {
			return false
		}
		_, err := fmt.Fprintf(w, format, args...)
		return err == nil && control.Flush() == nil
	}
	alive := time.NewTicker(beat)
	defer alive.Stop()
	// The request is read; what comes now may take as long as the lesson does.
	if control.SetReadDeadline(time.Time{}) != nil || !tell("retry: 500\n\n") {
		return
	}
	for {
		count, next := n.now()
		if !tell("data: %d\n\n", count) {
			return
		}
		for waiting := true; waiting; {
			select {
			case <-next:
				waiting = false
			case <-alive.C:
				if !tell(": still here\n\n") {
					return
				}
			case <-r.Context().Done():
				return
			}
		}
	}
}
