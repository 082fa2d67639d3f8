package story

import (
	"errors"
	"fmt"
	"hash/fnv"

	"homebuild/internal/problem"
)

// ErrNoEvent says that no event tells a kind, or none with such amounts; the
// teacher is told which languages hold events back.
var ErrNoEvent = errors.New("no story can be told")

// Week asks for the stories of a week.
type Week struct {
	Date    string // with the site's key it decides what chance would
	Place   string // where the week begins; empty lets the places take turns
	Tales   []Tale // in the order of the week, the worked story first
	InWords bool   // numbers as words where the language has them
	// Apart reports whether an extra number keeps apart from the numbers of a
	// problem and from what mistakes give; nil takes any.
	Apart func(p problem.Problem, extra int) bool
}

// Tale is a story to tell. One with an event is told as it stands; for one
// without, the teller chooses it.
type Tale struct {
	Choice
	WantsExtra bool // a number that nobody needs is to be chosen, too
}

// Teller tells the weeks of a site, one after the other, and remembers what it
// has told, so that places and tales take turns. It is a pure function of its key
// and of the weeks so far; it is not safe for concurrent use.
type Teller struct {
	places Places
	key    string
	weeks  int            // told so far
	begun  map[string]int // the week that last began in a place, from 1
	met    map[tale]int   // how often each was told
}

// tale is an event with what is asked: the same words with other numbers.
type tale struct {
	event string
	kind  problem.Kind
}

// NewTeller makes a teller for a site with the given key.
func NewTeller(places Places, key string) *Teller {
	return &Teller{places: places, key: key, begun: map[string]int{}, met: map[tale]int{}}
}

// Week tells a week as one afternoon: it begins in its place and goes on next
// door where the place has too few events for it; where both have, it is a day in
// town. No event is told twice while there is another. The error wraps ErrNoEvent.
func (t *Teller) Week(w Week) ([]Story, error) {
	t.weeks++
	a, err := t.afternoon(w)
	if err != nil {
		return nil, err
	}
	t.begun[a.place] = t.weeks
	stories := make([]Story, len(w.Tales))
	for i, x := range w.Tales {
		e := a.events[i]
		t.met[tale{e.ID, x.Problem.Kind()}]++
		if x.WantsExtra {
			x.Extra = t.extra(w, i, e)
		}
		stories[i] = write(e, x.Choice, w.InWords)
	}
	return stories, nil
}

// extra chooses the number that nobody needs: from the event's own span, in a
// story with small numbers from its low end; 0 when none keeps apart.
func (t *Teller) extra(w Week, i int, e *Event) int {
	p := w.Tales[i].Problem
	low := min(e.Extra.Most, max(largest(p), e.Extra.Least+(e.Extra.Most-e.Extra.Least)/4))
	for _, span := range [][2]int{{e.Extra.Least, low}, {low + 1, e.Extra.Most}} {
		n := span[1] - span[0] + 1
		for at := range n {
			extra := span[0] + (at+int(t.hash(w, i, e.ID)%uint64(n)))%n
			if w.Apart == nil || w.Apart(p, extra) {
				return extra
			}
		}
	}
	return 0
}

// largest is the largest number of a problem, on the way or as its answer.
func largest(p problem.Problem) int {
	most := 0
	for _, step := range p.Steps() {
		for _, q := range step.Quantities() {
			most = max(most, q.Value)
		}
	}
	return most
}

// hash decides among equals, so that an added candidate or an edited note does
// not reshuffle the rest.
func (t *Teller) hash(w Week, i int, id string) uint64 {
	h := fnv.New64a()
	fmt.Fprintf(h, "%s\x00%s\x00%d\x00%s", t.key, w.Date, i, id)
	return h.Sum64()
}
