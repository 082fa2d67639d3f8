package mistake

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// nearByRules are the causes of taking a round number in place of one close by:
// left there, or put right the wrong way. Common practice, no published source.
var nearByRules = []rule{{NotMended, notMended}, {MendedWrong, mendedWrong}}

// replaced is a working with a round number in place of one close by.
type replaced struct {
	working problem.Expression
	off     int // what the working is too much by; below zero: too little
	exact   int // the number that it replaces
	values  []phrase.Value
}

// wrong is what a working by a near number gives. One that comes to the exact number
// explains nothing: 10 + 2 = 12 for 12 + 2.
func (n replaced) wrong(e problem.Expression) []wrong {
	if e.Value() < 0 || e.Value() == n.exact {
		return nil
	}
	return []wrong{{e.Value(), e, n.values}}
}

func notMended(r reading) []wrong {
	var out []wrong
	for _, n := range r.replaced() {
		out = append(out, n.wrong(n.working)...)
	}
	return out
}

func mendedWrong(r reading) []wrong {
	var out []wrong
	for _, n := range r.replaced() {
		term := problem.Term{Op: problem.Plus, Value: n.off}
		if n.off < 0 {
			term = problem.Term{Op: problem.Minus, Value: -n.off}
		}
		if e := append(n.working, term); e.Value() > 0 { // who says 0 has hardly worked 12 - 10 - 2
			out = append(out, n.wrong(e)...)
		}
	}
	return out
}

// replaced lists what a child can work with in place of two numbers: of a sum a round
// number for either of them, of a difference for what is taken away. Within ten
// nothing is rounder.
func (r reading) replaced() []replaced {
	if r.chain() || len(r.calc.Numbers) != 2 || r.calc.Largest() <= 10 {
		return nil
	}
	var out []replaced
	for i, exact := range r.calc.Numbers {
		near := roundNear(exact)
		if near == 0 || i == 0 && r.calc.Op == problem.Minus {
			continue
		}
		e := r.calc.Expression()
		e[i].Value = near
		if e.Value() < 0 {
			continue
		}
		out = append(out, replaced{e, e.Value() - r.calc.Value(), exact,
			[]phrase.Value{phrase.Number("Near", near), phrase.Number("B", exact)}})
	}
	return out
}

// roundNear is the ten, or the hundred, that is so near to n that a child takes it
// instead: up to three above, two below, or five below a hundred; 0 for none.
func roundNear(n int) int {
	up, down := (n+9)/10*10, n/10*10
	switch {
	case n%10 == 0:
		return 0
	case up-n <= 3 || up%100 == 0 && up-n <= 5:
		return up
	case n-down <= 2:
		return down
	}
	return 0
}
