package picture

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// blocks is a base-ten drawing: a row for each number, hundreds as squares,
// tens as sticks, ones as dots.
type blocks struct {
	rows []blockRow
	// total counts each place of all rows together: 8 tens and 13 ones. The
	// zero total is not drawn.
	total problem.Places
	line  phrase.Line
}

// blockRow is a number drawn in hundreds, tens and ones.
type blockRow struct {
	amount
	class string // part or whole
	fill  int
	gone  problem.Places // taken away from the end of each place
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
	whole, taken := problem.PlacesOf(c.Numbers[0]), problem.PlacesOf(c.Numbers[1])
	return blocks{
		rows: []blockRow{{given(c.Numbers[0]), "whole", 1, taken}},
		line: phrase.Say("picture.base-ten.crossed", phrase.Number("Whole", c.Numbers[0]), phrase.Number("Taken", c.Numbers[1])),
	}, whole.Covers(taken)
}

func splitSum(numbers []int) blocks {
	var b blocks
	var values []phrase.Value
	for i, n := range numbers {
		b.rows = append(b.rows, blockRow{amount: given(n), class: "part", fill: i + 1})
		b.total = b.total.Plus(problem.PlacesOf(n))
		values = append(values, phrase.Number(ordinals[i], n))
	}
	id := "picture.base-ten.split"
	if len(numbers) == 3 {
		id = "picture.base-ten.split-three"
	}
	b.line = phrase.Say(id, append(values, phrase.Expression("Places", expanded(b.total)))...)
	return b
}

// blocksOf draws the parts, and the whole below them.
func blocksOf(p problem.Problem, stage Stage) Picture {
	s := grown(p, stage)
	b := blocks{line: s.describe("picture.base-ten")}
	for i, a := range s.parts {
		if a.drawn() {
			b.rows = append(b.rows, blockRow{amount: a, class: "part", fill: i + 1})
		}
	}
	if s.whole.drawn() {
		b.rows = append(b.rows, blockRow{amount: s.whole, class: "whole"})
	}
	return b
}

// blockSizes says where each place starts, and how far apart its blocks are.
type blockSizes struct{ hundreds, tens, ones, stick, dot int }

// sizes leaves room for hundreds where a number has some.
func (b blocks) sizes() blockSizes {
	for _, r := range b.rows {
		if r.n >= 100 {
			return blockSizes{64, 172, 264, 9, 11}
		}
	}
	return blockSizes{0, 72, 222, 15, 18}
}

const blockHeight = 58 // of a row

// Figure draws the rows, and what each place comes to.
func (b blocks) Figure() Figure {
	height := 6 + blockHeight*len(b.rows)
	hasTotal := b.total != problem.Places{}
	if hasTotal {
		height += 36
	}
	return Figure{"blocks", height, func(d *Pen) {
		at := b.sizes()
		for i, r := range b.rows {
			y := 4 + blockHeight*i
			if i > 0 && r.class == "whole" {
				d.underline(y - 2)
			}
			d.group(r.class, func() { r.paint(d, y, at) })
		}
		if hasTotal {
			d.group("total", func() { b.paintTotal(d, height-36, at) })
		}
	}}
}

// underline draws a line across.
func (d *Pen) underline(y int) { d.Line(margin, y, Width-margin, y, "underline") }

// paint draws a number and its squares, sticks and dots.
func (r blockRow) paint(d *Pen, y int, at blockSizes) {
	d.number(32, y+blockHeight/2-2, r.amount)
	if !r.written() {
		d.RoundRect(72, y+6, Width-72-margin, blockHeight-16, 5, "unknown")
		return
	}
	n, gone := problem.PlacesOf(r.n), r.gone
	var strikes path
	r.place(d, &strikes, "hundred", n[problem.HundredsPlace]/100, gone[problem.HundredsPlace]/100, func(i int) box {
		return box{at.hundreds + i%5*20, y + 6 + i/5*20, 17, 17}
	})
	r.place(d, &strikes, "ten", n[problem.TensPlace]/10, gone[problem.TensPlace]/10, func(i int) box {
		return box{at.tens + i*at.stick, y + 4, at.stick * 3 / 5, blockHeight - 14}
	})
	radius := min(at.dot*2/5, 7)
	r.place(d, &strikes, "one", n[problem.OnesPlace], gone[problem.OnesPlace], func(i int) box {
		return box{at.ones + i%5*at.dot - radius, y + 16 + i/5*20 - radius, 2 * radius, 2 * radius}
	})
	d.path("strike", &strikes)
}

// place draws the blocks of a place. Of those that are taken away, the last
// ones, the outlines are left, each struck out.
func (r blockRow) place(d *Pen, strikes *path, class string, n, gone int, at func(i int) box) {
	var kept, taken path
	for i := range n {
		b := at(i)
		switch {
		case i >= n-gone:
			taken.box(b.x, b.y, b.w, b.h)
			strikes.move(b.x-1, b.y+b.h).by(b.w+2, -b.h)
		case class == "one":
			kept.dot(b.x+b.w/2, b.y+b.h/2, b.w/2)
		default:
			kept.box(b.x, b.y, b.w, b.h)
		}
	}
	d.path(class+" "+fills[r.fill], &kept)
	d.path(class+" gone", &taken)
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
