package activity

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/picture"
)

// warnings tells the teacher which wishes of a week could not be met.
func (p *planner) warnings(plan WeekPlan, ranks []rank, extraMissing bool) []Warning {
	var out []Warning
	r := plan.Request
	again := count(ranks, func(k rank) bool { return k.again > 0 })
	repeated := count(ranks, func(k rank) bool { return k.again == 0 && k.repeated > 0 })
	if again+repeated > 0 {
		out = append(out, Warning{
			Setting: "target", Count: again + repeated,
			Text: fmt.Sprintf("%s has %d different sets of numbers that fit this week, and %d of the %d stories repeat one%s",
				r.Target.ID, p.fitting(r), again+repeated, len(ranks), whence(again)),
			Hint: "ask for fewer stories, or choose another target or focus",
		})
	}
	if trivial := count(ranks, func(k rank) bool { return k.trivial > 0 }); trivial > 0 {
		out = append(out, Warning{
			Setting: "target", Count: trivial,
			Text: fmt.Sprintf("%d of the %d stories have a 0 or a 1, because the target leaves nothing else", trivial, len(ranks)),
			Hint: "ask for fewer stories, or choose a target with a larger range",
		})
	}
	if unfocused := count(ranks, func(k rank) bool { return k.unfocused > 0 }); unfocused > 0 {
		out = append(out, Warning{
			Setting: "focus", Count: unfocused,
			Text: fmt.Sprintf("%s does not help with %d of the %d stories of %s", r.Focus, unfocused, len(ranks), r.Target.ID),
			Hint: "strategies that suit this target are: " + names(r.Target.Strategies),
		})
	}
	if w, ok := undrawn(plan); ok {
		out = append(out, w)
	}
	if extraMissing {
		out = append(out, Warning{
			Setting: "extra-sentence", Count: len(plan.Stories),
			Text: "none of the stories can take a number that is not needed",
			Hint: "leave the setting out, or choose a target with one-step stories",
		})
	}
	return out
}

// undrawn tells of the stories of a week that its picture cannot show: they have
// bars instead.
func undrawn(plan WeekPlan) (Warning, bool) {
	r := plan.Request
	if !r.Picture.Valid() {
		return Warning{}, false
	}
	var kinds []string
	n := 0
	for _, a := range plan.All() {
		if !picture.Fits(r.Picture, a.Problem) {
			n++
			kinds = append(kinds, a.Problem.Kind().String())
		}
	}
	slices.Sort(kinds)
	return Warning{
		Setting: "picture", Count: n,
		Text: fmt.Sprintf("%s does not show %d of the %d stories (%s): they have a %s",
			r.Picture, n, len(plan.All()), strings.Join(slices.Compact(kinds), ", "), picture.BarModel),
		Hint: "nothing to do; pictures for all stories of this target are: " + names(r.Target.Pictures),
	}, n > 0
}

func whence(again int) string {
	if again > 0 {
		return " of the same week or an earlier one"
	}
	return " of an earlier week"
}

func count(ranks []rank, is func(rank) bool) int {
	n := 0
	for _, k := range ranks {
		if is(k) {
			n++
		}
	}
	return n
}

func names[T fmt.Stringer](list []T) string {
	words := make([]string, len(list))
	for i, v := range list {
		words[i] = v.String()
	}
	return strings.Join(words, ", ")
}

// fitting counts the different numbers that the target and the focus leave,
// met or not.
func (p *planner) fitting(r Request) int {
	facts := map[fact]bool{}
	for _, kind := range r.Target.Kinds {
		l := p.list(r.Target, kind, r.Focus)
		for i := range l.sets {
			if c := l.at(i, r, kind); c.holds && c.rank.trivial == 0 && c.rank.unfocused == 0 {
				facts[c.fact] = true
			}
		}
	}
	return len(facts)
}
