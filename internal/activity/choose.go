package activity

import (
	"strconv"

	"homebuild/internal/problem"
)

// planner chooses week after week and remembers.
type planner struct {
	memory *memory
	judged map[listKey]map[uint64]*candidate // by place in the box
	helps  map[helpedKey]bool
}

// listKey is everything that a candidate's judgement depends on.
type listKey struct {
	kind     problem.Kind
	within   int
	crossing Crossing
	limits   Limits
	picky    bool // stories bear only some amounts
}

func keyOf(r Request, kind problem.Kind) listKey {
	return listKey{kind, r.Target.Within, r.Target.Crossing, r.Target.Limits, r.Bears != nil}
}

func newPlanner() *planner {
	return &planner{memory: newMemory(), judged: map[listKey]map[uint64]*candidate{}, helps: map[helpedKey]bool{}}
}

// aside is a planner that remembers what p does, and goes its own way from now on.
func (p *planner) aside() *planner {
	return &planner{memory: p.memory.clone(), judged: p.judged, helps: p.helps}
}

// How many sets of numbers are looked at for a story: all there are within
// twenty, where choosing among them matters most, and enough of the others.
const mostConsidered = 100

// How many are looked at where only some are allowed.
const mostAllowed = 20_000

// choose draws numbers for a kind of story: of sets in an order drawn for the
// story, the first one that meets every wish, or the nearest to that. It reports
// false where no numbers make such a story.
func (p *planner) choose(r Request, kind problem.Kind, place int) (best *candidate, bestRank rank, found bool) {
	key := keyOf(r, kind)
	known := p.judged[key]
	if known == nil {
		known = map[uint64]*candidate{}
		p.judged[key] = known
	}
	box := r.Target.box(kind)
	half := p.memory.halfFor(r, place)
	most := mostPlaces
	if r.allows != nil {
		most = mostAllowed
	}
	considered, looked := 0, 0
	for at := range shuffled(box.size(), draw(r.Key, r.Week, strconv.Itoa(place))) {
		c := known[at]
		if c == nil {
			c = judge(r, kind, box.at(at))
			known[at] = c
		}
		if looked++; looked > most {
			break
		}
		if !c.holds || r.allows != nil && !r.allows(c.problem) {
			continue
		}
		if now := p.rankNow(c, r, place, half); best == nil || now.compare(bestRank) < 0 {
			best, bestRank = c, now
		}
		if considered++; bestRank == (rank{}) || considered >= bestRank.mostConsidered(r.duty) {
			break
		}
	}
	return best, bestRank, best != nil
}

// recent is for how many weeks a class remembers the very same numbers.
const recent = 6

// rankNow is a candidate's rank for a class that has met what it has met. When a
// target returns, every other story is to be harder than before.
func (p *planner) rankNow(c *candidate, r Request, place int, wished half) rank {
	now := c.rank
	now.unfocused = c.unfocusedBy(r.Focus)
	if r.duty != noDuty {
		now.undone = now.unfocused
	}
	if r.duty == explains && (c.rank.flaws >= answerTold || !goodExample(r.Focus, c.problem)) {
		now.unshown++
	}
	m := p.memory
	odd := place%2 == 1
	now.met, now.last = m.acquaintance(c, r.Target, !odd)
	if r.Target.aboutFacts() {
		now.stale = c.staleness(now.met, wished)
	}
	if wished != eitherHalf && r.Target.halfOf(c.problem) != wished {
		if r.duty == noDuty {
			now.half = 1
		} else {
			now.unshown++ // a new fact that the strategy helps with comes first
		}
	}
	if met, ok := m.tasks[c.task]; ok {
		now.seen = met.times
		if met.week == m.week {
			now.again = 1
		}
		if m.week-met.week <= recent {
			now.recent = 1
		}
	}
	if odd && m.targets[r.Target.ID] > 0 && !c.hard {
		now.flaws += tooEasy
	}
	if m.answers[c.answer] == m.week {
		now.echo = 1
	}
	return now
}

// staleness orders the facts of a week about facts: those that the class has not met
// come first, and of the easy ones those with a 1 and then the smallest, so that what
// is left for the end of the year is worth it.
func (c *candidate) staleness(met int, wished half) int {
	switch {
	case met > 0:
		return 1 + largestFact
	case wished == lowerHalf && !hasOne(c.problem):
		return largest(c.problem)
	}
	return 0
}

// acquaintance is how often the class met a candidate's facts, and in which week
// last. Where the range has addition facts of one-digit numbers, digits asks for
// them: all others count as met. So do facts with a 1 beyond ten, but in a week about
// facts.
func (m *memory) acquaintance(c *candidate, t Target, digits bool) (times, week int) {
	for _, f := range c.facts {
		met := m.facts[f]
		if digits && t.Within <= largestFact && !f.digits() {
			met.times = max(met.times, 1)
		}
		times, week = times+met.times, max(week, met.week)
	}
	if c.rank.flaws >= withOne && !t.aboutFacts() {
		times = max(times, 1)
	}
	return times, week
}

// largestFact is the range of the addition facts to know by heart (CCSS-M 2010,
// 2.OA.B.2).
const largestFact = 20
