package mistake

import (
	"slices"

	"homebuild/internal/problem"
)

// storyRules are the causes that lie in the reading of the story.
var storyRules = []rule{
	{ReversedComparison, reversedComparison},
	{AddedInstead, addedInstead},
	{SubtractedInstead, subtractedInstead},
	{SecondTurned, secondTurned},
	{StepsTurned, stepsTurned},
	{FirstStepOnly, firstStepOnly},
	{LeftOut, leftOut},
	{UsedExtra, usedExtra},
	{PartOnly, partOnly},
	{ReversedDigits, reversedDigits},
	{SideBySide, sideBySide},
}

// flipped is the calculation of two numbers with the other operation.
func (r reading) flipped() problem.Expression {
	a, b := r.calc.Numbers[0], r.calc.Numbers[1]
	if r.calc.Op == problem.Minus {
		return problem.Sum(a, b)
	}
	return problem.Difference(max(a, b), min(a, b))
}

func reversedComparison(r reading) []wrong {
	if r.kind() == problem.BiggerThenTogether && r.told[0] >= r.told[1] {
		return []wrong{worked(problem.Sum(r.told[0], r.told[0]-r.told[1]))}
	}
	if !r.reversible() {
		return nil
	}
	return []wrong{worked(r.flipped())}
}

func addedInstead(r reading) []wrong {
	if r.chain() || r.reversible() || r.calc.Op == problem.Plus {
		return nil
	}
	return []wrong{worked(r.flipped())}
}

func subtractedInstead(r reading) []wrong {
	if r.chain() || r.reversible() || r.calc.Op == problem.Minus || len(r.calc.Numbers) != 2 {
		return nil
	}
	return []wrong{worked(r.flipped())}
}

// secondTurned is a chain whose second change went the other way.
func secondTurned(r reading) []wrong { return r.turned(2) }

// stepsTurned is a chain whose first change went the other way, or both did.
func stepsTurned(r reading) []wrong { return slices.Concat(r.turned(1), r.turned(1, 2)) }

// turned is the working of a chain with some of its signs turned; none where it
// would go below zero, or where two amounts are put together in the end.
func (r reading) turned(places ...int) []wrong {
	if !r.chain() || r.compares() {
		return nil
	}
	e := r.chainExpression()
	for _, i := range places {
		e[i].Op = e[i].Op.Inverse()
	}
	if e[:2].Value() < 0 {
		return nil
	}
	return []wrong{worked(e)}
}

// chainExpression is a copy of a chain's whole working.
func (r reading) chainExpression() problem.Expression {
	return r.Problem.Equation().Sides()[0].Asking()
}

func firstStepOnly(r reading) []wrong {
	if !r.chain() {
		return nil
	}
	return []wrong{worked(r.Problem.Steps()[0].Calculation().Expression())}
}

// leftOut drops one number: of more addends any, of a chain the first change.
func leftOut(r reading) []wrong {
	if r.kind() == problem.TogetherThree || r.kind() == problem.TogetherFour {
		var out []wrong
		for i := len(r.told) - 1; i >= 0; i-- {
			out = append(out, wrong{answer: r.calc.Value() - r.told[i]})
		}
		return out
	}
	if !r.chain() || r.compares() {
		return nil
	}
	e := r.chainExpression()
	return []wrong{{answer: append(e[:1], e[2]).Value()}}
}

// partOnly gives back a number that the story tells.
func partOnly(r reading) []wrong {
	var out []wrong
	for _, n := range r.told {
		out = append(out, wrong{answer: n})
	}
	if r.Extra > 0 {
		out = append(out, wrong{answer: r.Extra})
	}
	return out
}

// usedExtra puts the extra number in the place of each number of the working,
// or works with it as well.
func usedExtra(r reading) []wrong {
	if r.Extra == 0 || r.chain() {
		return nil
	}
	var out []wrong
	for i := range r.calc.Numbers {
		numbers := slices.Clone(r.calc.Numbers)
		numbers[i] = r.Extra
		out = append(out, wrong{answer: problem.Calculation{Op: r.calc.Op, Numbers: numbers}.Value()})
	}
	all := append(r.calc.Expression(), problem.Term{Op: r.calc.Op, Value: r.Extra})
	return append(out, wrong{answer: all.Value()})
}

// reversedDigits writes the tens and the ones of the answer in each other's place.
func reversedDigits(r reading) []wrong {
	n := r.answer
	ones, tens := n%10, n/10%10
	if ones == 0 || tens == 0 {
		return nil
	}
	return []wrong{{answer: n/100*100 + 10*ones + tens}}
}

// sideBySide writes the numbers of a sum one after the other.
func sideBySide(r reading) []wrong {
	if r.chain() || r.calc.Op != problem.Plus || r.calc.Numbers[0] == 0 {
		return nil
	}
	n := 0
	for _, number := range r.calc.Numbers {
		n = besides(n, number)
	}
	return []wrong{{answer: n}}
}
