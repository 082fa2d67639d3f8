package page

import (
	"homebuild/internal/i18n"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/story"
)

// Own is the page where a child invents a story: a character, a setting,
// numbers, and a blank frame to say or write it in.
type Own struct {
	Frame      Frame
	Week       Date
	Target     phrase.Line
	Characters []Card
	Settings   []Card
	Story      []phrase.Line // the story with blanks, a sentence each
	Answer     phrase.Line   // the answer frame
	Op         problem.Op    // of the blank equation
	Strip      []Number      // the numbers to choose from; links go to the check pages
	Links      Links
}

// Card is a character or a setting to pick.
type Card struct {
	Symbol  string      // its drawing in internal/cards: "character.fox"
	Name    phrase.Line // under the picture
	Starter phrase.Line // a whole sentence that starts the story with it
}

// Number is a number to tap.
type Number struct {
	N    int
	Href string // empty for a number that is only shown
}

// Print is one sheet of paper, both sides.
type Print struct {
	Frame   Frame
	Week    Date
	Target  phrase.Line
	Words   []phrase.Line
	Class   *i18n.Language
	Worked  story.Story   // front: the story to draw and solve together
	Stories []story.Story // back
	Own     []phrase.Line // back: the blank story
	Answers bool          // answers upside down at the foot; else only on the learn and try pages
	// WeekURL is the full address of the weekly link, for the code to
	// photograph; empty when the site's address is not known.
	WeekURL string
	Links   Links
}

// CheckIndex is where the first of two numbers is picked.
type CheckIndex struct {
	Frame   Frame
	Numbers []Number
}

// Check is every pair with one first number.
type Check struct {
	Frame   Frame
	First   int
	Index   string // link to the CheckIndex
	Seconds []CheckPair
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

// WeekLink is a week with its page.
type WeekLink struct {
	Date   Date
	Target phrase.Line
	Href   string
}

// Home is the first page of a language: this week and earlier ones.
type Home struct {
	Frame Frame
	Weeks []WeekLink // newest first
	// ByTarget are the weeks by what is learned, easiest first; empty where a
	// look at Weeks says as much.
	ByTarget []WeekLink
	Check    string // link to the check pages; empty for none
}

// Weekly is the link a teacher shares: pick your language.
type Weekly struct {
	Frame    Frame // Language is the class's
	Week     Date
	Target   phrase.Line
	Versions []Version // the largest page language first
}

// Front is the first page of the site.
type Front struct {
	Frame Frame // Language is the class's
	Homes []Version
	Weeks []WeekLink // weekly links, newest first
}

// NotFound is shown for an address that does not exist.
type NotFound struct {
	Frame Frame
	Homes []Version
}
