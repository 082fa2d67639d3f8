package page

import (
	"homebuild/internal/phrase"
)

// Invent is the page where a child makes up a story: a character, a setting,
// numbers, and a blank story to say or write them in.
type Invent struct {
	WeekPage
	Characters []Card
	Settings   []Card
	Story      []phrase.Line // the story with blanks, a sentence each
	Answer     phrase.Line   // the answer frame
	Strip      []Number      // the numbers to choose from; links go to the check pages
}

// Card is a character or a setting to pick.
type Card struct {
	Symbol  string      // its drawing in draw/cards: "character.fox"
	Name    phrase.Line // under the picture
	Starter phrase.Line // a whole sentence that starts the story with it
	Ideas   []Idea      // what can happen in a setting
}

// Idea is something that can happen in a setting, and to whom.
type Idea struct {
	Say  phrase.Line
	Cast []string // "character.fox"
}

// Number is a number to tap, which leads to its check page.
type Number struct {
	N    int
	Href string
}

var inventKind = &kind{class: "own", css: []string{"base.css", "tiles.css", "cards.css", "own.css"}}
