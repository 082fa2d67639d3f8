package page

import (
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// CheckIndex is where the first of two numbers is picked.
type CheckIndex struct {
	Layout
	Numbers []Number
}

// Check is every pair with one first number.
type Check struct {
	Layout
	*CheckPairs
	Index string // link to the CheckIndex
}

// CheckPairs are all pairs with one first number.
type CheckPairs struct {
	First   int
	Seconds []CheckPair

	outlines outlines
}

// CheckPair is what two numbers make, put together or taken away.
type CheckPair struct {
	Second  int
	Results []CheckResult
}

// CheckResult is one calculation of a pair, solved.
type CheckResult struct {
	Equation problem.Equation
	Picture  picture.Picture
	Way      Working
	Sense    []Sense
}

var checkKind = &kind{class: "check", css: []string{"base.css", "work.css", "tiles.css", pictureCSS, "check.css"}}

func pair(first, second int) phrase.Line {
	return phrase.Say("check.pair", phrase.Number("First", first), phrase.Number("Second", second))
}

func firstNumber(n int) phrase.Line {
	return phrase.Say("check.with", phrase.Number("First", n))
}
