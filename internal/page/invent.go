package page

import (
	"github.com/a-h/templ"

	"homebuild/internal/i18n"
	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// Invent is the page where a child makes up a story: one character or two, a
// setting, numbers, and a blank story to say or write them in.
type Invent struct {
	WeekPage
	Characters *Cards
	Settings   *Cards
	Two        bool             // the story is about two
	Numbers    phrase.Line      // which numbers the story may have
	Strip      []Number         // numbers to choose from, each with its page
	Pairs      []Pair           // or pairs of numbers
	Story      []phrase.Line    // the story with blanks, a sentence each
	Answer     phrase.Line      // the answer frame
	Equation   problem.Equation // one of the form that the story has
}

// Cards are those to pick from.
type Cards struct {
	All []Card

	tiles, starters outlines
}

// Card is a character or a setting to pick.
type Card struct {
	Symbol  string        // its drawing in draw/cards: "character.fox"
	Name    phrase.Line   // under the picture
	Starter phrase.Line   // a whole sentence that starts the story with it
	Ideas   []phrase.Line // what can happen in a setting
}

// Number is a number to tap, which leads to its check page.
type Number struct {
	N    int
	Href string
}

// Pair is two numbers to tap, which lead to what they make.
type Pair struct {
	First, Second int
	Href          string
}

// PickedWho and PickedWith fill a place of a blank story with a line on which the
// character stands who is picked.
func PickedWho(place string) phrase.Value { return phrase.Text(place, who) }

// PickedWith is as PickedWho is, for the second character.
func PickedWith(place string) phrase.Value { return phrase.Text(place, with) }

var inventKind = &kind{class: "own", css: []string{"base.css", "tiles.css", "cards.css", "own.css", picksCSS}}

// frame writes a sentence of the blank story.
func (s *state) frame(l phrase.Line) templ.Component {
	return raw(func(m *markup) {
		for _, r := range s.Language.Say(l) {
			switch {
			case r.Kind == i18n.RunBlank:
				m.blank(s.word("page.blank"))
			case r.Kind == i18n.RunOwnText:
				m.write("<span class=gap>", s.Theme.deck.gaps[r.Text], "<span class=hide>", s.word("page.blank"), "</span></span>")
			default:
				m.run(false, r)
			}
		}
	})
}

// stage is the picture of what is picked.
func (s *state) stage(v *Invent) string {
	if v.Two {
		return s.Theme.deck.stages[1]
	}
	return s.Theme.deck.stages[0]
}

func pairName(p Pair) phrase.Line {
	return phrase.Say("check.pair", phrase.Number("First", p.First), phrase.Number("Second", p.Second))
}
