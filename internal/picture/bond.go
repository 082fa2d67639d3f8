package picture

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// bond is a number bond: the whole in a circle above, its parts in circles
// below, joined by lines. Every circle is there from the start.
type bond struct{ amounts }

// Bond shows a calculation as a whole and its parts.
func Bond(c problem.Calculation) Picture {
	if c.Op == problem.Minus {
		return bond{joined(append(slices.Clone(c.Numbers[1:]), c.Value())...)}
	}
	return bond{joined(c.Numbers...)}
}

func fitsBond(p problem.Problem) bool { return !isChain(p) && !isCompare(p) }

func bondOf(p problem.Problem, stage Stage) Picture {
	s := grown(p, stage)
	s.whole = circled(s.whole)
	for i, a := range s.parts {
		s.parts[i] = circled(a)
	}
	return bond{s}
}

func circled(a amount) amount {
	if a.state == hidden {
		a.state = empty
	}
	return a
}

// Figure draws the circles.
func (b bond) Figure() Figure {
	const r, top, low = 34, margin + 34, margin + 34 + 2*34 + 28
	places := []int{88, 232}
	if len(b.parts) == 3 {
		places = []int{58, 160, 262}
	}
	return Figure{"bond", low + r + margin, func(d *Pen) {
		for _, x := range places {
			d.Line(Width/2, top, x, low, "stem")
		}
		circle := func(class string, x, y, fill int, a amount) {
			d.group(class, func() {
				d.Circle(x, y, r, look(a, fills[fill]))
				d.number(x, y, a)
			})
		}
		circle("whole", Width/2, top, 0, b.whole)
		for i, x := range places {
			circle("part", x, low, i+1, b.parts[i])
		}
	}}
}

// Describe says the whole and the parts.
func (b bond) Describe() phrase.Line {
	return phrase.Say("picture.number-bond"+b.count(), b.values()...)
}
