package ownstory

import (
	"fmt"
	"slices"
	"strings"
	"unicode"

	"homebuild/internal/diag"
	"homebuild/internal/problem"
)

// parseLine reads a kind and its equation, with a "?" for each number that is
// asked for. Any equation is taken that the published table writes for the
// problem.
func parseLine(typed string) (problem.Problem, error) {
	word, equation, _ := strings.Cut(strings.TrimSpace(typed), " ")
	kind, ok := problem.ParseKind(strings.TrimSuffix(word, ":"))
	if !ok {
		return problem.Problem{}, unknownKind(word)
	}
	numbers := equationNumbers(equation)
	if len(numbers) >= given(kind) && len(numbers) <= 3 { // no kind writes down more
		for _, order := range arrangements(numbers, given(kind)) {
			if p, err := fromGiven(kind, order...); err == nil && writes(p, equation) {
				return p, nil
			}
		}
	}
	return problem.Problem{}, &Error{fmt.Sprintf("%q does not fit the kind %s", strings.TrimSpace(equation), kind),
		"its equation is written like this: " + sample(kind).Equation().String()}
}

// writes reports whether an equation is one of a problem's, whatever the spaces
// and the signs that a word processor made.
func writes(p problem.Problem, equation string) bool {
	return slices.ContainsFunc(p.Equations(), func(q problem.Equation) bool { return plain(q.String()) == plain(equation) })
}

var plain = strings.NewReplacer("−", "-", "–", "-", "＝", "=", "？", "?", "＋", "+", " ", "").Replace

func unknownKind(word string) error {
	var ids []string
	for _, k := range problem.Kinds() {
		ids = append(ids, k.String())
	}
	hint := `a reading is a kind and its equation, such as add-to-result 8 + 6 = ?; "homebuild help own-stories" lists the kinds`
	if near := diag.Nearest(word, ids); near != "" {
		hint = fmt.Sprintf("did you mean %q?", near)
	}
	return &Error{fmt.Sprintf("%q is not a kind of story", word), hint}
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
