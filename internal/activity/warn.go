package activity

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/picture"
)

// warnings tells the teacher which wishes of a week could not be met.
func warnings(plan WeekPlan, chosen []choice, extraMissing bool) []Warning {
	var out []Warning
	r := plan.Request
	if repeated := count(chosen, func(c choice) bool { return c.soon }); repeated > 0 {
		out = append(out, Warning{
			Setting: "target", Count: repeated,
			Text: fmt.Sprintf("of the %d stories %d repeat numbers of this week or of the week before, because %s leaves too few",
				len(chosen), repeated, r.Target.ID),
			Hint: "ask for fewer stories, or choose another target or focus",
		})
	}
	if unfocused := count(chosen, func(c choice) bool { return c.rank.unfocused == notHelped }); 2*unfocused > len(chosen) {
		out = append(out, Warning{
			Setting: "focus", Count: unfocused,
			Text: fmt.Sprintf("%s does not help with %d of the %d stories of %s", r.Focus, unfocused, len(chosen), r.Target.ID),
			Hint: fmt.Sprintf("write focus = %q, or another that suits this target: %s", r.Target.Strategies[0], names(r.Target.Strategies)),
		})
	}
	if w, ok := undrawn(plan); ok {
		out = append(out, w)
	}
	if w, ok := otherwiseKept(r); ok {
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
		Hint: "that is as it should be; pictures that show all of these stories are: " + names(showing(plan.All())),
	}, n > 0
}

// otherwiseKept tells that a week asks for another number of stories than are
// kept: what families have seen stands.
func otherwiseKept(r Request) (Warning, bool) {
	kept := len(r.Kept) - 1 // without the worked one
	return Warning{
		Setting: "stories", Count: kept,
		Text: fmt.Sprintf("the week asks for %d stories, and %d are kept, which families have seen: these stand", r.Stories, kept),
		Hint: "to have all stories chosen anew, take the file away that keeps them; its name ends in .stories.toml",
	}, kept > 0 && len(r.Given) == 0 && kept != r.Stories
}

// showing lists the kinds of picture that can show all of some activities.
func showing(all []Activity) []picture.Kind {
	return slices.DeleteFunc(picture.Kinds(), func(kind picture.Kind) bool {
		return slices.ContainsFunc(all, func(a Activity) bool { return !picture.Fits(kind, a.Problem) })
	})
}

func count(chosen []choice, is func(choice) bool) int {
	n := 0
	for _, c := range chosen {
		if is(c) {
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
