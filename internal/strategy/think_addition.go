package strategy

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// thinkAddition turns taking away round: 12 - 8 asks 8 + ? = 12. What is missing
// is worked out, not said: through ten where a ten lies between, else through
// five, else by ones. Four or five more from five or up to ten are one step: they
// fill the row of a ten frame. It wants a part and a missing part up to ten, or so
// short a way that three counts reach the whole.
var thinkAddition = method{
	id:    "think-addition",
	grade: 1,
	fits: forDifference(func(whole, part int) bool {
		missing := whole - part
		return part > 0 && (missing <= mostCounted || (part < 10 && missing <= 10))
	}),
	work: func(c problem.Calculation, w *working) {
		whole, part := c.Numbers[0], c.Numbers[1]
		question := missing(part, whole)
		w.step("ask", question, number("Part", part), number("Whole", whole), phrase.Equation("Question", question))
		w.hint("hint", number("Part", part), number("Whole", whole))
		if part == whole {
			w.step("nothing", made(part, 0), number("Part", part))
			w.chain()
			return
		}
		at, stops, jumps := part, []int{part}, []int(nil)
		for _, to := range addingUp(part, whole) {
			id := "up"
			if to-at == 1 && at != part {
				id = "one"
			}
			w.step(id, made(at, to-at), number("From", at), number("Jump", to-at), number("To", to))
			jumps, stops, at = append(jumps, to-at), append(stops, to), to
		}
		if len(jumps) > 1 {
			w.step("together", made(jumps...), number("Answer", c.Value()))
		}
		switch {
		case len(jumps) == c.Value(): // by ones
			w.countingSlips(problem.Minus)
		case len(jumps) > 1:
			w.forgotten(StepLost, jumps)
			w.stepOff(missing(part, stops[1]))
		}
		w.chain(problem.Sum(jumps...))
		w.walk(stops...)
	},
}

// addingUp lists the stops on the way from a part up to the whole.
func addingUp(part, whole int) []int {
	for _, by := range []int{10, 5} {
		if part < by && by < whole {
			return []int{by, whole}
		}
	}
	if whole-part > mostCounted {
		return []int{whole}
	}
	var stops []int
	for n := part + 1; n <= whole; n++ {
		stops = append(stops, n)
	}
	return stops
}
