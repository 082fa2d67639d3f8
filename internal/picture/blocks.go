package picture

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// blocks is a base-ten drawing: a row for each number, hundreds as squares,
// tens as sticks, ones as dots.
type blocks struct {
	rows []blockRow
	// total counts each place of all rows together: 8 tens and 13 ones. The
	// zero total is not drawn.
	total  problem.Places
	legend []label // counts what is struck out, and what is left
	line   phrase.Line
}

// blockRow is a number drawn in hundreds, tens and ones.
type blockRow struct {
	amount
	class string         // part or whole
	fill  int            // of the part; 0 for the whole
	shown problem.Places // its blocks; after a trade other ones than its digits say
	gone  problem.Places // taken away from the end of each place
}

func rowOf(a amount, class string, fill int) blockRow {
	return blockRow{amount: a, class: class, fill: fill, shown: problem.PlacesOf(a.n)}
}

// Blocks shows a calculation place by place: the numbers of a sum with the
// total of each place; a whole with what is taken crossed out. It reports false
// for a difference in which a ten would have to be opened first.
func Blocks(c problem.Calculation) (Picture, bool) {
	if c.Op == problem.Plus {
		return splitSum(c.Numbers), true
	}
	if len(c.Numbers) != 2 {
		return nil, false
	}
	b := takenBlocks(given(c.Numbers[0]), given(c.Numbers[1]), amount{n: c.Value(), state: found})
	return b, b.rows[0].traded() == problem.Places{}
}

func splitSum(numbers []int) blocks {
	var b blocks
	var values []phrase.Value
	for i, n := range numbers {
		b.rows = append(b.rows, rowOf(given(n), "part", i+1))
		b.total = b.total.Plus(problem.PlacesOf(n))
		values = append(values, phrase.Number(ordinals[i], n))
	}
	id := [...]string{2: "split", 3: "split-three", 4: "split-four"}[len(numbers)]
	return b.say(id, append(values, phrase.Expression("Places", expanded(b.total)))...)
}

// takenBlocks strikes out of a whole what is taken. Where a place has too
// little, the next higher one is traded for it first.
func takenBlocks(whole, taken, left amount) blocks {
	row := rowOf(whole, "whole", 1)
	row.gone = problem.PlacesOf(taken.n)
	row.shown = row.shown.OpenedFor(row.gone)
	b := blocks{rows: []blockRow{row}, legend: []label{{taken, cell{1, crossed}}}}
	if left.drawn() {
		b.legend = append(b.legend, label{left, cell{fill: 1}})
	}
	id := "crossed"
	if (row.traded() != problem.Places{}) {
		id = "crossed-traded"
	}
	return b.say(id, whole.value("Whole"), taken.value("Taken"), left.value("Left"), phrase.Expression("Places", expanded(row.shown)))
}

// blocksOf draws what is taken away as struck out, and parts with their whole
// below them.
func blocksOf(p problem.Problem, stage Stage) Picture {
	s := grown(p, stage)
	if isTaken(p) && s.parts[0].drawn() {
		return takenBlocks(s.whole, s.parts[0], s.parts[1])
	}
	var b blocks
	for i, a := range s.parts {
		if a.drawn() {
			b.rows = append(b.rows, rowOf(a, "part", i+1))
		}
	}
	if s.whole.drawn() {
		b.rows = append(b.rows, rowOf(s.whole, "whole", 0))
	}
	line := s.describe("")
	return b.say(line.ID[1:], line.Values...)
}

// say describes the drawing: what its blocks are, and what the end of a message
// id says of them.
func (b blocks) say(id string, values ...phrase.Value) blocks {
	key := "picture.blocks.tens"
	if b.hasHundreds() {
		key = "picture.blocks.hundreds"
	}
	b.line = phrase.Say("picture.blocks."+id, append([]phrase.Value{phrase.Message("Blocks", key)}, values...)...)
	return b
}

// hasHundreds reports whether a number is so large that it has hundreds.
func (b blocks) hasHundreds() bool {
	return slices.ContainsFunc(b.rows, func(r blockRow) bool { return r.n >= 100 })
}

// blockSizes says where each place starts, and how far apart its blocks are.
type blockSizes struct{ hundreds, tens, ones, stick, dot int }

// sizes leaves room for hundreds where a number has some.
func (b blocks) sizes() blockSizes {
	if b.hasHundreds() {
		return blockSizes{64, 172, 264, 8, 11}
	}
	return blockSizes{0, 72, 222, 15, 18}
}

const (
	blockHeight = 58 // of a row
	blockFoot   = 36 // of the total, or the legend
)

// traded counts what the row has more, or less, in each place than its digits
// say.
func (r blockRow) traded() problem.Places { return r.shown.Minus(problem.PlacesOf(r.n)) }

// height has room for as many lines of sticks and of dots as a trade makes.
func (r blockRow) height() int {
	tens := r.shown[problem.TensPlace] / 10
	if r.shown[problem.OnesPlace] > 9 {
		tens++ // the place of the one that was opened
	}
	sticks, dots := (tens+9)/10, (r.shown[problem.OnesPlace]+4)/5
	return max(blockHeight, sticks*(blockHeight-12)+8, dots*20+18)
}

// Figure draws the rows, and what each place comes to or what is struck out.
func (b blocks) Figure() Figure {
	rows := 6
	for _, r := range b.rows {
		rows += r.height()
	}
	height := rows
	hasTotal := b.total != problem.Places{}
	if hasTotal || b.legend != nil {
		height += blockFoot
	}
	return Figure{"blocks", height, func(d *Pen) {
		at := b.sizes()
		y := 4
		for i, r := range b.rows {
			if i > 0 && r.class == "whole" {
				d.underline(y - 2)
			}
			d.group(r.class, func() { r.paint(d, y, at) })
			y += r.height()
		}
		if hasTotal {
			d.group("total", func() { b.paintTotal(d, rows, at) })
		}
		d.legend(rows+blockFoot/2-2, b.legend)
	}}
}

// underline draws a line across.
func (d *Pen) underline(y int) { d.Line(margin, y, Width-margin, y, "underline") }

// paint draws a number and its squares, sticks and dots.
func (r blockRow) paint(d *Pen, y int, at blockSizes) {
	d.number(32, y+r.height()/2-2, r.amount)
	if !r.written() {
		d.RoundRect(72, y+6, Width-72-margin, blockHeight-16, 5, "unknown")
		return
	}
	var strikes path
	radius := min(at.dot*2/5, 7)
	boxes := [...]func(i int) box{
		problem.HundredsPlace: func(i int) box { return box{at.hundreds + i%5*20, y + 6 + i/5*20, 17, 17} },
		problem.TensPlace: func(i int) box {
			return box{at.tens + i%10*at.stick, y + 4 + i/10*(blockHeight-12), at.stick * 3 / 5, blockHeight - 14}
		},
		problem.OnesPlace: func(i int) box {
			return box{at.ones + i%5*at.dot - radius, y + 16 + i/5*20 - radius, 2 * radius, 2 * radius}
		},
	}
	for place := problem.HundredsPlace; place >= problem.OnesPlace; place-- {
		r.place(d, &strikes, place, boxes[place])
	}
	d.path("strike", &strikes)
	r.paintTrades(d, boxes[:])
}

// blockWorth is what a block of each place counts.
var blockWorth = [...]int{problem.OnesPlace: 1, problem.TensPlace: 10, problem.HundredsPlace: 100}

var blockClasses = [...]string{problem.OnesPlace: "one", problem.TensPlace: "ten", problem.HundredsPlace: "hundred"}

// place draws the blocks of a place. Of those that are taken away, the last
// ones, the outlines are left, each struck out.
func (r blockRow) place(d *Pen, strikes *path, place int, at func(i int) box) {
	var kept, taken path
	n, gone := r.shown[place]/blockWorth[place], r.gone[place]/blockWorth[place]
	for i := range n {
		b := at(i)
		switch {
		case i >= n-gone:
			taken.box(b.x, b.y, b.w, b.h)
			strikes.move(b.x-1, b.y+b.h).by(b.w+2, -b.h)
		case place == problem.OnesPlace:
			kept.dot(b.x+b.w/2, b.y+b.h/2, b.w/2)
		default:
			kept.box(b.x, b.y, b.w, b.h)
		}
	}
	d.path(blockClasses[place]+" "+fills[r.fill], &kept)
	d.path(blockClasses[place]+" gone", &taken)
}

// paintTrades draws where a block was that became ten of the next lower place,
// and an arrow from there.
func (r blockRow) paintTrades(d *Pen, at []func(i int) box) {
	traded := r.traded()
	var ways path
	for place := problem.TensPlace; place <= problem.HundredsPlace; place++ {
		lower := traded[problem.OnesPlace]
		if place == problem.HundredsPlace {
			lower += traded[problem.TensPlace]
		}
		if lower == 0 {
			continue
		}
		was := at[place](r.shown[place] / blockWorth[place])
		d.path("opened "+blockClasses[place], new(path).box(was.x, was.y, was.w, was.h))
		to := at[place-1](0)
		x, y := was.x+was.w+1, was.y+was.h*3/4
		end := to.x - 2
		ways.move(x, y).by(end-x, 0).head(end, y, 1, 0)
	}
	d.path("move", &ways)
}

// paintTotal writes what each place comes to.
func (b blocks) paintTotal(d *Pen, y int, at blockSizes) {
	d.underline(y)
	if at.hundreds > 0 {
		d.text(at.hundreds+50, y+20, d.Number(b.total[problem.HundredsPlace]), "hundred")
	}
	d.text(at.tens+4*at.stick, y+20, d.Number(b.total[problem.TensPlace]), "ten")
	d.text(at.ones+2*at.dot, y+20, d.Number(b.total[problem.OnesPlace]), "one")
}

// Describe says the numbers.
func (b blocks) Describe() phrase.Line { return b.line }
