package story

import (
	"cmp"
	"fmt"
	"math"
	"slices"
)

// afternoon is a week's way through the town.
type afternoon struct {
	place  string   // where it begins
	events []*Event // of each tale
	again  int      // how often they were told before, counted together
}

// afternoon chooses where a week begins and what it tells: in the place that has
// waited longest among those where the fewest tales come again.
func (t *Teller) afternoon(w Week) (afternoon, error) {
	places := t.inTurn(w)
	var best afternoon
	for _, p := range places {
		a, ok := t.here(w, p)
		if ok && (best.events == nil || a.again < best.again) {
			best = a
		}
		if best.events != nil && best.again == 0 {
			break
		}
	}
	if best.events != nil {
		return best, nil
	}
	return t.inTown(w, places[0], nil)
}

// inTurn lists the places where a week may begin, the one that has waited
// longest first.
func (t *Teller) inTurn(w Week) []*Place {
	if p := t.places.Place(w.Place); p != nil {
		return []*Place{p}
	}
	places := make([]*Place, len(t.places))
	for i := range t.places {
		places[i] = &t.places[i]
	}
	slices.SortFunc(places, func(a, b *Place) int {
		return cmp.Or(cmp.Compare(t.begun[a.ID], t.begun[b.ID]), cmp.Compare(t.hash(w, -1, a.ID), t.hash(w, -1, b.ID)))
	})
	return places
}

// here tells a week in a place and next door: the first tales in the place, the
// rest next door. As few as can be come again, and as many as can be stay in the
// place.
func (t *Teller) here(w Week, p *Place) (best afternoon, ok bool) {
	own := t.candidates(w, p.Events)
	var next [][]*Event
	if door := t.places.Place(p.Next); door != nil {
		next = t.candidates(w, door.Events)
	} else {
		next = make([][]*Event, len(w.Tales))
	}
	for stay := len(w.Tales); stay >= 0; stay-- {
		events, whole := match(append(slices.Clone(own[:stay]), next[stay:]...))
		if !whole {
			continue
		}
		if again := t.again(w, events); !ok || again < best.again {
			best, ok = afternoon{p.ID, events, again}, true
		}
	}
	return best, ok
}

// inTown tells a week anywhere: first in its place and next door, then in as few
// other places as can be. An event comes twice, or is one of those that were had,
// only where there are too few.
func (t *Teller) inTown(w Week, p *Place, had map[string]bool) (afternoon, error) {
	far := func(e *Event) uint64 {
		switch {
		case had[e.ID]:
			return math.MaxUint64
		case e.Place == p.ID:
			return 0
		case e.Place == p.Next:
			return 1
		}
		return max(2, t.hash(w, -1, e.Place))
	}
	all := t.candidates(w, t.places.Events())
	for i := range all {
		slices.SortStableFunc(all[i], func(a, b *Event) int { return cmp.Compare(far(a), far(b)) })
	}
	events, _ := match(all)
	for i, e := range events {
		if e != nil {
			continue
		}
		if len(all[i]) == 0 {
			x := w.Tales[i].Problem
			return afternoon{}, fmt.Errorf("%w: no event tells %v with %v", ErrNoEvent, x.Kind(), x.Numbers())
		}
		events[i] = all[i][0]
	}
	return afternoon{p.ID, events, t.again(w, events)}, nil
}

// candidates lists the events that can tell each of a week's tales, those told
// least often first. A tale with an event has that alone, wherever it is.
func (t *Teller) candidates(w Week, from []*Event) [][]*Event {
	out := make([][]*Event, len(w.Tales))
	for i, x := range w.Tales {
		if x.Event != "" {
			if e := t.places.Event(x.Event); e != nil {
				out[i] = []*Event{e}
			}
			continue
		}
		for _, e := range from {
			if e.Bears(x.Problem) && (!x.WantsExtra || t.extra(w, i, e) > 0) {
				out[i] = append(out[i], e)
			}
		}
		slices.SortFunc(out[i], func(a, b *Event) int {
			return cmp.Or(
				cmp.Compare(t.times(w, i, a), t.times(w, i, b)),
				cmp.Compare(t.hash(w, i, a.ID), t.hash(w, i, b.ID)))
		})
	}
	return out
}

func (t *Teller) times(w Week, i int, e *Event) int {
	return t.met[tale{e.ID, w.Tales[i].Problem.Kind()}]
}

func (t *Teller) again(w Week, events []*Event) int {
	n := 0
	for i, e := range events {
		n += t.times(w, i, e)
	}
	return n
}

// match gives each tale an event of its own: the first of its candidates that is
// free, and where none is, those of the tales before it make room (Kuhn's
// algorithm for a matching of the largest size). It reports whether every tale
// has one.
func match(candidates [][]*Event) (events []*Event, whole bool) {
	events, whole = make([]*Event, len(candidates)), true
	owner := map[*Event]int{}
	var give func(i int, seen map[*Event]bool) bool
	give = func(i int, seen map[*Event]bool) bool {
		for _, e := range candidates[i] {
			if _, taken := owner[e]; !taken {
				owner[e], events[i] = i, e
				return true
			}
		}
		for _, e := range candidates[i] {
			if seen[e] {
				continue
			}
			seen[e] = true
			if give(owner[e], seen) {
				owner[e], events[i] = i, e
				return true
			}
		}
		return false
	}
	for i := range candidates {
		whole = give(i, map[*Event]bool{}) && whole
	}
	return events, whole
}
