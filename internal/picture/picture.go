package picture

import (
	"homebuild/internal/phrase"
)

// Width is the width of every picture in units, 320 being the narrowest
// screen that a page must fit without scrolling sideways.
// Source: WCAG 2.2, success criterion 1.4.10.
const Width = 320

const (
	margin = 8                // kept free on the left and the right
	inner  = Width - 2*margin // what a picture can fill
)

// Most is the largest number drawn as single dots: more cannot be counted at
// a glance on a phone.
const Most = 20

// Picture is a model ready to be drawn.
type Picture interface {
	// Describe is the text alternative: what a sighted reader sees.
	Describe() phrase.Line
	// Figure lays the picture out.
	Figure() Figure
}

// Figure is a picture laid out on a sheet of its Height and Width.
type Figure struct {
	Class  string // what sort of picture it is; see the package comment
	Height int
	Paint  func(*Pen)
}

// Stage is how far a picture has grown with the story.
type Stage uint8

const (
	FirstPart  Stage = iota + 1 // only what the first sentence tells
	SecondPart                  // what all sentences tell, nothing asked yet
	Open                        // with the unknown as "?"
	Solved                      // with the answer
)

// Stages lists the stages in the order in which a picture grows.
func Stages() []Stage { return []Stage{FirstPart, SecondPart, Open, Solved} }
