package picture

import (
	"unicode/utf8"

	"homebuild/internal/phrase"
)

// Canvas is what pictures are drawn on; internal/picture/svg has one.
// Coordinates are whole units from the top left corner. A class says what a
// shape or a group is, and so how it looks; see the package comment.
type Canvas interface {
	Rect(x, y, w, h int, class string)
	RoundRect(x, y, w, h, r int, class string)
	Circle(x, y, r int, class string)
	Line(x1, y1, x2, y2 int, class string)
	// Path draws path data. An empty path draws nothing.
	Path(data, class string)
	// Text writes around x, with its baseline at y.
	Text(x, y int, text, class string)
	// Group draws what inside draws as one group, moved by x and y.
	Group(class string, x, y int, inside func())
}

// Pen draws on a canvas in a page's language. It has the ways of drawing that
// several pictures share.
type Pen struct {
	Canvas
	Number func(int) string         // writes a number in the page's digits
	Say    func(phrase.Line) string // says the name beside a bar
}

// point is a place in a picture.
type point struct{ x, y int }

// box is a place with a size.
type box struct{ x, y, w, h int }

const (
	digit       = 13 // the room for a digit of a big numeral
	plateHeight = 28
	baseline    = 8 // from the middle of a big numeral down to its baseline
)

// fills are the classes of the whole and of the parts. A fourth part has the fill of
// the first, from which two others keep it apart.
var fills = [...]string{"part-0", "part-a", "part-b", "part-c", "part-a"}

// group draws a group where it stands.
func (d *Pen) group(class string, inside func()) { d.Group(class, 0, 0, inside) }

// text writes a big numeral, or another short text, around a middle.
func (d *Pen) text(x, y int, s, class string) { d.Text(x, y+baseline, s, class) }

// number writes an amount around a middle, on a plate of plain paper: over a
// fill pattern it could not be read. What is found stands out, what is asked
// is a "?", and what is not there yet leaves nothing.
func (d *Pen) number(x, y int, a amount) {
	switch {
	case a.state == asked:
		switch a.gap {
		case square:
			d.Rect(x-16, y-16, 32, 32, "gap")
		case round:
			d.Circle(x, y, 17, "gap")
		}
		d.text(x, y, "?", "")
	case a.written():
		s := d.Number(a.n)
		class := "plate"
		if a.state == found {
			class = "plate found"
		}
		w := digit*utf8.RuneCountInString(s) + 5
		d.RoundRect(x-w/2, y-plateHeight/2, w, plateHeight, 5, class)
		d.text(x, y, s, "")
	}
}

// look is the class of an amount's shape, which is filled once it is known.
func look(a amount, fill string) string {
	if a.written() {
		return fill
	}
	return "unknown"
}

// sum writes "8 + 6".
func (d *Pen) sum(a, b int) string { return d.Number(a) + " + " + d.Number(b) }

// segment draws a group: a box filled for an amount, the number in its middle.
func (d *Pen) segment(class string, at box, fill int, a amount) {
	if !a.drawn() {
		return
	}
	filled := look(a, fills[fill])
	if a.written() && a.n == 0 {
		filled = "nothing"
	}
	d.group(class, func() {
		d.Rect(at.x, at.y, at.w, at.h, filled)
		d.number(at.x+at.w/2, at.y+at.h/2, a)
	})
}

const braceHeight = 12

// whole writes a number with a brace below it, whose tip points up to it.
func (d *Pen) whole(s span, a amount) {
	if !a.drawn() {
		return
	}
	const top = 4
	d.group("whole", func() { d.braced(s, top, top+plateHeight+2+braceHeight, -1, a) })
}

// wholeBelow writes a number with a brace above it, whose tip points down to
// it.
func (d *Pen) wholeBelow(s span, y int, a amount) {
	if !a.drawn() {
		return
	}
	d.group("under", func() { d.braced(s, y+braceHeight+2, y, 1, a) })
}

// braced writes a number, its plate's top at plate, and a brace whose ends lie at y;
// its tip points up (-1) or down (1).
func (d *Pen) braced(s span, plate, y, tip int, a amount) {
	if a.state == empty {
		d.RoundRect(s.middle()-20, plate, 40, plateHeight, 5, "unknown")
	}
	d.number(s.middle(), plate+plateHeight/2, a)
	half, bow := s.w/2, 6*tip
	d.path("brace", new(path).move(s.x, y).
		bend(0, bow, 6, bow).by(half-12, 0).bend(6, 0, 6, bow).
		bend(0, -bow, 6, -bow).by(s.w-half-12, 0).bend(6, 0, 6, -bow))
}

// below is where parts begin: under their whole, at the top before the story
// has come to it.
func below(whole amount) int {
	if !whole.drawn() {
		return 4
	}
	return 4 + plateHeight + 2 + braceHeight + 4
}

func (d *Pen) path(class string, p *path) { d.Path(p.String(), class) }

// dots draws dots of one class as a single path.
func (d *Pen) dots(middles []point, r int, class string) {
	var p path
	for _, m := range middles {
		p.dot(m.x, m.y, r)
	}
	d.path(class, &p)
}

// cross crosses dots out.
func (d *Pen) cross(middles []point, r int) {
	var p path
	for _, m := range middles {
		p.move(m.x-r, m.y-r).by(2*r, 2*r).jump(0, -2*r).by(-2*r, 2*r)
	}
	d.path("cross", &p)
}

// grid places n dots in rows.
func grid(x, y, n, columns, pitch int) []point {
	middles := make([]point, n)
	for i := range middles {
		middles[i] = point{x + i%columns*pitch + pitch/2, y + i/columns*pitch + pitch/2}
	}
	return middles
}

// label is a number under a drawing, with a sample of the dots that it counts.
type label struct {
	amount
	cell cell
}

// legend writes labels in a row.
func (d *Pen) legend(y int, labels []label) {
	const step, r = 84, 10
	x := (Width - step*len(labels)) / 2
	for _, l := range labels {
		d.group("legend", func() {
			sample := []point{{x + 20, y}}
			class := fills[l.cell.fill]
			if l.cell.mark == dashed {
				class = "unknown"
			}
			d.dots(sample, r, class)
			if l.cell.mark == crossed {
				d.cross(sample, r)
			}
			room := 54
			if l.written() && l.n >= 100 || l.gap != noShape {
				room = 58
			}
			d.number(x+room, y, l.amount)
		})
		x += step
	}
}
