package page

import (
	"homebuild/internal/i18n"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/story"
)

// Key is the teacher's answer key of a week: printed, never published.
type Key struct {
	Frame   Frame
	Week    Date
	Target  phrase.Line
	Stories []KeyStory // the worked one first
}

// KeyStory is a story with what a teacher wants to know about it.
type KeyStory struct {
	Story    story.Story
	Kind     phrase.Line // its cell of the table of situations
	Equation problem.Equation
	Picture  picture.Picture // solved
	Ways     []KeyWay
	Mistakes []KeyMistake
}

// KeyWay is a way to work a story out, in one line.
type KeyWay struct {
	Name  phrase.Line
	Chain problem.Equation
}

// KeyMistake is a number to listen for, how a child comes to it, and a question
// that helps.
type KeyMistake struct {
	Number int
	Name   phrase.Line
	Ask    phrase.Line
}

// Slips is a sheet of paper slips to cut, a page for each language.
type Slips struct {
	Frame Frame
	Week  Date
	Link  string // full address of the weekly link
	Pages []SlipPage
}

// SlipPage is a page of slips in one language.
type SlipPage struct{ Language *i18n.Language }

func (v *Key) frame() *Frame   { return &v.Frame }
func (v *Slips) frame() *Frame { return &v.Frame }
func (v *Key) kind() kind      { return kindDesk }
func (v *Slips) kind() kind    { return kindDesk }
