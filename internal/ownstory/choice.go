package ownstory

import (
	"slices"
	"strconv"

	"homebuild/internal/problem"
)

// Choice is what a story can tell: a problem, and where the text has its numbers.
type Choice struct {
	Problem problem.Problem // its kind, the role of each number, its equation
	Places  []int           // in Text.Numerals, of each quantity in Problem.Given
	// Turned are the same kind with the numbers in other roles: "5 more than Omar's
	// 9" has them the other way round.
	Turned []Choice
}

// ID is the kind's, as it stands in a week file and in ids of messages:
// "add-to-change".
func (c Choice) ID() string { return c.Problem.Kind().String() }

// Number is the kind's number in a week file. It stays, whatever the story's
// numbers are, and in every language.
func (c Choice) Number() int { return int(c.Problem.Kind()) }

// Line is the choice as a week file has it: "add-to-change 8 + ? = 14".
func (c Choice) Line() string { return c.ID() + " " + c.Equation().String() }

// Happens is what happens in the story.
func (c Choice) Happens() Happening { return Happening(c.Problem.Kind().Situation()) }

// Asks says what is asked, for a person who knows what happens: "How many more?"
func (c Choice) Asks() string { return sentences[c.Problem.Kind()] }

// Equation is the story's: "8 + ? = 14".
func (c Choice) Equation() problem.Equation { return c.Problem.Equation() }

// Answer says what the story's answer is: "The answer is 6."
func (c Choice) Answer() string {
	if c.Problem.Pairs() != nil {
		return "Any pair is right."
	}
	return "The answer is " + strconv.Itoa(c.Problem.Answer()) + "."
}

// MostShown is how many choices a person looks through at once. Where more fit,
// she says first what happens: no happening has more.
const MostShown = 8

// Offer is what the numbers of a text can tell.
type Offer struct {
	Choices []Choice // the likely ones first: those that need no number turned round
	Counted []int    // places in Text.Numerals
	LeftOut []int    // those that are taken as not needed
}

// Offer lists each kind of story that fits the numbers that count, as
// [Text.Counted] tells them.
func (t Text) Offer() Offer { return t.OfferOf(t.Counted()) }

// OfferOf lists each kind of story that fits the numbers at some places of the
// text, in the text's order.
func (t Text) OfferOf(counted []int) Offer {
	o := Offer{Counted: counted, LeftOut: t.leftOut(counted)}
	var later []Choice
	for _, kind := range problem.Kinds() {
		c, asTold, ok := t.choiceOf(kind, counted)
		switch {
		case !ok:
		case asTold:
			o.Choices = append(o.Choices, c)
		default:
			later = append(later, c)
		}
	}
	o.Choices = append(o.Choices, later...)
	return o
}

// choiceOf makes a kind's choice of the numbers that count; asTold says that they
// stand in the text as stories of that kind have them.
func (t Text) choiceOf(kind problem.Kind, counted []int) (c Choice, asTold, ok bool) {
	if kind == problem.TogetherBoth {
		counted = t.withoutTwo(counted)
	}
	if len(counted) != given(kind) {
		return Choice{}, false, false
	}
	var fitting []Choice
	seen := map[string]bool{}
	for _, order := range arrangements(counted, given(kind)) {
		p, err := fromGiven(kind, t.values(order)...)
		if err != nil || showable(p) != nil || seen[p.Equation().String()] {
			continue
		}
		seen[p.Equation().String()] = true
		fitting = append(fitting, Choice{Problem: p, Places: order})
	}
	if len(fitting) == 0 {
		return Choice{}, false, false
	}
	c = fitting[0]
	if turns(kind) {
		c.Turned = fitting[1:]
	}
	return c, !turns(kind) || slices.IsSorted(c.Places), true
}

// withoutTwo are the places without that of a two, where it stands beside one other
// number: of what is parted between "two vases", it counts the parts.
func (t Text) withoutTwo(counted []int) []int {
	if len(counted) != 2 {
		return counted
	}
	return slices.DeleteFunc(slices.Clone(counted), func(at int) bool { return !t.Numerals[at].Marked && t.Numerals[at].Value == 2 })
}

// Happenings lists what can happen in a story with these numbers.
func (o Offer) Happenings() []Happening {
	return slices.DeleteFunc(Happenings(), func(h Happening) bool { return len(o.Of(h).Choices) == 0 })
}

// Of is the offer once it is said what happens.
func (o Offer) Of(h Happening) Offer {
	o.Choices = slices.DeleteFunc(slices.Clone(o.Choices), func(c Choice) bool { return c.Happens() != h })
	return o
}
