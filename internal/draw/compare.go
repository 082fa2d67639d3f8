package draw

import "homebuild/internal/picture"

// compareHeight is the height of each of two compared bars.
const compareHeight = 40

// nameHeight is the room for a name above its bar.
const nameHeight = 26

func comparison(p picture.Comparison) figure {
	name := 4
	if len(p.Names) == 2 {
		name = nameHeight
	}
	second := name + compareHeight + name + 4
	height := second + compareHeight + 6
	if len(p.Names) == 0 && !p.Smaller.Drawn() && !p.Difference.Drawn() { // the story has not come to the second bar
		height = name + compareHeight + 6
	}
	return figure{sort: "compare", height: height, paint: func(b *brush) {
		longer, shorter, gap := p.Spans()
		b.names(p, name-8, second-8)
		b.bar("longer", box(longer, name, compareHeight), 1, p.Bigger)
		b.bar("shorter", box(shorter, second, compareHeight), 1, p.Smaller)
		b.gap(p, gap, name+compareHeight, second)
	}}
}

// gap draws what the shorter bar lacks, with a line down from the longer one.
func (b *brush) gap(p picture.Comparison, s picture.Span, above, y int) {
	if !p.Difference.Drawn() {
		return
	}
	if p.Bigger.Drawn() {
		b.Line(s.X, above, s.X, y, "guide")
		b.Line(s.End(), above, s.End(), y, "guide")
	}
	b.bar("difference", box(s, y, compareHeight), 2, p.Difference)
}

func (b *brush) bar(class string, at picture.Box, fill int, a picture.Amount) {
	if a.Drawn() {
		b.Group(class, func() { b.part(at, fill, a) })
	}
}

func box(s picture.Span, y, height int) picture.Box {
	return picture.Box{X: s.X, Y: y, W: s.W, H: height}
}

// names writes the two names, their baselines at the given heights.
func (b *brush) names(p picture.Comparison, bigger, smaller int) {
	if len(p.Names) != 2 {
		return
	}
	for i, y := range []int{bigger, smaller} {
		b.Text(picture.Margin, y, b.say(picture.NameLine(p.Names[i])), "name")
	}
}
