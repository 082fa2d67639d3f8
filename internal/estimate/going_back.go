package estimate

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// GoingBack tells the check that the answer leads back into the story. Where the
// story's own equation has the unknown inside (8 + ? = 14), the answer is put there:
// 8 + 6 = 14. Where it stands alone (8 + 6 = ?), every change is undone, the last
// one first, to a number that the story tells: 14 - 6 = 8.
func GoingBack(p problem.Problem) phrase.Line {
	own := p.Equation()
	answer := phrase.Number("Answer", p.Answer())
	if sides := own.Sides(); sides[0].Asks() || len(sides[1]) > 1 {
		return phrase.Say("check.put-in", answer, phrase.Equation("Equation", own.Solved()))
	}
	changes := own.Sides()[0]
	back := problem.Number(p.Answer())
	for i := len(changes) - 1; i > 0; i-- {
		back = append(back, problem.Term{Op: changes[i].Op.Inverse(), Value: changes[i].Value})
	}
	first := changes[0].Value
	return phrase.Say("check.back", answer,
		phrase.Equation("Back", problem.Equal(back, problem.Number(first))), phrase.Number("First", first))
}
