package activity

import (
	"crypto/sha256"
	"encoding/binary"
	"slices"
	"strconv"

	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// planner chooses week after week and remembers.
type planner struct {
	memory *memory
	sets   map[setsKey][]numbers
	lists  map[listKey]*list
}

// setsKey is everything that the sets of numbers to try depend on.
type setsKey struct {
	shape  shape
	within int
	limits Limits
}

// list is the sets of numbers for a kind of story, in their fixed order, and
// what was found out about them so far.
type list struct {
	sets   []numbers
	judged []*candidate
}

// listKey is everything that a list of candidates depends on.
type listKey struct {
	kind     problem.Kind
	within   int
	crossing Crossing
	limits   Limits
	focus    strategy.Name
	grade    problem.Grade
	told     bool // only what stories bear
}

func newPlanner() *planner {
	return &planner{memory: newMemory(), sets: map[setsKey][]numbers{}, lists: map[listKey]*list{}}
}

// list gives the sets of numbers for a kind of story.
func (p *planner) list(r Request, kind problem.Kind) *list {
	t := r.Target
	key := listKey{kind, t.Within, t.Crossing, t.Limits, r.Focus, t.Grade, r.Bears != nil}
	l, ok := p.lists[key]
	if !ok {
		sets := p.setsOf(t, shapeOf(kind))
		l = &list{sets: sets, judged: make([]*candidate, len(sets))}
		p.lists[key] = l
	}
	return l
}

func (p *planner) setsOf(t Target, s shape) []numbers {
	key := setsKey{s, t.Within, t.Limits}
	sets, ok := p.sets[key]
	if !ok {
		sets = slices.Collect(t.sets(s))
		p.sets[key] = sets
	}
	return sets
}

// at gives what is known of the i-th set of a list.
func (l *list) at(i int, r Request, kind problem.Kind) *candidate {
	if l.judged[i] == nil {
		l.judged[i] = judge(r, kind, l.sets[i])
	}
	return l.judged[i]
}

// draw is a number decided by the words given.
func draw(words ...string) uint64 {
	h := sha256.New()
	for _, w := range words {
		h.Write([]byte(strconv.Itoa(len(w)) + ":" + w))
	}
	return binary.BigEndian.Uint64(h.Sum(nil))
}

// walk calls f for every place of a list of n once, from a drawn one on and in
// strides that mix near and far, until f has seen enough.
func walk(n int, drawn uint64, f func(i int) (enough bool)) {
	if n == 0 {
		return
	}
	stride := n*618/1000 + 1
	for greatestDivisor(stride, n) != 1 {
		stride++
	}
	i := int(drawn % uint64(n))
	for range n {
		if f(i) {
			return
		}
		i = (i + stride) % n
	}
}

func greatestDivisor(a, b int) int {
	for b > 0 {
		a, b = b, a%b
	}
	return a
}

// choose picks the numbers for a kind of story: the first set that meets every
// wish, or the nearest to that.
func (p *planner) choose(r Request, kind problem.Kind, place int) (problem.Problem, rank) {
	l := p.list(r, kind)
	var best *candidate
	bestRank := rank{untold: 2} // worse than any
	walk(len(l.sets), draw(r.Key, r.Week, strconv.Itoa(place)), func(i int) bool {
		c := l.at(i, r, kind)
		if !c.holds {
			return false
		}
		if now := p.rankNow(c); now.compare(bestRank) < 0 {
			best, bestRank = c, now
		}
		return bestRank == rank{}
	})
	if best == nil {
		panic("activity: a target with a kind that no numbers fit") // made by neither ParseTargets nor Spec
	}
	return best.problem, bestRank
}

// rankNow is a candidate's rank for a class that has met what it has met.
func (p *planner) rankNow(c *candidate) rank {
	now := c.rank
	if met, ok := p.memory.facts[c.fact]; ok {
		now.repeated = met.week
		if met.week == p.memory.week {
			now.again = 1
		}
	}
	if p.memory.answers[c.problem.Answer()] == p.memory.week {
		now.echo = 1
	}
	return now
}
