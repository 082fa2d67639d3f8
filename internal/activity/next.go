package activity

import (
	"cmp"
	"slices"

	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// Suggestion is what a class's next week could be about, and why.
type Suggestion struct {
	Target Target
	New    []problem.Kind // kinds of stories of the target that no week had yet
	Before int            // how many weeks had this target already
}

// Next proposes a target for the week after the given ones, from those of the
// newest week's grade, by a rule that a teacher can follow:
//
//  1. the first one, in the order of the list, which goes from easy to hard,
//     that has a kind of story this class has not met, as Cover counts it
//  2. when all kinds were met, the first one that no week had
//  3. when all of them had their week, the one whose week is longest ago
//
// The rule is ours: common practice, no published source. It reports false when
// there are no weeks, or no targets of the grade.
func Next(weeks []WeekPlan, targets []Target) (Suggestion, bool) {
	if len(weeks) == 0 {
		return Suggestion{}, false
	}
	grade := weeks[len(weeks)-1].Request.Target.Grade
	met := map[problem.Kind]bool{}
	for _, row := range Cover(weeks, grade).Kinds {
		met[row.Kind] = row.Total > 0
	}
	var options []Suggestion
	for _, t := range targets {
		if t.Grade != grade {
			continue
		}
		s := Suggestion{Target: t, Before: len(weeksWith(weeks, t.ID))}
		for _, k := range t.Kinds {
			if !met[k] {
				s.New = append(s.New, k)
			}
		}
		options = append(options, s)
	}
	if len(options) == 0 {
		return Suggestion{}, false
	}
	for _, wanted := range []func(Suggestion) bool{
		func(s Suggestion) bool { return len(s.New) > 0 },
		func(s Suggestion) bool { return s.Before == 0 },
	} {
		if i := slices.IndexFunc(options, wanted); i >= 0 {
			return options[i], true
		}
	}
	last := func(s Suggestion) int { at := weeksWith(weeks, s.Target.ID); return at[len(at)-1] }
	return slices.MinFunc(options, func(a, b Suggestion) int { return cmp.Compare(last(a), last(b)) }), true
}

// weeksWith lists the places of the weeks that had a target.
func weeksWith(weeks []WeekPlan, id string) []int {
	var at []int
	for i, w := range weeks {
		if w.Request.Target.ID == id {
			at = append(at, i)
		}
	}
	return at
}

// BestFocus is the strategy that helps with the most stories of a week that
// comes after the earlier ones: of those that suit the target, in their order.
// It says with how many stories it helps, of how many.
func BestFocus(earlier []Request, r Request) (best strategy.Name, helps, stories int) {
	for _, name := range r.Target.Strategies {
		r.Focus = name
		plan := planAfter(earlier, r)
		all := plan.All()
		n := len(all)
		for _, w := range plan.Warnings {
			if w.Setting == "focus" {
				n -= w.Count
			}
		}
		if n > helps {
			best, helps = name, n
		}
		stories = len(all)
	}
	return best, helps, stories
}

// BestPicture is the picture that can show the most stories of a week that
// comes after the earlier ones: of those that suit the target, the usual one
// first. It says how many stories it shows, of how many.
func BestPicture(earlier []Request, r Request) (best picture.Kind, shows, stories int) {
	all := planAfter(earlier, r).All()
	for _, kind := range r.Target.Pictures {
		n := 0
		for _, a := range all {
			if picture.Fits(kind, a.Problem) {
				n++
			}
		}
		if n > shows {
			best, shows = kind, n
		}
	}
	return best, shows, len(all)
}

// planAfter plans a week that comes after others.
func planAfter(earlier []Request, r Request) WeekPlan {
	weeks := Year(append(slices.Clone(earlier), r))
	at := slices.IndexFunc(weeks, func(w WeekPlan) bool { return w.Request.Week == r.Week })
	return weeks[at]
}
