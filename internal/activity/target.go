package activity

import (
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// Crossing says whether the working of a target's problems passes a ten.
type Crossing uint8

const (
	CrossEither Crossing = iota
	CrossAlways
	CrossNever
)

var crossingIDs = [...]string{CrossEither: "either", CrossAlways: "always", CrossNever: "never"}

// ParseCrossing finds a crossing by its word in target files.
func ParseCrossing(word string) (Crossing, bool) {
	for c, id := range crossingIDs {
		if id == word {
			return Crossing(c), true
		}
	}
	return 0, false
}

// String gives the word used in target files.
func (c Crossing) String() string { return crossingIDs[c] }

// Limits bind the numbers a and b of a target's working, a + b or a - b. The
// zero value of each field binds nothing. Of more addends First binds the first
// and SecondLeast the others; of a chain First binds the story's first number and
// nothing else binds.
type Limits struct {
	FirstLeast  int
	FirstStep   int // a is a multiple of it
	SecondLeast int
	SecondMost  int
	SecondStep  int // b is a multiple of it
	PartMost    int // neither part of the whole is larger
	Whole       int // the whole is always this number
}

// Target is what a class learns in a week.
type Target struct {
	ID         string // the word for week files; Own for one spelled out
	Grade      problem.Grade
	Standards  []string // codes of published standards
	Easier     string   // the id of the target for a smaller step; empty for none
	Harder     string   // the id of the target for a child who wants more; empty for none
	Kinds      []problem.Kind
	Within     int // no number of a story is larger
	Crossing   Crossing
	Limits     Limits
	Strategies []strategy.Name // ways of working that the target is good for
	Pictures   []picture.Kind  // pictures that suit it, the usual one first
}

// CanLine is the target said by a child: "I can ...".
func (t Target) CanLine() phrase.Line { return t.line("can") }

// AboutLine tells a parent what the child learns.
func (t Target) AboutLine() phrase.Line { return t.line("about") }

func (t Target) line(part string) phrase.Line {
	if t.ID == OwnID {
		return phrase.Say("target.own."+part, phrase.Number("Within", t.Within))
	}
	return phrase.Say("target." + t.ID + "." + part)
}

// KindName is the line that names a kind in the teacher's key.
func KindName(k problem.Kind) phrase.Line { return phrase.Say("kind." + k.String() + ".name") }

// Lines lists every sentence that the targets and this package can ask for, so
// that a catalogue can be checked for all of them.
func Lines(targets []Target) []phrase.Line {
	var out []phrase.Line
	for _, t := range append([]Target{{ID: OwnID, Within: 20}}, targets...) {
		out = append(out, t.CanLine(), t.AboutLine())
	}
	for _, k := range problem.Kinds() {
		out = append(out, KindName(k))
	}
	return out
}
