package preview

import (
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"sync"

	"homebuild/internal/diag"
)

// site is what is shown now: the last good pages, and what is the matter with
// the files since.
type site struct {
	mu     sync.Mutex
	good   int // how many good sites there were
	pages  map[string]Page
	groups []group
	first  string
	cache  map[string]rendered // rendered since the last good site
	state  []byte              // as JSON for the shell
	next   chan struct{}       // closed when state changes
}

// rendered is a page as it is sent.
type rendered struct {
	html []byte
	tag  string // names its bytes
	err  error
}

// maxCached bounds the memory for rendered pages.
const maxCached = 500

func newSite() *site {
	return &site{pages: map[string]Page{}, cache: map[string]rendered{}, next: make(chan struct{})}
}

// state is what the shell shows, in JSON.
type state struct {
	Good     int       `json:"good"` // changes when the pages do
	First    string    `json:"first"`
	Groups   []group   `json:"groups"`
	Problems []problem `json:"problems"`
	Notices  []problem `json:"notices"`
}

type problem struct {
	Place string `json:"place"` // "weeks/2026-09-14.md, line 3"
	Text  string `json:"text"`
	Hint  string `json:"hint"`
}

// update takes in a site that was made. One with problems leaves the last good
// pages where they are.
func (s *site) update(made Result) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if len(made.Problems) == 0 {
		s.good++
		s.pages = make(map[string]Page, len(made.Pages))
		for _, p := range made.Pages {
			s.pages[p.Path] = p
		}
		s.groups, s.first = list(made.Pages), made.First
		clear(s.cache)
	}
	data, err := json.Marshal(state{
		Good: s.good, First: s.first, Groups: s.groups,
		Problems: problems(made.Problems), Notices: problems(made.Notices),
	})
	if err != nil {
		panic("preview: " + err.Error()) // strings and numbers only
	}
	s.state = data
	close(s.next)
	s.next = make(chan struct{})
}

// now is the state, and a channel that is closed when there is another.
func (s *site) now() (data []byte, next <-chan struct{}) {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.state, s.next
}

// page renders a page, once for each good site.
func (s *site) page(path string) (page rendered, ok bool) {
	s.mu.Lock()
	good := s.good
	p, known := s.pages[path]
	page, ready := s.cache[path]
	s.mu.Unlock()
	if !known || ready {
		return page, known
	}
	page = render(p)
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.good == good {
		if len(s.cache) >= maxCached {
			clear(s.cache)
		}
		s.cache[path] = page
	}
	return page, true
}

func render(p Page) rendered {
	html, err := p.Render()
	sum := sha256.Sum256(html)
	return rendered{html: html, tag: `"` + hex.EncodeToString(sum[:8]) + `"`, err: err}
}

// problems are written for the eye: the place apart from the text.
func problems(found diag.Diagnostics) []problem {
	out := make([]problem, len(found))
	for i, p := range found {
		out[i] = problem{Place: place(p), Text: p.Text, Hint: p.Hint}
	}
	return out
}
