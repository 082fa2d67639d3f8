package picture

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// Columned is a sum or difference in expanded form: hundreds, tens and ones in
// columns, each worked by itself.
type Columned struct {
	Op       problem.Op
	Numbers  []Amount
	Rows     []Places // the numbers, in places
	Result   Places   // place by place; its ones can be ten or more
	Answer   Amount
	Hundreds bool // whether there is a column for hundreds
}

// columnsOf shows the calculation that finds the answer.
func columnsOf(p problem.Problem, stage Stage) Columned {
	c := columned(p.Calculation())
	states := map[Stage]State{Open: Asked, Solved: Found}
	c.Answer.State = states[stage]
	if stage == FirstPart {
		for i := range c.Numbers[1:] {
			c.Numbers[i+1].State = Hidden
		}
	}
	return c
}

// columned works a calculation out place by place. Where a place of a
// difference is too small, the next higher place opens one of its own for it.
func columned(calc problem.Calculation) Columned {
	c := Columned{Op: calc.Op, Answer: Amount{calc.Value(), Found}, Hundreds: calc.Largest() >= 100}
	for _, n := range calc.Numbers {
		c.Numbers = append(c.Numbers, Given(n))
		c.Rows = append(c.Rows, PlacesOf(n))
	}
	if c.Op == problem.Minus {
		c.Rows[0] = opened(c.Rows[0], c.Rows[1])
	}
	c.Result = c.Rows[0]
	for _, r := range c.Rows[1:] {
		if c.Op == problem.Minus {
			r = Places{-r.Hundreds, -r.Tens, -r.Ones}
		}
		c.Result = c.Result.plus(r)
	}
	return c
}

// opened rewrites whole so that taken can be taken from it place by place:
// 65 is 5 tens and 15 ones when 49 is to go.
func opened(whole, taken Places) Places {
	if whole.Ones < taken.Ones {
		whole.Tens--
		whole.Ones += 10
	}
	if whole.Tens < taken.Tens {
		whole.Hundreds--
		whole.Tens += 10
	}
	return whole
}

// Values are the numbers in the columns, the highest place first.
func (c Columned) Values(p Places) []int {
	if c.Hundreds {
		return []int{100 * p.Hundreds, 10 * p.Tens, p.Ones}
	}
	return []int{10 * p.Tens, p.Ones}
}

// expanded writes places as a sum: 80 + 13. Empty places are left out.
func expanded(p Places) problem.Expression {
	var terms []int
	for _, n := range []int{100 * p.Hundreds, 10 * p.Tens, p.Ones} {
		if n > 0 {
			terms = append(terms, n)
		}
	}
	if terms == nil {
		return problem.Number(0)
	}
	return problem.Sum(terms...)
}

// Describe writes each row as an equation.
func (c Columned) Describe() phrase.Line {
	row := func(name string, i int) phrase.Value {
		return phrase.Equation(name, problem.Equal(problem.Number(c.Numbers[i].N), expanded(c.Rows[i])))
	}
	if !c.Numbers[1].Drawn() {
		return phrase.Say("picture.columns.first", row("First", 0))
	}
	values := []phrase.Value{row("First", 0), row("Second", 1)}
	id := "picture.columns.two"
	if len(c.Numbers) == 3 {
		id = "picture.columns.three"
		values = append(values, row("Third", 2))
	}
	if c.Answer.State != Found {
		return phrase.Say(id+"-open", values...)
	}
	result := problem.Equal(expanded(c.Result), problem.Number(c.Answer.N))
	return phrase.Say(id, append(values, phrase.Equation("Result", result))...)
}
