package activity

import (
	"fmt"
	"slices"

	"homebuild/internal/problem"
)

// Rung is where a story of a week stands: among the week's own, or beside them on
// the ladder.
type Rung uint8

const (
	WeeksOwn Rung = iota
	Easier        // asks for less than the week's own stories
	Harder        // asks for more
)

// Rungs are those beside the week's own.
func Rungs() []Rung { return []Rung{Easier, Harder} }

// OnRung is how many stories a rung has.
const OnRung = 2

// String is the word of the rung in files: "easier".
func (r Rung) String() string {
	return [...]string{WeeksOwn: "story", Easier: "easier", Harder: "harder"}[r]
}

// Neighbor is the id of the target that is next on a rung; empty for none.
func (t Target) Neighbor(r Rung) string {
	return map[Rung]string{Easier: t.Easier, Harder: t.Harder}[r]
}

// Beside is what a week asks for on a rung.
type Beside struct {
	Rung    Rung
	Targets []Target // the neighbors of the week's target, one step further each; none at the end of the list
	Kept    []Kept   // as families had them; empty: they are chosen
}

// ladder puts stories beside the week's own: of the target's neighbors, or as they
// are kept. They are for some children, so the class has not met them: nothing of
// them is remembered, and no other story changes when they come or go.
func (p *planner) ladder(r Request, week []Activity) (stories []Activity, missing []Warning) {
	if len(r.Ladder) == 0 {
		return nil, nil
	}
	aside := p.aside()
	for _, b := range r.Ladder {
		var on []Activity
		if len(b.Kept) > 0 {
			on = keptBeside(r, b)
		} else {
			on = aside.rung(r, b, week)
			if len(on) < OnRung && (r.Target.ID != OwnID || len(missing) == 0) { // which has neither, and is told once
				missing = append(missing, lacking(r.Target, b, len(on)))
			}
		}
		for _, a := range on {
			aside.memory.meet(a.Problem)
			a.Rung = b.Rung
			a.estimate()
			stories = append(stories, a)
		}
	}
	return stories, missing
}

// keptBeside are the kept stories of a rung.
func keptBeside(r Request, b Beside) (out []Activity) {
	for _, kept := range b.Kept {
		of := r
		switch {
		case kept.Of != nil:
			of = r.beside(*kept.Of)
		case len(b.Targets) > 0:
			of = r.beside(b.Targets[0])
		}
		out = append(out, newActivity(kept.Problem, of))
	}
	return out
}

// rung chooses the stories of a rung: of the nearest neighbor that has enough.
func (p *planner) rung(r Request, b Beside, week []Activity) (best []Activity) {
	for _, neighbor := range b.Targets {
		of := r.beside(neighbor)
		of.allows = r.Target.stepFrom(b.Rung, week)
		if on := p.aside().onRung(of, b.Rung); len(on) > len(best) {
			best = on
		}
		if len(best) == OnRung {
			break
		}
	}
	return best
}

// onRung chooses stories with numbers that the week has not, and that can be told.
func (p *planner) onRung(r Request, rung Rung) (out []Activity) {
	for i, kind := range p.kindsFor(r, OnRung) {
		const places = 2 * MostStories // those of the week's own stories come first
		best, rank, ok := p.choose(r, kind, places*int(rung)+2*i)
		if !ok || rank.untold > 0 || rank.again > 0 {
			continue
		}
		p.memory.meet(best.problem)
		out = append(out, newActivity(best.problem, r))
	}
	arrange(out)
	return out
}

// stepFrom tells which problems are easier, or harder, than a week of the target:
// they ask for less, or more, than the middle one of its stories; or for as much, in
// a kind of story that comes before, or after, all of the target's.
func (t Target) stepFrom(rung Rung, week []Activity) func(problem.Problem) bool {
	var efforts []int
	for _, a := range week {
		efforts = append(efforts, effort(a.Problem))
	}
	slices.Sort(efforts)
	middle := efforts[len(efforts)/2]
	byStage := func(a, b problem.Kind) int { return stage(a) - stage(b) }
	first, last := stage(slices.MinFunc(t.Kinds, byStage)), stage(slices.MaxFunc(t.Kinds, byStage))
	return func(p problem.Problem) bool {
		asks, at := effort(p), stage(p.Kind())
		if rung == Easier {
			return asks < middle || asks == middle && at < first
		}
		return asks > middle || asks == middle && at > last
	}
}

// beside is the week's request for stories of a neighbor of its target: with the
// week's strategy where the neighbor is good for it, too.
func (r Request) beside(neighbor Target) Request {
	out := r.returning(neighbor)
	if slices.Contains(neighbor.Strategies, r.Focus) {
		out.Focus = r.Focus
	}
	return out
}

// lacking tells that a rung has fewer stories than it should have.
func lacking(t Target, b Beside, has int) Warning {
	w := Warning{
		Setting: "ladder", Count: OnRung - has,
		Text: fmt.Sprintf("the ladder has %d %s stories instead of %d: the list has no more than that beside %s", has, b.Rung, OnRung, t.ID),
		Hint: "the others stand",
	}
	switch {
	case t.ID == OwnID:
		w.Text = "the week has no ladder: a target of your own has no place in the list"
		w.Hint = "take a target of the list, or leave the ladder out"
	case has == 0:
		w.Text = fmt.Sprintf("the ladder has no %s stories: the list has none that are %s than those of %s", b.Rung, b.Rung, t.ID)
		w.Hint = "that is as it should be where the list begins and ends"
	}
	return w
}
