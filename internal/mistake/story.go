package mistake

import "homebuild/internal/problem"

// question is a problem as the rules see it.
type question struct {
	problem problem.Problem
	calc    problem.Calculation
	told    []int // the numbers that the story gives and the question needs
	extra   int   // the number it does not need, 0 for none
}

func newQuestion(p problem.Problem, extra int) question {
	q := question{problem: p, calc: p.Calculation(), extra: extra}
	for _, t := range p.Told() {
		q.told = append(q.told, t.Value)
	}
	return q
}

// found is a wrong number with the expression that gives it; the expression is
// empty where none was worked.
type found struct {
	answer  int
	working problem.Expression
}

func worked(e problem.Expression) found { return found{e.Value(), e} }

// storyRules are the causes at the level of the story.
var storyRules = []struct {
	cause Cause
	find  func(q question) []found
}{
	{ReversedComparison, reversedComparison},
	{AddedInstead, addedInstead},
	{SubtractedInstead, subtractedInstead},
	{FirstStepOnly, firstStepOnly},
	{LeftOut, leftOut},
	{PartOnly, partOnly},
	{UsedExtra, usedExtra},
	{CountedStart, countedStart},
	{OneTooFar, oneTooFar},
	{SideBySide, func(q question) []found {
		if n, applies := sideBySide(q.calc); applies && !q.chain() {
			return []found{{answer: n}}
		}
		return nil
	}},
}

func (q question) chain() bool { return q.problem.Kind().Steps() != nil }

// asksPair reports whether both addends are asked, so that any first part up
// to the total is right.
func (q question) asksPair() bool { return q.problem.Kind() == problem.TogetherBoth }

// reversible reports whether the wrong operation is best told as a comparison
// read the other way round: the bigger or the smaller amount is asked.
func (q question) reversible() bool {
	u := q.problem.Kind().Unknown()
	return u == problem.Bigger || u == problem.Smaller
}

// flipped is the calculation of two numbers with the other operation.
func (q question) flipped() problem.Expression {
	a, b := q.calc.Numbers[0], q.calc.Numbers[1]
	if q.calc.Op == problem.Minus {
		return problem.Sum(a, b)
	}
	return problem.Difference(max(a, b), min(a, b))
}

func reversedComparison(q question) []found {
	if q.problem.Kind() == problem.BiggerThenTogether && q.told[0] >= q.told[1] {
		return []found{worked(problem.Sum(q.told[0], q.told[0]-q.told[1]))}
	}
	if !q.reversible() {
		return nil
	}
	return []found{worked(q.flipped())}
}

func addedInstead(q question) []found {
	if q.chain() {
		return q.chainAdded()
	}
	if q.calc.Op == problem.Plus || q.reversible() {
		return nil
	}
	return []found{worked(q.flipped())}
}

// chainAdded is a chain whose last taking away became adding, or all of them.
func (q question) chainAdded() []found {
	if q.calc.Op == problem.Minus {
		e := q.chainExpression()
		e[len(e)-1].Op = problem.Plus
		return []found{worked(e), worked(problem.Sum(q.told...))}
	}
	if q.problem.Kind() == problem.TakeThenAdd {
		return []found{worked(problem.Sum(q.told...))}
	}
	return nil
}

func subtractedInstead(q question) []found {
	if q.calc.Op == problem.Minus || q.reversible() || len(q.calc.Numbers) != 2 {
		return nil
	}
	if !q.chain() {
		return []found{worked(q.flipped())}
	}
	e := q.chainExpression()
	e[len(e)-1].Op = problem.Minus
	if q.problem.Kind() == problem.BiggerThenTogether || e.Value() < 0 {
		return nil
	}
	return []found{worked(e)}
}

// chainExpression is a copy of a chain's whole working.
func (q question) chainExpression() problem.Expression {
	return q.problem.Equation().Sides()[0].Asking()
}

func firstStepOnly(q question) []found {
	if !q.chain() {
		return nil
	}
	return []found{worked(q.problem.Steps()[0].Calculation().Expression())}
}

// leftOut drops one number: of three addends any, of a chain the first change.
func leftOut(q question) []found {
	if q.problem.Kind() == problem.TogetherThree {
		a, b, c := q.told[0], q.told[1], q.told[2]
		return []found{worked(problem.Sum(a, b)), worked(problem.Sum(a, c)), worked(problem.Sum(b, c))}
	}
	if !q.chain() || q.problem.Kind() == problem.BiggerThenTogether {
		return nil
	}
	e := q.chainExpression()
	e = append(e[:1], e[2])
	if e.Value() < 0 {
		return nil
	}
	return []found{worked(e)}
}

func partOnly(q question) []found {
	var out []found
	for _, n := range q.told {
		out = append(out, found{answer: n})
	}
	if q.extra > 0 {
		out = append(out, found{answer: q.extra})
	}
	return out
}

// usedExtra puts the extra number in the place of each number of the working,
// or works with it as well.
func usedExtra(q question) []found {
	if q.extra == 0 || q.chain() {
		return nil
	}
	var out []found
	for i := range q.calc.Numbers {
		numbers := append([]int(nil), q.calc.Numbers...)
		numbers[i] = q.extra
		if q.calc.Op == problem.Plus || numbers[0] >= numbers[1] {
			out = append(out, worked(problem.Calculation{Op: q.calc.Op, Numbers: numbers}.Expression()))
		}
	}
	all := append(q.calc.Expression(), problem.Term{Op: q.calc.Op, Value: q.extra})
	if all.Value() >= 0 {
		out = append(out, worked(all))
	}
	return out
}

// countedStart is one low for a sum and one high for a difference. Sources:
// Fuson (1988) and Steffe et al. (1983) on counting on, from memory.
func countedStart(q question) []found {
	if q.calc.Op == problem.Minus {
		return []found{{answer: q.calc.Value() + 1}}
	}
	return []found{{answer: q.calc.Value() - 1}}
}

func oneTooFar(q question) []found {
	if q.calc.Op == problem.Minus {
		return []found{{answer: q.calc.Value() - 1}}
	}
	return []found{{answer: q.calc.Value() + 1}}
}
