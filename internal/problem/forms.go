package problem

// Equations lists the forms in which the published table writes the problem,
// the story's own first, each with "?" where the unknown stands. Both addends
// unknown gives every pair with the total on the left, in the order of the
// first part, so that "=" is read as "is the same number as".
func (p Problem) Equations() []Equation {
	x, y := p.numbers[0], p.numbers[1]
	addend := Equal(Sum(x, y).Asking(1), Number(x+y))
	switch p.kind {
	case AddToChange:
		return []Equation{addend}
	case AddToStart:
		return []Equation{Equal(Sum(x, y).Asking(0), Number(x+y))}
	case TakeFromChange:
		return []Equation{Equal(Difference(x, y).Asking(1), Number(x-y))}
	case TakeFromStart:
		return []Equation{Equal(Difference(x, y).Asking(0), Number(x-y))}
	case TogetherAddend:
		return []Equation{addend, asked(Difference(x+y, x))}
	case TogetherBoth:
		return p.bothForms()
	case DifferenceMore, DifferenceFewer:
		return []Equation{Equal(Sum(y, x-y).Asking(1), Number(x)), asked(Difference(x, y))}
	case BiggerMore, BiggerFewer:
		return []Equation{asked(Sum(x, y)), asked(Sum(y, x))}
	case SmallerMore, SmallerFewer:
		return []Equation{asked(Difference(x, y)), Equal(Sum(x-y, y).Asking(0), Number(x))}
	}
	return []Equation{asked(p.whole())}
}

func (p Problem) bothForms() []Equation {
	var out []Equation
	total := p.numbers[0] + p.numbers[1]
	for _, pair := range p.Pairs() {
		out = append(out, Equal(Number(total), Sum(pair.First, pair.Second).Asking(0, 1)))
	}
	return out
}

// asked is "e = ?".
func asked(e Expression) Equation { return Equal(e, Number(e.Value()).Asking(0)) }

// Asked is the equation "c = ?".
func (c Calculation) Asked() Equation { return asked(c.Expression()) }

// whole is the single expression that tells a sum, a difference or a chain.
func (p Problem) whole() Expression {
	x, y, z := p.numbers[0], p.numbers[1], p.numbers[2]
	switch p.kind {
	case TakeFromResult:
		return Difference(x, y)
	case TogetherThree, TogetherFour, AddThenAdd:
		return Sum(p.Numbers()...)
	case AddThenTake, TogetherThenTake:
		return append(Sum(x, y), Term{Op: Minus, Value: z})
	case TakeThenAdd:
		return append(Difference(x, y), Term{Op: Plus, Value: z})
	case TakeThenTake:
		return Difference(x, y, z)
	case BiggerThenTogether: // x and the bigger amount, which is x + y
		return Sum(x, x, y)
	}
	return Sum(x, y)
}

// Equation is the story's own equation, the first of Equations. For both
// addends unknown it is "total = ? + ?".
func (p Problem) Equation() Equation {
	if p.kind == TogetherBoth {
		return Equal(Number(p.numbers[0]+p.numbers[1]), Sum(p.numbers[0], p.numbers[1]).Asking(0, 1))
	}
	return p.Equations()[0]
}

// Solving is the equation that finds the answer, "?" alone on the right:
// 14 - 8 = ? for the story 8 + ? = 14.
func (p Problem) Solving() Equation { return p.Calculation().Asked() }

// SolvingDiffers reports whether the story's equation is not the one that
// finds the answer, so that a page should show both.
func (p Problem) SolvingDiffers() bool {
	if p.kind == TogetherBoth || p.kind.Steps() != nil {
		return false
	}
	return p.Equation().String() != p.Solving().String()
}
