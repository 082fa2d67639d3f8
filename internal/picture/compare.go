package picture

import "homebuild/internal/phrase"

// comparison is two bars, one above the other, with the difference beside the
// shorter one.
type comparison struct {
	bigger, smaller, difference amount
	both                        *amount        // what the two bars come to; nil where nobody asks
	names                       []phrase.Value // whose bars they are, bigger's first; both or none
}

func comparisonOf(s amounts) comparison {
	return comparison{bigger: s.whole, smaller: s.parts[0], difference: s.parts[1]}
}

// comparing is a picture that can tell whose amounts it compares.
type comparing interface {
	named(names []phrase.Value) Picture
}

// WithNames returns a picture that compares with the names of the two people
// whose amounts it shows; any other picture is returned as it is.
func WithNames(p Picture, bigger, smaller phrase.Value) Picture {
	if c, ok := p.(comparing); ok {
		bigger.Name, smaller.Name = "LongerName", "ShorterName"
		return c.named([]phrase.Value{bigger, smaller})
	}
	return p
}

func (c comparison) named(names []phrase.Value) Picture {
	c.names = names
	return c
}

const compareHeight = 40 // of each of the two bars

// spans gives the longer bar, the shorter bar and the gap at its end. Bars of
// the same length leave room for the empty gap behind both.
func (c comparison) spans() (longer, shorter, gap span) {
	room := inner
	if c.both != nil {
		room -= bothRoom
	}
	if c.difference.n == 0 {
		s := share(margin, room-leastSegment, leastSegment, 1)[0]
		return s, s, span{s.end(), leastSegment}
	}
	s := share(margin, room, leastSegment, c.smaller.n, c.difference.n)
	return span{margin, room}, s[0], s[1]
}

// bothRoom is kept free beside the bars for a brace and the number that they
// come to.
const bothRoom = 66

// Figure draws both bars, or the first while the story has not come to the
// second.
func (c comparison) Figure() Figure {
	first := c.nameHeight()
	second := first + compareHeight + first + 4
	height := second + compareHeight + 6
	if len(c.names) == 0 && !c.smaller.drawn() && !c.difference.drawn() {
		height = first + compareHeight + 6
	}
	return Figure{"compare", height, func(d *Pen) {
		longer, shorter, gap := c.spans()
		d.segment("longer", box{longer.x, first, longer.w, compareHeight}, 1, c.bigger)
		d.segment("shorter", box{shorter.x, second, shorter.w, compareHeight}, 1, c.smaller)
		if c.difference.drawn() && c.bigger.drawn() {
			for _, x := range []int{gap.x, gap.end()} {
				d.Line(x, first+compareHeight, x, second, "guide")
			}
		}
		c.writeNames(d, first-8, second-8) // over the guides, which a long name meets
		d.segment("difference", box{gap.x, second, gap.w, compareHeight}, 2, c.difference)
		if c.both != nil && c.both.drawn() {
			d.group("both", func() { d.beside(margin+inner-bothRoom+6, first, second+compareHeight, *c.both) })
		}
	}}
}

// beside writes a number with a brace on its left, from one height to another.
func (d *Pen) beside(x, top, bottom int, a amount) {
	half := (bottom - top) / 2
	d.path("brace", new(path).move(x, top).
		bend(6, 0, 6, 6).by(0, half-12).bend(0, 6, 6, 6).
		bend(-6, 0, -6, 6).by(0, bottom-top-half-12).bend(0, 6, -6, 6))
	d.number(Width-margin-digit*3/2-3, top+half, a)
}

// nameHeight is the room above each bar, for its name where there is one.
func (c comparison) nameHeight() int {
	if len(c.names) == 0 {
		return 4
	}
	return 26
}

// writeNames writes the two names, their baselines at the given heights.
func (c comparison) writeNames(d *Pen, heights ...int) {
	for i, name := range c.names {
		d.Text(margin, heights[i], d.Say(nameLine(name)), "name")
	}
}

// nameLine is the name beside a bar or a row, alone.
func nameLine(name phrase.Value) phrase.Line {
	name.Name = "Name"
	return phrase.Say("picture.name", name)
}

// Describe says both bars and the gap.
func (c comparison) Describe() phrase.Line { return c.describe("picture.bar-model.") }

func (c comparison) describe(id string) phrase.Line {
	id += "compare"
	values := []phrase.Value{c.bigger.value("Bigger"), c.smaller.value("Smaller"), c.difference.value("Difference")}
	if c.both != nil {
		id, values = id+"-both", append(values, c.both.value("Both"))
	}
	if len(c.names) > 0 {
		id, values = id+"-named", append(values, c.names...)
	}
	return phrase.Say(id, values...)
}
