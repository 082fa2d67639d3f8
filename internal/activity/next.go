package activity

import (
	"cmp"
	"slices"

	"homebuild/internal/problem"
)

// Suggestion is what a class's next week could be about, and why.
type Suggestion struct {
	Target Target
	New    []problem.Kind // kinds of stories of the target that no week had yet
	Before int            // how many weeks had this target already
	Facts  int            // addition facts that no week had, and the target's stories can show
}

// rest is how many weeks a target waits at least before it is proposed again,
// where there are others.
const rest = 4

// Next proposes a target for the week after the given ones, from those of a grade,
// by a rule that a teacher can follow:
//
//  1. every fourth week, while addition facts were not met, one that is about
//     facts, where the grade has such
//  2. the first one that no week had, in the order of the list, which goes from
//     easy to hard; those before the one that the first week was about come last
//  3. when all of them had their week, one that the last weeks were not about
//     and that the class has not outgrown: the one with the fewest weeks, of
//     these the one that shows the most addition facts that were not met, of
//     these the one whose stories the class has met least, of these the one whose
//     week is longest ago. Its numbers are harder then.
//
// The order of the list follows published sources; the rule is ours (common
// practice, no published source). It reports false when there are no weeks, or
// no targets of the grade.
func Next(grade problem.Grade, weeks []WeekPlan, targets []Target) (Suggestion, bool) {
	if len(weeks) == 0 {
		return Suggestion{}, false
	}
	y := lookBack(weeks)
	var options []Suggestion
	for _, t := range targets {
		if t.Grade == grade {
			options = append(options, y.suggest(t))
		}
	}
	if len(options) == 0 {
		return Suggestion{}, false
	}
	if i := slices.IndexFunc(options, func(s Suggestion) bool { return s.Target.ID == weeks[0].Request.Target.ID }); i > 0 {
		options = slices.Concat(options[i:], options[:i])
	}
	if s, ok := y.facts(options, len(weeks)); ok {
		return s, true
	}
	if i := slices.IndexFunc(options, func(s Suggestion) bool { return s.Before == 0 }); i >= 0 {
		return options[i], true
	}
	if open := slices.DeleteFunc(slices.Clone(options), func(s Suggestion) bool {
		return len(weeks)+1-y.last[s.Target.ID] < rest || s.Facts == 0 && outgrown(s.Target, options)
	}); len(open) > 0 {
		options = open
	}
	return slices.MinFunc(options, func(a, b Suggestion) int {
		return cmp.Or(
			cmp.Compare(a.Before, b.Before), cmp.Compare(b.Facts, a.Facts),
			cmp.Compare(y.least(a.Target), y.least(b.Target)), cmp.Compare(y.last[a.Target.ID], y.last[b.Target.ID]),
		)
	}), true
}

// factsEvery is after how many weeks a class is about addition facts again.
const factsEvery = 4

// facts is the target about facts that shows the most that were not met, where
// such a week is due.
func (y past) facts(options []Suggestion, weeks int) (best Suggestion, due bool) {
	last := 0
	for _, s := range options {
		if !s.Target.aboutFacts() {
			continue
		}
		last = max(last, y.last[s.Target.ID])
		if s.Facts > best.Facts || s.Facts == best.Facts && y.last[s.Target.ID] < y.last[best.Target.ID] {
			best = s
		}
	}
	return best, best.Facts > 0 && weeks+1-last >= factsEvery
}

// outgrown reports whether the harder target of t is among the options, with the
// same kinds of stories and larger numbers, or more tens to pass.
func outgrown(t Target, options []Suggestion) bool {
	return slices.ContainsFunc(options, func(s Suggestion) bool {
		h := s.Target
		return h.ID == t.Harder && (h.Within > t.Within || h.Crossing == CrossAlways && t.Crossing != CrossAlways) &&
			slices.ContainsFunc(h.Kinds, func(k problem.Kind) bool { return slices.Contains(t.Kinds, k) })
	})
}

// past is what matters of the weeks so far for choosing the next.
type past struct {
	skills  map[skill]int // stories
	kinds   map[problem.Kind]bool
	weeks   map[string]int // weeks about a target
	last    map[string]int // the last one, counted from 1; 0 for none
	missing []problem.Pair
}

func lookBack(weeks []WeekPlan) past {
	y := past{map[skill]int{}, map[problem.Kind]bool{}, map[string]int{}, map[string]int{}, Cover(weeks, 0).Missing}
	for i, w := range weeks {
		y.weeks[w.Request.Target.ID]++
		y.last[w.Request.Target.ID] = i + 1
		for _, a := range w.All() {
			y.skills[skill{a.Problem.Kind(), a.within}]++
			y.kinds[a.Problem.Kind()] = true
		}
	}
	return y
}

func (y past) suggest(t Target) Suggestion {
	s := Suggestion{Target: t, Before: y.weeks[t.ID]}
	for _, k := range t.Kinds {
		if !y.kinds[k] {
			s.New = append(s.New, k)
		}
	}
	for _, pair := range y.missing {
		if t.shows(pair) {
			s.Facts++
		}
	}
	return s
}

// least is how many stories the class had of the target's kind that it met least,
// in the target's range.
func (y past) least(t Target) int {
	least := y.skills[skill{t.Kinds[0], t.Within}]
	for _, k := range t.Kinds {
		least = min(least, y.skills[skill{k, t.Within}])
	}
	return least
}

// shows reports whether a story of the target can show an addition fact.
func (t Target) shows(pair problem.Pair) bool {
	a, b := pair.First, pair.Second
	for _, kind := range t.Kinds {
		if kind.Steps() != nil {
			return t.Within <= largestFact
		}
		if kind == problem.TogetherThree || kind == problem.TogetherFour || kind == problem.TogetherBoth {
			continue
		}
		box := t.box(kind)
		for _, n := range []numbers{{a, b}, {b, a}, {a + b, a}, {a + b, b}} {
			p, ok := t.holds(kind, n)
			if ok && box.has(n) && factOf(p.Calculation()).pair == pair {
				return true
			}
		}
	}
	return false
}
