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
	places := picture.PlacesOf(r.N)
	var whole, gone canvas.Path
	for i := range places.Hundreds {
		square := picture.Box{X: hundredsAt + i%5*20, Y: y + 6 + i/5*20, W: 17, H: 17}
		b.block(&whole, &gone, square, i >= places.Hundreds-r.Crossed.Hundreds)
	}
	for i := range places.Tens {
		stick := picture.Box{X: at.tens + i*at.stick, Y: y + 4, W: at.stick * 3 / 5, H: blockHeight - 14}
		b.block(&whole, &gone, stick, i >= places.Tens-r.Crossed.Tens)
	}
	b.Path(&whole, partClass[r.Fill])
	var ones, crossed []picture.Point
	for i := range places.Ones {
		dot := picture.Point{X: at.ones + i%5*at.dot, Y: y + 16 + i/5*20}
		ones = append(ones, dot)
		if i >= places.Ones-r.Crossed.Ones {
			crossed = append(crossed, dot)
		}
	}
	radius := min(at.dot*2/5, 7)
	b.circles(ones, radius, partClass[r.Fill])
	b.crosses(crossed, radius)
	b.Path(&gone, "cross")
}

// block adds a square or a stick, crossed out if it is gone.
func (b *brush) block(whole, crossed *canvas.Path, at picture.Box, gone bool) {
	whole.Box(at.X, at.Y, at.W, at.H)
	if gone {
		crossed.Move(at.X-2, at.Y+at.H-4).By(at.W+4, 8-at.H)
	}
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
