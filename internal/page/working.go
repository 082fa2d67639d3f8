package page

import (
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// Solution is the whole way to the answer of a story.
type Solution struct {
	// Equations are the story's own with "?", and the one that finds the
	// answer where that is another.
	Equations []problem.Equation
	Sign      *Sign    // the choice of the operation; nil where it needs no choice
	First     *Working // the first step of a two-step story; nil for one step
	Way       Working
	Sense     []Sense // estimate first, then part and whole, then going back
}

// Working is a calculation worked out.
type Working struct {
	// Asks is the equation of this step of a two-step story, shown above it;
	// zero for a story with one step.
	Asks  problem.Equation
	Name  phrase.Line // "Make a ten"
	Why   phrase.Line // when it helps; zero for none
	Steps []Step
	Chain problem.Equation // the whole in one line; zero for none
}

// Step is one line of a Working.
type Step struct {
	Say      phrase.Line
	Equation problem.Equation // zero for none
	Picture  picture.Picture  // nil for none
}

// Sense is one way to see that an answer makes sense.
type Sense struct {
	Name     phrase.Line // "Friendly numbers"
	Lines    []phrase.Line
	Equation problem.Equation // zero for none
}

// Sign is the choice between adding and taking away, where a week has both.
type Sign struct {
	Equation problem.Equation // the one that finds the number; the signs of its first side are chosen
	Look     phrase.Line      // what helps whoever picked another sign
}
