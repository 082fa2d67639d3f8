package activity

import (
	"fmt"
	"slices"
	"strings"
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
			Hint: "strategies that suit this target are: " + names(r.Target.Strategies),
		})
	}
	if r.Picture.Valid() && !slices.Contains(r.Target.Pictures, r.Picture) {
		out = append(out, Warning{
			Setting: "picture", Count: len(plan.All()),
			Text: fmt.Sprintf("%s does not suit %s", r.Picture, r.Target.ID),
			Hint: "pictures that suit this target are: " + names(r.Target.Pictures),
		})
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
