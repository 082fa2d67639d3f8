// Package picture holds the models of a story as data: bars, dots, frames,
// bonds, lines and base-ten drawings, in whole numbers. It does not draw:
// internal/draw does.
package picture

import (
	"homebuild/internal/phrase"
)

// Kind is a sort of picture.
type Kind uint8

const (
	BarModel   Kind = iota + 1 // part-whole bar, or comparison bars for Compare
	Drawing                    // simple dots in the parts' own fill, within 20
	TenFrame                   // one or two frames of ten, within 20
	NumberBond                 // whole and parts in circles
	NumberLine                 // hops
	BaseTen                    // hundreds as squares, tens as sticks, ones as dots
	Columns                    // expanded form: tens and ones side by side
	lastKind   = Columns
)

// Stage is how far a picture has grown with the story.
type Stage uint8

const (
	FirstPart  Stage = iota + 1 // only what the first sentence tells
	SecondPart                  // what all sentences tell, nothing asked yet
	Open                        // with the unknown as "?"
	Solved                      // with the answer
)

// Picture is a model ready to draw.
type Picture interface {
	// Describe is the text alternative: what a sighted reader sees.
	Describe() phrase.Line
}
