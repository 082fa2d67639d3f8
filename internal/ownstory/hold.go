package ownstory

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/problem"
)

// find tells where values stand in a text, each in a place of its own: a marked
// number serves before one in digits, and that before a word. Missing are the
// values that do not stand there.
func (t Text) find(values []int) (places, missing []int) {
	for _, value := range values {
		at := -1
		for i, n := range t.Numerals {
			if n.Value == value && !slices.Contains(places, i) && (at < 0 || n.rank() > t.Numerals[at].rank()) {
				at = i
			}
		}
		if at < 0 {
			missing = append(missing, value)
			continue
		}
		places = append(places, at)
	}
	return places, missing
}

// Unneeded are the places of the numbers in digits that a choice leaves out. They
// are part of the story; other words for numbers are words, and names are names.
func (t Text) Unneeded(c Choice) []int {
	var out []int
	for i, n := range t.Numerals {
		if !n.Word && !n.Name && !n.behindName && !slices.Contains(c.Places, i) {
			out = append(out, i)
		}
	}
	return out
}

// Match finds the numbers at some places of a text in its translation, which has
// to tell these and no others in digits but those of names. The error is an *Error.
func (t Text) Match(places []int, translation Text) ([]int, error) {
	const hint = "tell the same numbers as the story; for a word that says one, write [a dozen = 12], and for a name [Room 4 =]"
	same, missing := translation.find(t.values(places))
	if len(missing) > 0 {
		return nil, &Error{Text: "the translation does not tell " + list(missing), Hint: hint, Code: diag.Untold, Value: list(missing)}
	}
	for i, n := range translation.Numerals {
		if (!n.Word || n.Marked) && !n.Name && !t.names(n.Value) && !slices.Contains(same, i) {
			return nil, &Error{Text: fmt.Sprintf("the translation tells %d, and the story does not", n.Value), Hint: hint, Code: diag.Overtold, Value: fmt.Sprint(n.Value)}
		}
	}
	return same, nil
}

// names reports whether a number is part of a name in the text.
func (t Text) names(value int) bool {
	return slices.ContainsFunc(t.Numerals, func(n Numeral) bool { return (n.Name || n.behindName) && n.Value == value })
}

// Answers finds the answer to a problem in the teacher's sentence: the right
// number, or a right pair and nothing else. The error is an *Error.
func (t Text) Answers(p problem.Problem) ([]int, error) {
	if p.Pairs() == nil {
		if places, _ := t.find([]int{p.Answer()}); len(places) > 0 {
			return places, nil
		}
	} else if n := t.Numerals; len(n) == 2 && n[0].Value+n[1].Value == p.Calculation().Value() {
		return []int{0, 1}, nil
	}
	return nil, &Error{
		Text: "the answer sentence does not fit what the story asks: " + lowerFirst(Choice{Problem: p}.Answer()),
		Hint: "write that answer into the sentence, or take the line away; where the answer is not your story's, choose another kind",
		Code: diag.Answer, Value: fmt.Sprint(p.Answer()),
	}
}

// values are the numbers at some places of a text.
func (t Text) values(places []int) []int {
	out := make([]int, len(places))
	for i, at := range places {
		out[i] = t.Numerals[at].Value
	}
	return out
}

// list writes numbers one after the other: "8, 6, 14".
func list(numbers []int) string {
	return strings.Trim(strings.ReplaceAll(fmt.Sprint(numbers), " ", ", "), "[]")
}
