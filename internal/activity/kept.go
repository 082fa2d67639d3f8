package activity

import (
	"slices"
	"strconv"

	"homebuild/internal/problem"
)

// keep takes a week's kept problems as they stand.
func (p *planner) keep(r Request, plan *WeekPlan) {
	for place, kept := range r.Kept {
		of := r
		if kept.Of != nil {
			of = r.returning(*kept.Of)
		}
		p.memory.meet(kept.Problem)
		p.memory.practice(kept.Problem.Kind(), of.Target)
		a := newActivity(kept.Problem, of)
		a.Returns = kept.Of != nil
		if place == 0 {
			plan.Worked = a
			continue
		}
		plan.Stories = append(plan.Stories, a)
	}
}

// returning is the week's request for a story that brings back an earlier target.
func (r Request) returning(earlier Target) Request {
	if !slices.Contains(earlier.Pictures, r.Picture) {
		r.Picture = 0
	}
	r.Target, r.Focus, r.duty = earlier, 0, noDuty
	return r
}

// Change says how another problem is to differ from one of a week.
type Change uint8

const (
	OtherNumbers Change = iota
	EasierNumbers
	HarderNumbers
)

// Another chooses a problem to take the place of one: of the given kind, with
// other numbers, or with easier or harder ones. A target's neighbours, looked up
// by id, lend theirs where its own numbers do not reach. The week's problems
// are those that it has, none of which comes again. False: there is none.
func Another(r Request, now problem.Problem, kind problem.Kind, change Change, week []problem.Problem, find func(id string) (Target, bool)) (problem.Problem, bool) {
	p := newPlanner()
	p.memory.week = 1
	for _, has := range week {
		p.memory.meet(has)
	}
	for target := r.Target; ; {
		of := r
		of.Target = target
		if target.ID != r.Target.ID {
			of.Focus = 0
		}
		if best, ok := p.other(of, now, kind, change); ok {
			return best, true
		}
		next := map[Change]string{EasierNumbers: target.Easier, HarderNumbers: target.Harder}[change]
		further, ok := find(next)
		if !ok || further.ID == r.Target.ID {
			return now, false
		}
		target = further
	}
}

// other draws numbers that no story of the week has.
func (p *planner) other(r Request, now problem.Problem, kind problem.Kind, change Change) (problem.Problem, bool) {
	var best *candidate
	var bestRank rank
	considered := 0
	box := r.Target.box(kind)
	words := []string{r.Key, r.Week, "other"}
	for _, n := range now.Numbers() { // the way from numbers to others does not turn round at once
		words = append(words, strconv.Itoa(n))
	}
	looked := 0
	for at := range shuffled(box.size(), draw(words...)) {
		if looked++; looked > mostAllowed { // a box may be large, and none of its sets allowed
			break
		}
		c := judge(r, kind, box.at(at))
		if !c.holds || c.rank.untold > 0 || !change.allows(c.problem, now) {
			continue
		}
		rank := p.rankNow(c, r, 0, eitherHalf)
		if rank.again > 0 {
			continue
		}
		if best == nil || rank.compare(bestRank) < 0 {
			best, bestRank = c, rank
		}
		if considered++; considered == mostConsidered {
			break
		}
	}
	if best == nil {
		return now, false
	}
	return best.problem, true
}

// allows reports whether a problem is what the change asks for.
func (c Change) allows(p, now problem.Problem) bool {
	switch c {
	case EasierNumbers:
		return effort(p) < effort(now)
	case HarderNumbers:
		return effort(p) > effort(now)
	}
	return true
}

// effort orders problems by what they ask of a child: how large the numbers are, in
// the ranges of the years, and, which counts for more, whether a ten is passed; then
// whether every number has tens (common practice, no published source). Two steps
// ask for both.
func effort(p problem.Problem) int {
	const larger, passing, tens = 4, 5, 2
	total := 0
	for _, step := range p.Steps() {
		c := step.Calculation()
		total += larger * slices.IndexFunc([]int{5, 10, 20, 100, problem.Largest}, func(most int) bool { return c.Largest() <= most })
		if passes, _ := crossing(c); passes && p.Kind() != problem.TogetherBoth { // any parts are right
			total += passing
		}
		if slices.Min(c.Numbers) >= 10 {
			total += tens
		}
	}
	return total
}
