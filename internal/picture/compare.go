package picture

import (
	"homebuild/internal/phrase"
)

// Comparison is two bars, one above the other, with the difference beside the
// shorter one.
type Comparison struct {
	Bigger, Smaller, Difference Amount
	// Names say whose bars they are, Bigger's first; both or none.
	Names []phrase.Value
}

func comparison(f parts) Comparison {
	return Comparison{Bigger: f.whole, Smaller: f.parts[0], Difference: f.parts[1]}
}

// WithNames returns c with the names of the two bars. The places of the values
// are set here: LongerName and ShorterName.
func (c Comparison) WithNames(bigger, smaller phrase.Value) Comparison {
	bigger.Name, smaller.Name = "LongerName", "ShorterName"
	c.Names = []phrase.Value{bigger, smaller}
	return c
}

// Spans gives the longer bar, the shorter bar and the gap at its end. Bars of
// the same length leave room for the empty gap behind both.
func (c Comparison) Spans() (longer, shorter, gap Span) {
	if c.Difference.N == 0 {
		s := Share(Margin, Inner-LeastSegment, LeastSegment, 1)[0]
		return s, s, Span{s.End(), LeastSegment}
	}
	s := Share(Margin, Inner, LeastSegment, c.Smaller.N, c.Difference.N)
	return Span{Margin, Inner}, s[0], s[1]
}

// Describe says both bars and the gap.
func (c Comparison) Describe() phrase.Line {
	id := "picture.bar-model." + c.variant()
	values := []phrase.Value{c.Bigger.value("Bigger"), c.Smaller.value("Smaller"), c.Difference.value("Difference")}
	return phrase.Say(id, append(values, c.Names...)...)
}

func (c Comparison) variant() string {
	if len(c.Names) > 0 {
		return "compare-named"
	}
	return "compare"
}
