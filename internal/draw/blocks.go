package draw

import (
	"homebuild/internal/draw/canvas"
	"homebuild/internal/picture"
)

// Where the places of a base-ten drawing stand.
const (
	blockHeight = 58
	blockLabel  = 32 // middle of a row's number
	hundredsAt  = 64
	tensAt      = 172
	onesAt      = 264
	tensWideAt  = 72 // without hundreds there is more room
	onesWideAt  = 222
)

// shape is where a drawing's tens and ones start, and how far apart they are.
type shape struct{ tens, ones, stick, dot int }

func shapeOf(p picture.Blocks) shape {
	if p.Hundreds() {
		return shape{tensAt, onesAt, 9, 11}
	}
	return shape{tensWideAt, onesWideAt, 15, 18}
}

func blocks(p picture.Blocks) figure {
	height := 6 + blockHeight*len(p.Rows)
	if p.Totals != nil {
		height += 36
	}
	return figure{height: height, paint: func(b *brush) {
		at := shapeOf(p)
		for i, r := range p.Rows {
			y := 4 + blockHeight*i
			if i > 0 && r.Fill == 0 {
				b.Line(picture.Margin, y-2, picture.Width-picture.Margin, y-2, "ink")
			}
			b.blockRow(r, y, at)
		}
		if p.Totals != nil {
			b.totals(*p.Totals, height-36, at, p.Hundreds())
		}
	}}
}

// blockRow draws a number and its squares, sticks and dots.
func (b *brush) blockRow(r picture.BlockRow, y int, at shape) {
	b.amount(blockLabel, y+blockHeight/2-2, r.Amount)
	if !r.Written() {
		b.RoundRect(tensWideAt, y+6, picture.Width-tensWideAt-picture.Margin, blockHeight-16, 5, "unknown")
		return
	}
	places, gone := picture.PlacesOf(r.N), r.Crossed
	var kept, taken []picture.Box
	sort := func(at picture.Box, isGone bool) {
		if isGone {
			taken = append(taken, at)
		} else {
			kept = append(kept, at)
		}
	}
	for i := range places.Hundreds {
		sort(picture.Box{X: hundredsAt + i%5*20, Y: y + 6 + i/5*20, W: 17, H: 17}, i >= places.Hundreds-gone.Hundreds)
	}
	for i := range places.Tens {
		sort(picture.Box{X: at.tens + i*at.stick, Y: y + 4, W: at.stick * 3 / 5, H: blockHeight - 14}, i >= places.Tens-gone.Tens)
	}
	b.boxes(kept, partClass[r.Fill])
	b.gone(taken)
	b.ones(r, places.Ones, y, at)
}

// ones draws the dots of a row; those that are taken away are struck out.
func (b *brush) ones(r picture.BlockRow, count, y int, at shape) {
	radius := min(at.dot*2/5, 7)
	var kept []picture.Point
	var taken []picture.Box
	for i := range count {
		dot := picture.Point{X: at.ones + i%5*at.dot, Y: y + 16 + i/5*20}
		if i >= count-r.Crossed.Ones {
			taken = append(taken, picture.Box{X: dot.X - radius, Y: dot.Y - radius, W: 2 * radius, H: 2 * radius})
		} else {
			kept = append(kept, dot)
		}
	}
	b.circles(kept, radius, partClass[r.Fill])
	b.gone(taken)
}

// boxes draws rectangles of one class as a single path.
func (b *brush) boxes(list []picture.Box, class string) {
	var p canvas.Path
	for _, at := range list {
		p.Box(at.X, at.Y, at.W, at.H)
	}
	b.Path(&p, class)
}

// gone leaves the outlines of what is taken away, each struck out.
func (b *brush) gone(list []picture.Box) {
	b.boxes(list, "gone")
	var p canvas.Path
	for _, at := range list {
		p.Move(at.X-1, at.Y+at.H).By(at.W+2, -at.H)
	}
	b.Path(&p, "ink")
}

// totals writes what each place comes to.
func (b *brush) totals(t picture.Places, y int, at shape, hundreds bool) {
	b.Line(picture.Margin, y, picture.Width-picture.Margin, y, "ink")
	if hundreds {
		b.text(hundredsAt+50, y+20, b.number(100*t.Hundreds))
	}
	b.text(at.tens+4*at.stick, y+20, b.number(10*t.Tens))
	b.text(at.ones+2*at.dot, y+20, b.number(t.Ones))
}
