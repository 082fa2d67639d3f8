package picture

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// bar is a bar cut into its parts, with the whole above it. It stays in one
// piece while the whole is told and no part yet.
type bar struct{ amounts }

// Bar joins known parts.
func Bar(parts ...int) Picture { return bar{joined(parts...)} }

func fitsBars(problem.Problem) bool { return true }

// barsOf shows a problem as one bar, as two to compare, or as two steps.
func barsOf(p problem.Problem, stage Stage) Picture {
	switch {
	case isChain(p):
		return chainOf(p, stage)
	case isCompare(p):
		return comparisonOf(grown(p, stage))
	}
	return bar{grown(p, stage)}
}

const (
	barHeight = 46
	// leastSegment is the narrowest segment of a bar: three big digits on their
	// plate fit in it.
	leastSegment = 48
)

// segments lays the parts out in proportion to their numbers. Parts that are
// all asked for are given the same width: nobody knows yet which is longer.
func (b bar) segments() []span {
	list := numbers(b.parts)
	if b.asksAll() {
		list = equal(len(list))
	}
	return share(margin, inner, leastSegment, list...)
}

// Figure draws the bar under its whole.
func (b bar) Figure() Figure {
	top := below(b.whole)
	return Figure{"bar", top + barHeight + 6, func(d *Pen) {
		d.whole(span{margin, inner}, b.whole)
		if b.undivided() {
			d.Rect(margin, top, inner, barHeight, fills[0])
			return
		}
		for i, s := range b.segments() {
			d.segment("part", box{s.x, top, s.w, barHeight}, i+1, b.parts[i])
		}
	}}
}

// Describe says the parts and the whole.
func (b bar) Describe() phrase.Line { return b.describe("picture.bar-model") }
