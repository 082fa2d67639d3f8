package picture

import (
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// BondRadius is the radius of a bond's circles.
const BondRadius = 34

// Bond is a number bond: the whole in a circle above, its parts in circles
// below, joined by lines.
type Bond struct {
	Parts []Amount // two or three
	Whole Amount
}

func bondOf(p problem.Problem, stage Stage) Bond {
	f := grown(p, stage)
	return Bond{Parts: f.parts, Whole: f.whole}
}

// Circles gives the middle of the whole and of each part.
func (b Bond) Circles() (whole Point, parts []Point) {
	top := Margin + BondRadius
	below := top + 2*BondRadius + 28
	if len(b.Parts) == 3 {
		return Point{Width / 2, top}, []Point{{58, below}, {160, below}, {262, below}}
	}
	return Point{Width / 2, top}, []Point{{88, below}, {232, below}}
}

// Describe says the whole and the parts; every circle is there from the start.
func (b Bond) Describe() phrase.Line {
	id := "picture.number-bond.two"
	if len(b.Parts) == 3 {
		id = "picture.number-bond.three"
	}
	f := parts{whole: b.Whole}
	for _, a := range b.Parts {
		f.parts = append(f.parts, a.circled())
	}
	f.whole = b.Whole.circled()
	return phrase.Say(id, f.values()...)
}

// circled is a as a bond shows it: its circle is always drawn.
func (a Amount) circled() Amount {
	if a.State == Hidden {
		a.State = Empty
	}
	return a
}
