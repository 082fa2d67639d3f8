package picture

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// columns is a sum or difference in expanded form: hundreds, tens and ones in
// columns, each worked by itself.
type columns struct {
	op       problem.Op
	numbers  []amount
	rows     []problem.Places // the numbers, in places
	result   problem.Places   // place by place; its ones can be ten or more
	answer   amount
	hundreds bool // whether there is a column for hundreds
}

// Expanded works a calculation out place by place. Where a place of a
// difference is too small, the next higher place opens one of its own for it.
func Expanded(c problem.Calculation) Picture { return expandedForm(c) }

func expandedForm(calc problem.Calculation) columns {
	c := columns{op: calc.Op, numbers: givens(calc.Numbers...), answer: amount{calc.Value(), found}, hundreds: calc.Largest() >= 100}
	for _, n := range calc.Numbers {
		c.rows = append(c.rows, problem.PlacesOf(n))
	}
	if c.op == problem.Minus {
		c.rows[0] = c.rows[0].OpenedFor(c.rows[1])
	}
	c.result = c.rows[0]
	for _, r := range c.rows[1:] {
		if c.op == problem.Minus {
			c.result = c.result.Minus(r)
		} else {
			c.result = c.result.Plus(r)
		}
	}
	return c
}

// columnsOf shows the calculation that finds the answer.
func columnsOf(p problem.Problem, stage Stage) Picture {
	c := expandedForm(p.Calculation())
	states := map[Stage]state{Open: asked, Solved: found}
	c.answer.state = states[stage]
	if stage == FirstPart {
		for i := range c.numbers[1:] {
			c.numbers[i+1].state = hidden
		}
	}
	return c
}

const (
	columnRow   = 40 // the height of a row, and of the signs above the columns
	columnFirst = 62 // the middle of the numbers that are split
)

// middles are the middles of the columns, the highest place first.
func (c columns) middles() []int {
	if c.hundreds {
		return []int{136, 208, 276}
	}
	return []int{164, 258}
}

// Figure draws each number with its places in columns, and what each column
// comes to below a line.
func (c columns) Figure() Figure {
	bottom := columnRow + columnRow*len(c.numbers)
	return Figure{"columns", bottom + columnRow + 4, func(d *Pen) {
		c.paintHead(d, bottom+columnRow)
		for i, n := range c.numbers {
			if n.drawn() {
				d.group("number", func() { c.paintRow(d, i, columnRow*i+columnRow*3/2) })
			}
		}
		d.underline(bottom)
		d.group("total", func() {
			y := bottom + columnRow/2 + 2
			d.number(columnFirst, y, c.answer)
			if c.answer.state == found {
				c.paintPlaces(d, c.result, y)
			}
		})
	}}
}

// paintRow writes a number, its sign before it and its places after it.
func (c columns) paintRow(d *Pen, i, y int) {
	if i > 0 {
		sign := "+"
		if c.op == problem.Minus {
			sign = "−"
		}
		d.text(18, y, sign, "sign")
	}
	d.text(columnFirst, y, d.Number(c.numbers[i].n), "")
	c.paintPlaces(d, c.rows[i], y)
}

func (c columns) paintPlaces(d *Pen, p problem.Places, y int) {
	x := c.middles()
	for i := range x {
		d.text(x[i], y, d.Number(p[len(x)-1-i]), "")
	}
}

// paintHead heads the columns with a square, a stick and a dot, as the
// base-ten drawing has them, and rules lines between them.
func (c columns) paintHead(d *Pen, bottom int) {
	x := c.middles()
	n := len(x)
	d.dots([]point{{x[n-1], 20}}, 6, fills[1])
	d.Rect(x[n-2]-4, 4, 9, 32, fills[1])
	if c.hundreds {
		d.Rect(x[0]-16, 4, 32, 32, fills[1])
	}
	var lines path
	left := columnFirst
	for _, middle := range x {
		lines.move(left+(middle-left)/2, 4).by(0, bottom-4)
		left = middle
	}
	d.path("thin", &lines)
}

// expanded writes places as a sum: 80 + 13. Empty places are left out.
func expanded(p problem.Places) problem.Expression {
	if p.Value() == 0 {
		return problem.Number(0)
	}
	return problem.Sum(p.Filled()...)
}

// Describe writes each row as an equation.
func (c columns) Describe() phrase.Line {
	const id = "picture.columns"
	var values []phrase.Value
	for i, n := range c.numbers {
		if n.drawn() {
			values = append(values, phrase.Equation(ordinals[i], problem.Equal(problem.Number(n.n), expanded(c.rows[i]))))
		}
	}
	count := id + ".two"
	if len(c.numbers) == 3 {
		count = id + ".three"
	}
	switch {
	case !c.numbers[1].drawn():
		return phrase.Say(id+".first", values...)
	case c.answer.state != found:
		return phrase.Say(count+"-open", values...)
	}
	result := problem.Equal(expanded(c.result), problem.Number(c.answer.n))
	return phrase.Say(count, append(values, phrase.Equation("Result", result))...)
}
