package site

import (
	"sync"
	"weak"
)

// cached is what several pages show, the same in every language. It is worked
// out when the first of them is made, and once more only when the garbage
// collector has taken it in the meantime: pages that follow one another share
// it, and memory does not grow with the site.
type cached[T any] struct {
	mu   sync.Mutex
	held weak.Pointer[T]
}

func (s *cached[T]) get(workOut func() *T) *T {
	s.mu.Lock()
	defer s.mu.Unlock()
	v := s.held.Value()
	if v == nil {
		v = workOut()
		s.held = weak.Make(v)
	}
	return v
}
