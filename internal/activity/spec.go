package activity

import (
	"fmt"
	"slices"

	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// OwnID is the id of a target that a teacher spelled out in a week file.
const OwnID = "own"

// Spec is a target spelled out: what a teacher says instead of a target's id.
type Spec struct {
	Operation string // "addition", "subtraction" or "both"; empty for both
	Largest   int    // no number is larger, 5 to 1000
	Kinds     []string
	Parts     int    // addends, 2 to 4; 0 for 2
	Crossing  string // "always", "never" or "either"; empty for either
	Steps     int    // 1, or 2 for a chain; 0 for 1
}

// Smallest is the smallest range of a target; problem.Largest is the largest.
const Smallest = 5

// Operations are the words for a spelled-out target's operation.
func Operations() []string { return []string{"addition", "subtraction", "both"} }

// Crossings are the words for whether a target crosses a ten.
func Crossings() []string { return []string{"always", "never", "either"} }

// Target makes the target that s spells out. The grade is the one that first
// works in such a range: 10, 20, 100 and beyond for kindergarten and grades 1
// to 3 (CCSS-M 2010: K.OA.A.2, 1.OA.A.1, 2.OA.A.1, 3.NBT.A.2).
func (s Spec) Target() (Target, error) {
	if s.Largest < Smallest || s.Largest > problem.Largest {
		return Target{}, fmt.Errorf("the largest number is %d; write one from %d to %d", s.Largest, Smallest, problem.Largest)
	}
	t := Target{ID: OwnID, Within: s.Largest, Pictures: picturesTo(s.Largest)}
	var ok bool
	if t.Crossing, ok = ParseCrossing(s.Crossing); !ok && s.Crossing != "" {
		return Target{}, fmt.Errorf("crossing is %q; write always, never or either", s.Crossing)
	}
	var err error
	if t.Kinds, err = s.kinds(); err != nil {
		return Target{}, err
	}
	t.Grade = gradeOf(s.Largest)
	for _, k := range t.Kinds {
		t.Grade = max(t.Grade, k.FirstGrade())
	}
	t.Strategies = slices.DeleteFunc(strategy.Names(), func(n strategy.Name) bool { return n.FirstGrade() > t.Grade })
	for _, k := range t.Kinds {
		if !t.possible(k) {
			return Target{}, fmt.Errorf("no numbers up to %d make a story of the kind %v with crossing %q; raise the largest number or write either", s.Largest, k, t.Crossing)
		}
	}
	return t, nil
}

func gradeOf(largest int) problem.Grade {
	switch {
	case largest <= 10:
		return 0
	case largest <= 20:
		return 1
	case largest <= 100:
		return 2
	}
	return 3
}

// kinds are the ones named, or all that fit.
func (s Spec) kinds() ([]problem.Kind, error) {
	var out []problem.Kind
	for _, id := range s.Kinds {
		k, ok := problem.ParseKind(id)
		switch {
		case !ok:
			return nil, fmt.Errorf("%q is not a kind of story", id)
		case !s.fits(k):
			return nil, fmt.Errorf("stories of the kind %q do not fit operation, parts and steps; leave one of them out", id)
		}
		out = append(out, k)
	}
	if len(s.Kinds) > 0 {
		return out, nil
	}
	for _, k := range problem.Kinds() {
		if s.fits(k) && k.FirstGrade() <= max(1, gradeOf(s.Largest)) {
			out = append(out, k)
		}
	}
	if len(out) == 0 {
		return nil, fmt.Errorf("no kind of story fits operation %q, %d parts and %d steps", s.Operation, s.Parts, s.Steps)
	}
	return out, nil
}

// fits reports whether k is of the operation, parts and steps asked for. A
// chain is longer by itself, whatever the operation.
func (s Spec) fits(k problem.Kind) bool {
	chain := k.Steps() != nil
	if s.Steps == 2 || chain {
		return chain && s.Steps == 2
	}
	if (k == problem.TogetherThree) != (s.Parts == 3) || (k == problem.TogetherFour) != (s.Parts == 4) {
		return false
	}
	switch s.Operation {
	case "addition":
		return opOf(k) == problem.Plus
	case "subtraction":
		return opOf(k) == problem.Minus
	}
	return true
}

// picturesTo are the pictures that suit every kind of story in a range.
func picturesTo(largest int) []picture.Kind {
	switch {
	case largest <= 20:
		return []picture.Kind{picture.BarModel, picture.Drawing, picture.NumberLine}
	case largest <= 100:
		return []picture.Kind{picture.BarModel, picture.NumberLine, picture.BaseTen}
	}
	return []picture.Kind{picture.BarModel, picture.NumberLine}
}
