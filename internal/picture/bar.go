package picture

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// LeastSegment is the narrowest segment of a bar: three big digits on their
// plate fit in it.
const LeastSegment = 48

// Bar is a bar cut into its parts, with the whole above it.
type Bar struct {
	Parts []Amount // two or three
	Whole Amount
}

func barOf(p problem.Problem, stage Stage) Bar {
	f := grown(p, stage)
	return Bar{Parts: f.parts, Whole: f.whole}
}

// Undivided reports whether the bar is still in one piece: the whole is told
// before its parts.
func (b Bar) Undivided() bool { return b.shown().undivided() }

// Segments lays the parts out in proportion to their numbers. Parts that are
// all asked for are given the same width: nobody knows yet which is longer.
func (b Bar) Segments() []Span {
	open := true
	for _, a := range b.Parts {
		open = open && a.State == Asked
	}
	if open {
		return Share(Margin, Inner, LeastSegment, ones(len(b.Parts))...)
	}
	return Share(Margin, Inner, LeastSegment, numbers(b.Parts)...)
}

// Describe says the parts and the whole.
func (b Bar) Describe() phrase.Line { return b.shown().describe(BarModel) }

func (b Bar) shown() parts { return parts{parts: b.Parts, whole: b.Whole} }
