package ownstory

import (
	"fmt"
	"slices"
	"strings"
	"unicode"

	"homebuild/internal/pattern"
	"homebuild/internal/problem"
)

// chooseEquation finds the one kind that writes an equation. Any form is taken that
// the published table writes for the problem.
func (t Text) chooseEquation(kinds []problem.Kind, w Wish) (Choice, error) {
	var writing []problem.Problem
	for _, kind := range kinds {
		if p, ok := parseEquation(kind, w.Equation); ok {
			writing = append(writing, p)
		}
	}
	if len(writing) == 0 {
		return Choice{}, noneWrites(kinds, w)
	}
	var fitting []Choice
	var wrong error
	for _, p := range writing {
		c, err := t.hold(p)
		if err != nil {
			wrong = err
			continue
		}
		fitting = append(fitting, c)
	}
	switch len(fitting) {
	case 0:
		return Choice{}, wrong
	case 1:
		return fitting[0], nil
	}
	return Choice{}, &Error{
		Setting: "equation", Text: fmt.Sprintf("%d kinds of story write %q", len(fitting), w.Equation),
		Hint: "write below it the one line that your story tells" + kindLines(fitting),
	}
}

// hold finds the numbers of a problem in the text.
func (t Text) hold(p problem.Problem) (Choice, error) {
	if err := showable(p); err != nil {
		return Choice{}, err
	}
	var values []int
	for _, q := range p.Given() {
		values = append(values, q.Value)
	}
	places, missing := t.find(values)
	if len(missing) > 0 {
		return Choice{}, &Error{
			Setting: "equation", Text: "the story does not tell what the equation needs: " + list(missing),
			Hint: "take the line away, and you are shown what the story can tell",
		}
	}
	return Choice{Problem: p, Places: places}, nil
}

// parseEquation reads the equation of a kind, with a "?" for each number that is
// asked for.
func parseEquation(kind problem.Kind, equation string) (problem.Problem, bool) {
	numbers := equationNumbers(equation)
	if len(numbers) < given(kind) || len(numbers) > 4 { // no kind writes down more
		return problem.Problem{}, false
	}
	for _, order := range arrangements(numbers, given(kind)) {
		if p, err := fromGiven(kind, order...); err == nil && writes(p, equation) {
			return p, true
		}
	}
	return problem.Problem{}, false
}

// writes reports whether an equation is one of a problem's, whatever the spaces,
// the digits' script, and the signs that a word processor made.
func writes(p problem.Problem, equation string) bool {
	return slices.ContainsFunc(p.Equations(), func(q problem.Equation) bool { return plain(q.String()) == plain(equation) })
}

var blanks = pattern.Of(`_+`)

var plainSigns = strings.NewReplacer("−", "-", "–", "-", "＝", "=", "？", "?", "؟", "?", "＋", "+", " ", "")

func plain(equation string) string {
	return strings.Map(func(c rune) rune {
		if unicode.IsDigit(c) {
			return '0' + rune(digit(c))
		}
		return c
	}, plainSigns.Replace(blanks().ReplaceAllString(equation, "?")))
}

// equationNumbers are the numbers that an equation writes down.
func equationNumbers(equation string) []int {
	var out []int
	for _, digits := range strings.FieldsFunc(equation, func(c rune) bool { return !unicode.IsDigit(c) }) {
		if n, ok := number(digits); ok {
			out = append(out, n)
		}
	}
	return out
}

// noneWrites says that an equation is none of the kinds'.
func noneWrites(kinds []problem.Kind, w Wish) error {
	hint := "write it as the story tells it, with ? for the number that is asked, as in 8 + ? = 14"
	if len(kinds) == 1 {
		hint = "its equation is written like this: " + sample(kinds[0]).Equation().String()
	}
	what := "no kind of story"
	switch {
	case len(kinds) == 1:
		what = "no story of the kind " + kinds[0].String()
	case w.Happens != "":
		what = fmt.Sprintf("no story in which %q", w.Happens)
	}
	return &Error{Setting: "equation", Text: fmt.Sprintf("%s writes %q", what, w.Equation), Hint: hint}
}
