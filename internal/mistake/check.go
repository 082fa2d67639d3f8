package mistake

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// countOnLimit is the largest number that a child is asked to count on by ones
// (common practice, no published source); beyond it the tens are jumped first.
const countOnLimit = 10

// checkSmall finds the check by which a child can see that n is too small.
func (r replies) checkSmall(n int) Check {
	if r.calc.Op == problem.Plus && !r.chain() && n < slices.Max(r.told) {
		return PartWhole
	}
	if low := r.tens(0); r.useful(low) && n < low.Value() {
		return Tens
	}
	return r.lastCheck()
}

// checkBig finds the check by which a child can see that n is too big.
func (r replies) checkBig(n int) Check {
	if r.asksPair() || r.calc.Op == problem.Minus && !r.chain() && n > r.calc.Numbers[0] {
		return PartWhole
	}
	if high := r.tens(9); r.useful(high) && n > high.Value() {
		return Tens
	}
	return r.lastCheck()
}

// lastCheck is the check that works for any number.
func (r replies) lastCheck() Check {
	switch {
	case r.asksPair():
		return PartWhole
	case r.chain():
		return StepWise
	case r.calc.Op == problem.Minus:
		return PutBack
	}
	return Count
}

// tens is a sum with every number brought to a ten, or to a hundred when one
// of them is beyond 100: down when up is 0, up when it is 9.
func (r replies) tens(up int) problem.Expression {
	unit := 10
	if slices.Max(r.calc.Numbers) > 100 {
		unit, up = 100, up*11
	}
	var friendly []int
	for _, n := range r.calc.Numbers {
		friendly = append(friendly, (n+up)/unit*unit)
	}
	return problem.Sum(friendly...)
}

// useful reports whether a sum of tens may be shown: the problem is a sum beyond
// the first twenty and the tens do not give the answer away.
func (r replies) useful(tens problem.Expression) bool {
	return r.calc.Op == problem.Plus && !r.chain() && r.calc.Largest() > columnsFrom && tens.Value() != r.calc.Value()
}

// general is the reply by direction and check.
func (r replies) general(v Verdict, check Check) Reply {
	first := "reply.too-small"
	if v == TooBig {
		first = "reply.too-big"
	}
	return Reply{Verdict: v, Check: check, Lines: []phrase.Line{phrase.Say(first), r.checkLine(v, check)}}
}

func (r replies) checkLine(v Verdict, check Check) phrase.Line {
	switch check {
	case PartWhole:
		return r.partLine()
	case Tens:
		return r.tensLine(v)
	case PutBack:
		return phrase.Say("reply.check.put-back",
			phrase.Number("Part", r.calc.Numbers[1]), phrase.Number("Whole", r.calc.Numbers[0]))
	case StepWise:
		first := r.problem.Steps()[0].Calculation().Asked()
		return phrase.Say("reply.check.first-step", phrase.Equation("Equation", first))
	}
	return r.countLine()
}

func (r replies) partLine() phrase.Line {
	place := ""
	if r.problem.Kind().Situation() == problem.Compare {
		place = "-compare"
	}
	switch {
	case r.asksPair():
		return phrase.Say("reply.check.not-above-whole", phrase.Number("Whole", r.calc.Value()))
	case r.calc.Op == problem.Minus:
		return phrase.Say("reply.check.not-above-whole"+place, phrase.Number("Whole", r.calc.Numbers[0]))
	}
	return phrase.Say("reply.check.not-below-part"+place, phrase.Number("Part", slices.Max(r.told)))
}

func (r replies) tensLine(v Verdict) phrase.Line {
	id, up := "reply.check.tens-below", 0
	if v == TooBig {
		id, up = "reply.check.tens-above", 9
	}
	tens := r.tens(up)
	return phrase.Say(id, phrase.Equation("Equation", problem.Equal(tens, problem.Number(tens.Value()))))
}

// countLine says how to find a sum again: from the bigger number, by ones or
// by tens and ones; for three addends two first.
func (r replies) countLine() phrase.Line {
	if len(r.calc.Numbers) == 3 {
		first := problem.Calculation{Op: problem.Plus, Numbers: r.calc.Numbers[:2]}
		return phrase.Say("reply.check.two-first",
			phrase.Equation("Equation", first.Asked()), phrase.Number("Third", r.calc.Numbers[2]))
	}
	a, b := slices.Max(r.calc.Numbers), slices.Min(r.calc.Numbers)
	id := "reply.check.count-on"
	if b > countOnLimit {
		id = "reply.check.jump-on"
	}
	return phrase.Say(id, phrase.Number("From", a), phrase.Number("More", b))
}
