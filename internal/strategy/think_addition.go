package strategy

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// thinkAddition wants an addition that is known: both parts up to ten, or
// parts so close to the whole that three counts reach it. 12 - 8: 8 + ? = 12.
var thinkAddition = method{
	id: "think-addition",
	fits: forDifference(func(whole, part int) bool {
		missing := whole - part
		return part > 0 && (missing <= mostCounted || (part <= 10 && missing <= 10))
	}),
	work: func(c problem.Calculation, w *working) {
		whole, part, missing := c.Numbers[0], c.Numbers[1], c.Value()
		question := problem.Equal(problem.Sum(part, missing).Asking(1), problem.Number(whole))
		w.step("ask", question, number("Part", part), number("Whole", whole), phrase.Equation("Question", question))
		w.step("know", made(part, missing), number("Part", part), number("Answer", missing), number("Whole", whole))
		w.chain()
		if missing > 0 {
			w.walk(part, whole)
		}
	},
}
