package activity

import (
	"slices"

	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// duty is what a story does for the strategy that its week practices.
type duty uint8

const (
	noDuty    duty = iota // its numbers suit the strategy where nothing else is against it
	practices             // the strategy helps with it
	explains              // and it is a good example of the strategy: the worked one
)

// spot is a story of a week before its numbers are chosen.
type spot struct {
	kind problem.Kind
	duty duty
}

// practicing is how many of the stories to try a week's strategy is to help with: half
// of them, at least one, so that children still choose (common practice, no published
// source).
func practicing(stories int) int { return max(1, stories/2) }

// spotsFor are a week's spots for stories of some kinds. Where the week practices a
// strategy, it helps with the worked story and with enough of those to try: where
// too few are of kinds that it helps with, the last ones make room.
func (p *planner) spotsFor(r Request, kinds []problem.Kind) []spot {
	spots := make([]spot, len(kinds))
	for i, k := range kinds {
		spots[i].kind = k
	}
	if !r.Focus.Valid() || r.unbent {
		return spots
	}
	helped := p.helped(r)
	if len(helped) == 0 {
		return spots
	}
	free := p.freeSpots(r, spots)
	short := min(1+practicing(len(kinds)-1), len(free))
	for _, s := range free {
		if short > 0 && slices.Contains(helped, s.kind) {
			s.duty, short = practices, short-1
		}
	}
	for _, s := range slices.Backward(free) {
		if short > 0 && s.duty == noDuty {
			s.kind, s.duty, short = rarest(helped, spots), practices, short-1
		}
	}
	lead(r.Target, helped, free)
	return spots
}

// freeSpots are those that may practice the week's strategy. The others bring an earlier
// week's skill back, or are for easy facts that the class has not met.
func (p *planner) freeSpots(r Request, spots []spot) (free []*spot) {
	for i := range spots {
		if !r.mayReturn(i, len(spots)) && p.memory.halfFor(r, i) != lowerHalf {
			free = append(free, &spots[i])
		}
	}
	if len(free) == 0 {
		free = append(free, &spots[0])
	}
	return free
}

// lead makes one of the stories that the strategy helps with the worked one: the first
// that is no difficult kind, but as in [planner.kindsFor], and no number to take apart,
// of which every pair is found, whatever the way.
func lead(t Target, helped []problem.Kind, spots []*spot) {
	about := t.Kinds[0].Difficult()
	leads := func(k problem.Kind) bool { return k.Difficult() == about && k != problem.TogetherBoth }
	at := slices.IndexFunc(spots, func(s *spot) bool { return s.duty == practices && leads(s.kind) })
	if at < 0 {
		at = slices.IndexFunc(spots, func(s *spot) bool { return s.duty == practices })
		if i := slices.IndexFunc(helped, leads); i >= 0 {
			spots[at].kind = helped[i]
		}
	}
	spots[at].duty = explains
}

// rarest is the kind that the fewest spots have, of equals the first.
func rarest(kinds []problem.Kind, spots []spot) problem.Kind {
	times := func(k problem.Kind) (n int) {
		for _, s := range spots {
			if s.kind == k {
				n++
			}
		}
		return n
	}
	return slices.MinFunc(kinds, func(a, b problem.Kind) int { return times(a) - times(b) })
}

// helpedKey is everything that it depends on whether a strategy helps with a kind.
type helpedKey struct {
	listKey
	focus strategy.Name
}

// helped lists the target's kinds of stories that the week's strategy helps with, those
// that the class has met least first.
func (p *planner) helped(r Request) []problem.Kind {
	return slices.DeleteFunc(p.kindsFor(r, len(r.Target.Kinds)), func(kind problem.Kind) bool {
		key := helpedKey{keyOf(r, kind), r.Focus}
		helps, known := p.helps[key]
		if !known {
			helps = r.helps(kind)
			p.helps[key] = helps
		}
		return !helps
	})
}

// FocusKind is a kind of story of the target with numbers that the week's strategy
// helps with: the given one where it can be. It reports false where there is none.
func FocusKind(r Request, kind problem.Kind) (problem.Kind, bool) {
	helped := newPlanner().helped(r)
	if slices.Contains(helped, kind) {
		return kind, true
	}
	if len(helped) == 0 {
		return kind, false
	}
	return helped[0], true
}

// mostTried is how many sets of numbers are tried for one that a strategy helps with.
// Of those in the list of targets, the rarest helps with one in a hundred.
const mostTried = 2000

// mostConsidered is how many sets of numbers are looked at where the best of them so
// far has a rank: more until the strategy of a week helps, and some more for a good
// example of it.
func (r rank) mostConsidered(d duty) int {
	const forAnExample = 4 * mostConsidered
	switch {
	case r.undone == notHelped:
		return mostTried
	case d == explains && r.unshown > 0:
		return forAnExample
	}
	return mostConsidered
}

// helps reports whether the week's strategy helps with some numbers of a kind of story
// that can be told.
func (r Request) helps(kind problem.Kind) bool {
	box := r.Target.box(kind)
	tried := 0
	for at := range shuffled(box.size(), 0) {
		p, holds := r.Target.holds(kind, box.at(at))
		if !holds {
			continue
		}
		if tried++; tried > mostTried || tried == 1 && !isFor(r.Focus, p) {
			break
		}
		if unfocused(r.Focus, p) < notHelped && (r.Bears == nil || r.Bears.Bears(p)) {
			return true
		}
	}
	return false
}

// isFor reports whether a strategy is for a step of a problem, whatever its numbers.
func isFor(name strategy.Name, p problem.Problem) bool {
	return slices.ContainsFunc(p.Steps(), func(step problem.Problem) bool {
		c := step.Calculation()
		return strategy.IsFor(name, c.Op, len(c.Numbers))
	})
}
