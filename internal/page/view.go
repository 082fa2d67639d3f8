package page

import (
	"homebuild/internal/i18n"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/story"
)

// View is a page as data, ready for Render.
type View interface {
	frame() *Frame
	kind() kind
}

// Frame is what every page has around its own content.
type Frame struct {
	Language *i18n.Language
	Theme    *Theme
	School   string    // the school's or class's name, in the teacher's words
	Path     string    // of this page in the site: "es/2026-09-14.html"
	Address  string    // where the site lives, ending in "/"; empty when not known
	Home     string    // link to the home of the language; empty on that page
	Feed     string    // link to the language's feed; empty for none
	Versions []Version // this page in every language, itself included, in the site's order
	Default  string    // link to the page where a language is picked; empty for none
	Indexed  bool      // search engines are welcome
}

// Version is a page in one of the site's languages.
type Version struct {
	Language *i18n.Language
	Href     string
	Class    bool // the language the class is taught in
}

// Date is a day; the week pages carry their Monday.
type Date struct{ Year, Month, Day int }

// Links leads to the other pages of the week. Empty ones are left out.
type Links struct{ Learn, Try, Own, Check, Print string }

// Learn is the week's main page: what the class learns, and one story worked
// in a short walk, step by step.
type Learn struct {
	Frame   Frame
	Week    Date
	Target  phrase.Line   // "I can ..."
	About   []phrase.Line // what the week is about, one or two sentences
	Minutes int           // how long it takes; 0 to say nothing
	// Class is the language of the class: its words stand beside the
	// family's, unless it is the page's own language.
	Class  *i18n.Language
	Words  []phrase.Line // the week's words (strategy, picture), said in both languages
	WarmUp *WarmUp       // nil for none
	Note   *Note         // nil for none
	Worked Worked
	Links  Links
}

// WarmUp is a minute of moving before sitting down. The usual caution is
// added by the page.
type WarmUp struct {
	Symbol string // its drawings in internal/cards: "warm-up.reach"
	Name   phrase.Line
	Steps  []phrase.Line
	Seated phrase.Line // the same for someone who sits
}

// Note is the teacher's own text to families, in Markdown.
type Note struct {
	Markdown    string
	Tag         string // its language
	RightToLeft bool
}

// Worked is a story with everything the walk shows.
type Worked struct {
	Story story.Story
	// Imagine is what to see before drawing; empty lines give the page's own.
	Imagine []phrase.Line
	// Growing is the picture as the story goes on: first part, second part,
	// then the "?".
	Growing []Panel
	// Equations are the story's own with "?", and the one that finds the
	// answer where that is another.
	Equations []problem.Equation
	First     *Working // the first step of a two-step story; nil for one step
	Way       Working
	Another   *Working // another way; nil for none
	Solved    picture.Picture
	Sense     []Sense // estimate first, then part and whole, then going back
}

// Panel is a picture with what to do or see in it.
type Panel struct {
	Picture picture.Picture
	Caption []phrase.Line // the sentences that made it grow; empty for none
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
	Picture  picture.Picture  // nil for none
}

// Try is the page of stories to try at home, with help for any answer.
type Try struct {
	Frame   Frame
	Week    Date
	Target  phrase.Line
	First   int // number of the first story; a long week has more than one page
	Stories []TryStory
	Next    string // link to the page with the stories after these; empty for none
	Links   Links
}

// TryStory is a story with its number choices and a reply to each.
type TryStory struct {
	Story   story.Story
	Choices []Choice
	Replies []Reply
	// Equations, Solved, Way and Sense are "the whole way".
	Equations []problem.Equation
	Solved    picture.Picture
	First     *Working // the first step of a two-step story; nil for one step
	Way       Working
	Sense     []Sense
}

// Choice is something to tap as an answer: a number, a pair, or words such as
// "another number".
type Choice struct {
	Number int
	Pair   problem.Equation // shown instead of Number when not zero: 3 + 5
	Other  phrase.Line      // shown instead of Number when not zero
	Reply  int              // place in Replies
}

// Reply answers one choice or several that share it.
type Reply struct {
	Right   bool
	Lines   []phrase.Line   // kind and short; the page opens the right one with a calm word
	Picture picture.Picture // nil for none
}
