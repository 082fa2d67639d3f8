package page

import (
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/story"
)

// Key is the teacher's answer key of a week: printed, never published.
type Key struct {
	Layout
	Week    string // its first day: "2026-09-14"
	Target  phrase.Line
	Stories []KeyStory // the worked one first
}

// KeyStory is a story with what a teacher wants to know about it.
type KeyStory struct {
	Story    story.Story
	Words    RungWords   // of the rung; none for the week's own
	Kind     phrase.Line // its cell of the table of situations
	Equation problem.Equation
	Picture  picture.Picture // solved
	Ways     []Working       // by name and chain
	Mistakes []KeyMistake
}

// KeyMistake is a number to listen for, how a child comes to it, and a question
// that helps.
type KeyMistake struct {
	Number int
	Name   phrase.Line
	Ask    phrase.Line
}

// manyKeys is how many stories fit a page of the key in full size.
const manyKeys = 5

// deskKind is that of the pages that lie on the teacher's desk.
var deskKind = &kind{class: "desk", css: []string{"base.css", "work.css", pictureCSS, "desk.css"}}
