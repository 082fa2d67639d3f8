package picture

import (
	"homebuild/internal/phrase"
)

// Width is the width of every picture in units, 320 being the narrowest
// screen that a page must fit without scrolling sideways.
// Source: WCAG 2.2, success criterion 1.4.10.
const Width = 320

// Margin is kept free on the left and the right.
const Margin = 8

// Inner is the width that a picture can fill.
const Inner = Width - 2*Margin

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

var kindIDs = [lastKind + 1]string{
	BarModel:   "bar-model",
	Drawing:    "drawing",
	TenFrame:   "ten-frame",
	NumberBond: "number-bond",
	NumberLine: "number-line",
	BaseTen:    "base-ten",
	Columns:    "columns",
}

// Kinds lists every kind.
func Kinds() []Kind {
	var all []Kind
	for k := BarModel; k <= lastKind; k++ {
		all = append(all, k)
	}
	return all
}

// ParseKind finds a kind by its id, as written in week files.
func ParseKind(id string) (Kind, bool) {
	for _, k := range Kinds() {
		if kindIDs[k] == id {
			return k, true
		}
	}
	return 0, false
}

// Valid reports whether k is one of the kinds.
func (k Kind) Valid() bool { return k >= BarModel && k <= lastKind }

// String gives the id used in files and message ids: "bar-model".
func (k Kind) String() string {
	if !k.Valid() {
		return "no-picture"
	}
	return kindIDs[k]
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

// Picture is a model ready to draw.
type Picture interface {
	// Describe is the text alternative: what a sighted reader sees.
	Describe() phrase.Line
}
