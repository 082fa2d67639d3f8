package activity

import (
	"cmp"
	"slices"

	"homebuild/internal/picture"
	"homebuild/internal/strategy"
)

// BestFocus is the strategy that helps with the most stories of a week that
// comes after the earlier ones of a year: of those that suit the target, in their order,
// but one that the target had already after the others, and the one that is asked
// for before them. One that has led its share of the last weeks leads only where no
// other helps with half of the stories. Kinds of stories that a strategy would bring
// into the week do not speak for it. It says with how many stories of the week it then
// helps, of how many; one that comes back from an earlier week does not count.
func (p *Planner) BestFocus(year []Request, r Request) (best strategy.Name, helps, stories int) {
	earlier := weeksBefore(year, r)
	before := p.after(earlier)
	had := map[strategy.Name]int{}
	for _, e := range earlier {
		if e.Target.ID == r.Target.ID {
			had[e.Focus]++
		}
	}
	had[r.Focus] = -1
	led := ledBefore(earlier, r)
	names := slices.Clone(r.Target.Strategies)
	slices.SortStableFunc(names, func(a, b strategy.Name) int {
		return cmp.Or(cmp.Compare(min(led[a], share)/share, min(led[b], share)/share), cmp.Compare(had[a], had[b]))
	})
	r.unbent = true
	for _, name := range names {
		if led[name] >= share && 2*helps >= stories && helps > 0 {
			break
		}
		r.Focus = name
		n, of := helpsWith(name, before.try(r))
		if stories = of; n > helps {
			best, helps = name, n
		}
	}
	if best.Valid() {
		r.Focus, r.unbent = best, false
		helps, stories = helpsWith(best, before.try(r))
	}
	return best, helps, stories
}

// helpsWith is with how many stories of a week a strategy helps, of how many; those
// that come back do not count.
func helpsWith(name strategy.Name, w WeekPlan) (helps, stories int) {
	for _, a := range w.All() {
		if a.Returns {
			continue
		}
		stories++
		if unfocused(name, a.Problem) < notHelped {
			helps++
		}
	}
	return helps, stories
}

// A way leads at most so many of so many weeks, where a target has others: four of
// the eighteen weeks of half a year. Common practice, no published source.
const (
	share   = 4
	shareOf = 18
)

// ledBefore counts how many of the weeks before r that its share is counted over each
// strategy led; none for the one that is asked for.
func ledBefore(earlier []Request, r Request) map[strategy.Name]int {
	led := map[strategy.Name]int{}
	for _, e := range earlier[max(0, len(earlier)-(shareOf-1)):] {
		led[e.Focus]++
	}
	led[r.Focus] = 0
	return led
}

// BestPicture is the picture that can show the most stories of a week that
// comes after the earlier ones of a year: of those that suit the target, the one that is
// asked for and the usual one first. It says how many stories it shows, of how many.
func (p *Planner) BestPicture(year []Request, r Request) (best picture.Kind, shows, stories int) {
	all := p.after(weeksBefore(year, r)).try(r).All()
	all = slices.DeleteFunc(all, func(a Activity) bool { return a.Returns })
	for _, kind := range r.Target.Pictures {
		n := 0
		for _, a := range all {
			if picture.Fits(kind, a.Problem) {
				n++
			}
		}
		if n > shows || n == shows && n > 0 && kind == r.Picture {
			best, shows = kind, n
		}
	}
	return best, shows, len(all)
}

// try plans a week without remembering it.
func (p *planner) try(r Request) WeekPlan {
	return p.aside().week(r)
}
