package picture

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// columns is a sum or difference in expanded form: hundreds, tens and ones in
// columns, each worked by itself. What is traded between them is drawn: of a
// difference before it is taken from, of a sum after it is added.
type columns struct {
	op      problem.Op
	numbers []amount
	rows    []problem.Places // the numbers, in places
	opened  problem.Places   // the first number once it is traded; zero where it need not be
	result  problem.Places   // what each column comes to; of a sum it can be ten or more
	answer  amount
	places  int // how many columns there are
}

// Expanded works a calculation out place by place. Where a place of a
// difference is too small, the next higher place opens one of its own for it.
func Expanded(c problem.Calculation) Picture { return expandedForm(c) }

func expandedForm(calc problem.Calculation) columns {
	c := columns{op: calc.Op, numbers: givens(calc.Numbers...), answer: amount{n: calc.Value(), state: found}, places: 2}
	if calc.Largest() >= 100 {
		c.places = 3
	}
	for _, n := range calc.Numbers {
		c.rows = append(c.rows, problem.PlacesOf(n))
	}
	c.result = c.rows[0]
	if c.op == problem.Minus {
		if opened := c.rows[0].OpenedFor(c.rows[1]); opened != c.rows[0] {
			c.opened, c.result = opened, opened
		}
	}
	for _, r := range c.rows[1:] {
		if c.op == problem.Minus {
			c.result = c.result.Minus(r)
		} else {
			c.result = c.result.Plus(r)
		}
	}
	return c
}

// fitsColumns wants a story that is worked out the way it is told.
func fitsColumns(p problem.Problem) bool {
	switch p.Kind() {
	case problem.AddToResult, problem.TakeFromResult, problem.TogetherTotal, problem.TogetherThree, problem.TogetherAddend:
		return largest(p) >= 10
	}
	return false
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

// trades reports whether the answer's places are not those of the columns.
func (c columns) trades() bool { return c.result != problem.PlacesOf(c.answer.n) }

const (
	columnRow   = 40 // the height of a row, and of the signs above the columns
	columnFirst = 62 // the middle of the numbers that are split
)

// middles are the middles of the columns, the highest place first.
func (c columns) middles() []int {
	if c.places == 3 {
		return []int{136, 208, 276}
	}
	return []int{164, 258}
}

// columnLine is a line of the picture.
type columnLine struct {
	class  string // of its group
	number amount
	places problem.Places
	shows  bool           // whether its places are written
	sign   string         // before the number
	from   problem.Places // what its places were before they were traded; zero for nothing
}

// lines lists what is drawn, from the top down; the first of the total starts
// below the rule.
func (c columns) lines() (above, total []columnLine) {
	solved := c.answer.state == found
	for i, n := range c.numbers {
		line := columnLine{class: "number", number: n, places: c.rows[i], shows: n.drawn()}
		if i > 0 && n.drawn() {
			line.sign = map[problem.Op]string{problem.Plus: "+", problem.Minus: "−"}[c.op]
		}
		opens := i == 0 && solved && c.opened != problem.Places{}
		above = append(above, line)
		if opens {
			above = append(above, columnLine{class: "traded", places: c.opened, shows: true, from: c.rows[0]})
		}
	}
	if solved && c.trades() {
		return above, []columnLine{
			{class: "total", places: c.result, shows: true},
			{class: "traded", number: c.answer, places: problem.PlacesOf(c.answer.n), shows: true, from: c.result},
		}
	}
	return above, []columnLine{{class: "total", number: c.answer, places: c.result, shows: solved}}
}

// Figure draws each number with its places in columns, and what each column
// comes to below a rule.
func (c columns) Figure() Figure {
	above, total := c.lines()
	bottom := columnRow + columnRow*len(above)
	end := bottom + columnRow*len(total)
	return Figure{"columns", end + 4, func(d *Pen) {
		c.paintHead(d, end)
		for i, line := range slices.Concat(above, total) {
			y := columnRow*i + columnRow*3/2
			if i >= len(above) {
				y += 2
			}
			d.group(line.class, func() { c.paintLine(d, line, y) })
		}
		d.underline(bottom)
	}}
}

// paintLine writes a number, its sign before it and its places after it.
func (c columns) paintLine(d *Pen, line columnLine, y int) {
	if line.sign != "" {
		d.text(18, y, line.sign, "sign")
	}
	if line.class == "number" && line.number.drawn() {
		d.text(columnFirst, y, d.Number(line.number.n), "")
	} else {
		d.number(columnFirst, y, line.number)
	}
	if !line.shows {
		return
	}
	x := c.middles()
	for i := range x {
		d.text(x[i], y, d.Number(line.places[len(x)-1-i]), "")
	}
	c.paintTrades(d, line, y)
}

// paintTrades draws an arrow into a line from where a column gave to the next.
// The lower of the two columns has less after the trade of a sum, and more
// after that of a difference.
func (c columns) paintTrades(d *Pen, line columnLine, y int) {
	if line.from == (problem.Places{}) {
		return
	}
	x := c.middles()
	var ways path
	moved := 0 // what has come up from the lower places so far
	for place := problem.OnesPlace; place < len(x)-1; place++ {
		moved += line.places[place] - line.from[place]
		low, high := x[len(x)-1-place], x[len(x)-2-place]
		switch {
		case moved < 0: // ones became tens
			ways.move(low-16, y-columnRow+12).by(high-low+38, columnRow-28).head(high+22, y-16, high-low+38, columnRow-28)
		case moved > 0: // a ten became ones
			ways.move(high+16, y-columnRow+12).by(low-high-38, columnRow-28).head(low-22, y-16, low-high-38, columnRow-28)
		}
	}
	d.path("move", &ways)
}

// paintHead heads the columns with a square, a stick and a dot, as the
// base-ten drawing has them, and rules lines between them.
func (c columns) paintHead(d *Pen, bottom int) {
	x := c.middles()
	n := len(x)
	d.dots([]point{{x[n-1], 20}}, 6, fills[1])
	d.Rect(x[n-2]-4, 4, 9, 32, fills[1])
	if c.places == 3 {
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

// Describe writes each row as an equation, with what is traded in it.
func (c columns) Describe() phrase.Line {
	const id = "picture.columns"
	solved := c.answer.state == found
	var values []phrase.Value
	for i, n := range c.numbers {
		if n.drawn() {
			sides := []problem.Expression{problem.Number(n.n), expanded(c.rows[i])}
			if i == 0 && solved && c.opened != (problem.Places{}) {
				sides = append(sides, expanded(c.opened))
			}
			values = append(values, phrase.Equation(ordinals[i], problem.Equal(sides...)))
		}
	}
	count := id + ".two"
	if len(c.numbers) == 3 {
		count = id + ".three"
	}
	switch {
	case !c.numbers[1].drawn():
		return phrase.Say(id+".first", values...)
	case !solved:
		return phrase.Say(count+"-open", values...)
	}
	sides := []problem.Expression{expanded(c.result)}
	if traded := expanded(problem.PlacesOf(c.answer.n)); !slices.Equal(traded, sides[0]) { // 10 tens are written as 1 hundred is
		sides = append(sides, traded)
	}
	result := problem.Equal(append(sides, problem.Number(c.answer.n))...)
	return phrase.Say(count, append(values, phrase.Equation("Result", result))...)
}
