package activity

import (
	"slices"
	"testing"

	"homebuild/internal/strategy"
)

// A planner that goes on from earlier years plans as one that begins anew: whatever
// was asked for in between, and wherever the years part.
func TestPlannerGoesOn(t *testing.T) {
	targets := embedded(t)
	var year []Request
	for i := range 12 {
		year = append(year, Request{Week: monday(i), Key: "puddle", Target: targets[i], Stories: 4, Review: true})
	}
	changed := func(at int, change func(*Request)) []Request {
		out := slices.Clone(year)
		change(&out[at])
		return out
	}
	var p Planner
	for i, requests := range [][]Request{
		year, year[:5], year, year[:0], year,
		changed(11, func(r *Request) { r.Stories = 6 }),
		changed(3, func(r *Request) { r.Focus = strategy.CountOn }),
		changed(0, func(r *Request) { r.Target = targets[20] }),
		changed(6, func(r *Request) { r.Bears = evens }),
		slices.Delete(slices.Clone(year), 4, 5), year,
	} {
		if got, want := told(p.Year(requests)), told(Year(requests)); got != want {
			t.Errorf("year %d: want\n%s\ngot\n%s", i, want, got)
		}
		if len(requests) == 0 {
			continue
		}
		next := Request{Week: monday(40), Key: "puddle", Target: targets[7], Stories: 4}
		focus, helps, _ := p.BestFocus(requests, next)
		picture, shows, _ := p.BestPicture(requests, next)
		focusAnew, helpsAnew, _ := new(Planner).BestFocus(requests, next)
		pictureAnew, showsAnew, _ := new(Planner).BestPicture(requests, next)
		if focus != focusAnew || helps != helpsAnew || picture != pictureAnew || shows != showsAnew {
			t.Errorf("year %d: %v for %d and %v for %d, anew %v for %d and %v for %d", i, focus, helps, picture, shows, focusAnew, helpsAnew, pictureAnew, showsAnew)
		}
	}
	if known := p.known(year); known != len(year) {
		t.Errorf("%d of %d weeks need not be planned again", known, len(year))
	}
}

// A planner keeps what the class had met for sixty weeks; where a year parts before
// that, it is planned anew.
func TestPlannerForgets(t *testing.T) {
	weeks := weeksOf(named(t, "add-within-20"), remembered+3, 1)
	var p Planner
	if got, want := told(p.Year(weeks)), told(Year(weeks)); got != want {
		t.Errorf("want\n%s\ngot\n%s", want, got)
	}
	for at, known := range map[int]int{0: 0, 2: 0, 3: 0, 4: 4, 5: 5, remembered + 2: remembered + 2} {
		changed := slices.Clone(weeks)
		changed[at].Stories = 2
		if got := p.known(changed); got != known {
			t.Errorf("where week %d is another %d need not be planned again, want %d", at, got, known)
		}
	}
	if got := p.known(weeks[:remembered]); got != remembered {
		t.Errorf("of %d weeks %d need not be planned again", remembered, got)
	}
}
