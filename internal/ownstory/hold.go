package ownstory

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/problem"
)

// Choose holds the line that a teacher chose against her text: all its numbers
// stand there, and it needs all that are marked. The error is an *Error.
func (t Text) Choose(line string) (Choice, error) {
	p, err := parseLine(line)
	if err != nil {
		return Choice{}, err
	}
	if err := showable(p); err != nil {
		return Choice{}, err
	}
	var values []int
	for _, q := range p.Given() {
		values = append(values, q.Value)
	}
	places, missing := t.find(values)
	if len(missing) > 0 {
		return Choice{}, &Error{"the story does not tell what the reading needs: " + list(missing),
			"take this line away, and you are shown what the story can tell"}
	}
	for i, n := range t.Numerals {
		if n.Marked && !slices.Contains(places, i) {
			return Choice{}, &Error{fmt.Sprintf("%q is marked as a number that counts, and the reading does not have it", t.Plain[n.Start:n.End]),
				"take the mark away, or choose another reading"}
		}
	}
	return Choice{p, places}, nil
}

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
// are part of the story; other words for numbers are words.
func (t Text) Unneeded(c Choice) []int {
	var out []int
	for i, n := range t.Numerals {
		if !n.Word && !slices.Contains(c.Places, i) {
			out = append(out, i)
		}
	}
	return out
}

// Match finds the numbers at some places of a text in its translation, which has
// to tell these and no others in digits. The error is an *Error.
func (t Text) Match(places []int, translation Text) ([]int, error) {
	const hint = "tell the same numbers as the story; for a word that says one, write [a dozen = 12]"
	same, missing := translation.find(t.values(places))
	if len(missing) > 0 {
		return nil, &Error{"the translation does not tell " + list(missing), hint}
	}
	for i, n := range translation.Numerals {
		if (!n.Word || n.Marked) && !slices.Contains(same, i) {
			return nil, &Error{fmt.Sprintf("the translation tells %d, and the story does not", n.Value), hint}
		}
	}
	return same, nil
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
	return nil, &Error{"the answer sentence does not fit the reading: " + Choice{Problem: p}.Answer(),
		"look at the reading and the sentence once more; one of them is another story's"}
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
