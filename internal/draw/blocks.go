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
	return figure{sort: "blocks", height: height, paint: func(b *brush) {
		at := shapeOf(p)
		for i, r := range p.Rows {
			y := 4 + blockHeight*i
			if i > 0 && r.Fill == 0 {
				b.Line(picture.Margin, y-2, picture.Width-picture.Margin, y-2, "underline")
			}
			class := "part"
			if r.Fill == 0 || r.Crossed != (picture.Places{}) {
				class = "whole"
			}
			b.Group(class, func() { b.blockRow(r, y, at) })
		}
		if p.Totals != nil {
			b.Group("total", func() { b.totals(*p.Totals, height-36, at, p.Hundreds()) })
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
	var strikes canvas.Path
	block := func(name string, n, gone int, at func(i int) picture.Box) {
		var kept, taken canvas.Path
		for i := range n {
			box := at(i)
			if i < n-gone {
				kept.Box(box.X, box.Y, box.W, box.H)
				continue
			}
			taken.Box(box.X, box.Y, box.W, box.H)
			strikes.Move(box.X-1, box.Y+box.H).By(box.W+2, -box.H)
		}
		b.Path(&kept, name+" "+partClass[r.Fill])
		b.Path(&taken, name+" gone")
	}
	block("hundred", places.Hundreds, gone.Hundreds, func(i int) picture.Box {
		return picture.Box{X: hundredsAt + i%5*20, Y: y + 6 + i/5*20, W: 17, H: 17}
	})
	block("ten", places.Tens, gone.Tens, func(i int) picture.Box {
		return picture.Box{X: at.tens + i*at.stick, Y: y + 4, W: at.stick * 3 / 5, H: blockHeight - 14}
	})
	b.ones(r, places.Ones, y, at, &strikes)
	b.Path(&strikes, "strike")
}

// ones draws the dots of a row; those that are taken away are struck out.
func (b *brush) ones(r picture.BlockRow, count, y int, at shape, strikes *canvas.Path) {
	radius := min(at.dot*2/5, 7)
	var kept, taken canvas.Path
	for i := range count {
		dot := picture.Point{X: at.ones + i%5*at.dot, Y: y + 16 + i/5*20}
		if i < count-r.Crossed.Ones {
			kept.Dot(dot.X, dot.Y, radius)
			continue
		}
		taken.Box(dot.X-radius, dot.Y-radius, 2*radius, 2*radius)
		strikes.Move(dot.X-radius-1, dot.Y+radius).By(2*radius+2, -2*radius)
	}
	b.Path(&kept, "one "+partClass[r.Fill])
	b.Path(&taken, "one gone")
}

// totals writes what each place comes to.
func (b *brush) totals(t picture.Places, y int, at shape, hundreds bool) {
	b.Line(picture.Margin, y, picture.Width-picture.Margin, y, "underline")
	if hundreds {
		b.Text(hundredsAt+50, y+20+baseline, b.number(100*t.Hundreds), "hundred")
	}
	b.Text(at.tens+4*at.stick, y+20+baseline, b.number(10*t.Tens), "ten")
	b.Text(at.ones+2*at.dot, y+20+baseline, b.number(t.Ones), "one")
}
