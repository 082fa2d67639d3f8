package ownstory

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/problem"
)

// Wish is what a teacher says of her story in a week file. A kind alone is enough,
// and so is the kind's number, or an equation that one kind alone writes. The
// zero Wish says nothing yet.
type Wish struct {
	Happens  string // "compared"
	Kind     string // "compare-difference-more"; its equation may follow
	Number   int    // of a kind; see [Choice.Number]
	Equation string // "58 - 36 = ?"
}

// Choose holds what the teacher said against her text. While more than one kind of
// story is left, the error lists them with the lines to write; it is an *Error and
// names the setting that it is about.
func (t Text) Choose(w Wish) (Choice, error) {
	if kind, equation, both := strings.Cut(w.Kind, " "); both && w.Equation == "" {
		w.Kind, w.Equation = kind, equation
	}
	kinds, err := w.kinds()
	if err != nil {
		return Choice{}, err
	}
	c, err := t.chooseAmong(kinds, w)
	if err != nil {
		return Choice{}, err
	}
	for i, n := range t.Numerals {
		if n.Marked && !slices.Contains(c.Places, i) {
			return Choice{}, &Error{
				Setting: w.setting(), Text: fmt.Sprintf("%q is marked as a number that counts, and this kind of story does not have it", t.Plain[n.Start:n.End]),
				Hint: "take the mark away, or choose another kind",
			}
		}
	}
	return c, nil
}

func (t Text) chooseAmong(kinds []problem.Kind, w Wish) (Choice, error) {
	if w.Equation != "" {
		return t.chooseEquation(kinds, w)
	}
	offer := t.Offer()
	offer.Choices = slices.DeleteFunc(offer.Choices, func(c Choice) bool { return !slices.Contains(kinds, c.Problem.Kind()) })
	switch {
	case w.Kind == "" && w.Number == 0 && (w.Happens == "" || len(offer.Choices) > 0):
		return Choice{}, t.ask(offer)
	case len(offer.Choices) == 0:
		return Choice{}, t.unfit(kinds, offer, w)
	}
	return offer.Choices[0], nil
}

// kinds are those that a wish leaves.
func (w Wish) kinds() ([]problem.Kind, error) {
	kinds := problem.Kinds()
	if w.Happens != "" {
		h, ok := ParseHappening(w.Happens)
		if !ok {
			return nil, unknown("happens", w.Happens, "is not what can happen in a story", Happenings())
		}
		kinds = slices.DeleteFunc(kinds, func(k problem.Kind) bool { return Happening(k.Situation()) != h })
	}
	if w.Kind != "" {
		k, ok := problem.ParseKind(w.Kind)
		if !ok {
			return nil, unknown("kind", w.Kind, "is not a kind of story", problem.Kinds())
		}
		if !slices.Contains(kinds, k) {
			return nil, &Error{Setting: "kind", Text: fmt.Sprintf("%s is a story in which %q", k, Happening(k.Situation())), Hint: "take the line with happens away, or choose another kind"}
		}
		kinds = []problem.Kind{k}
	}
	if w.Number != 0 {
		all := problem.Kinds()
		if w.Number < 0 || w.Number > len(all) {
			return nil, &Error{Setting: "choice", Text: fmt.Sprintf("there is no choice %d", w.Number), Hint: "take the line away, and you are shown what the story can tell"}
		}
		k := all[w.Number-1]
		if !slices.Contains(kinds, k) {
			return nil, &Error{Setting: "choice", Text: fmt.Sprintf("choice %d is %s, and another line says otherwise", w.Number, k), Hint: "keep one of the two lines"}
		}
		kinds = []problem.Kind{k}
	}
	return kinds, nil
}

// setting is the line that a problem with the numbers is told at.
func (w Wish) setting() string {
	switch {
	case w.Equation != "":
		return "equation"
	case w.Kind != "":
		return "kind"
	case w.Number != 0:
		return "choice"
	}
	return "happens"
}

// unknown says that a word is none of those there are.
func unknown[T fmt.Stringer](setting, typed, what string, known []T) error {
	var ids []string
	for _, k := range known {
		ids = append(ids, k.String())
	}
	hint := "write one of " + strings.Join(ids, ", ")
	if len(ids) > MostShown {
		hint = `take the line away, and you are shown what the story can tell; "homebuild help own-stories" lists the kinds`
	}
	return &Error{Setting: setting, Text: fmt.Sprintf("%q %s", typed, what), Hint: diag.Suggest(typed, ids, hint)}
}
