package draw

import (
	"homebuild/internal/draw/canvas"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

const (
	columnRow   = 40 // the height of a row
	columnHead  = 40 // the height of the signs above the columns
	columnFirst = 62 // the middle of the numbers that are split
)

// columns draws expanded form: each number, its places in columns, and what
// each column comes to below a line.
func columns(p picture.Columned) figure {
	bottom := columnHead + columnRow*len(p.Numbers)
	return figure{sort: "columns", height: bottom + columnRow + 4, paint: func(b *brush) {
		x := columnMiddles(p)
		b.columnSigns(x, bottom+columnRow)
		for i, n := range p.Numbers {
			y := columnHead + columnRow*i + columnRow/2
			if !n.Drawn() {
				continue
			}
			b.Group("number", func() {
				if i > 0 {
					b.Text(18, y+baseline, sign(p.Op), "sign")
				}
				b.text(columnFirst, y, b.number(n.N))
				for j, v := range p.Values(p.Rows[i]) {
					b.text(x[j], y, b.number(v))
				}
			})
		}
		b.Line(picture.Margin, bottom, picture.Width-picture.Margin, bottom, "underline")
		b.Group("total", func() { b.columnResult(p, x, bottom+columnRow/2+2) })
	}}
}

func columnMiddles(p picture.Columned) []int {
	if p.Hundreds {
		return []int{136, 208, 276}
	}
	return []int{164, 258}
}

// columnResult writes what the columns come to, or where to write it.
func (b *brush) columnResult(p picture.Columned, x []int, y int) {
	b.amount(columnFirst, y, p.Answer)
	if p.Answer.State != picture.Found {
		return
	}
	for j, v := range p.Values(p.Result) {
		b.text(x[j], y, b.number(v))
	}
}

// columnSigns heads the columns with a square, a stick and a dot, as the
// base-ten drawing has them, and rules lines between them.
func (b *brush) columnSigns(x []int, bottom int) {
	n := len(x)
	b.circles([]picture.Point{{X: x[n-1], Y: 20}}, 6, partClass[1])
	b.Rect(x[n-2]-4, 4, 9, 32, partClass[1])
	if n == 3 {
		b.Rect(x[0]-16, 4, 32, 32, partClass[1])
	}
	var p canvas.Path
	for i := range x {
		left := columnFirst + (x[0]-columnFirst)/2
		if i > 0 {
			left = (x[i-1] + x[i]) / 2
		}
		p.Move(left, 4).By(0, bottom-4)
	}
	b.Path(&p, "thin")
}

func sign(op problem.Op) string {
	if op == problem.Minus {
		return "−"
	}
	return "+"
}
