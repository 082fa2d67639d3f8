package ownstory

import (
	"fmt"
	"slices"
	"strconv"

	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// Choice is what a story can tell: a problem, and where the text has its numbers.
type Choice struct {
	Problem problem.Problem // its kind, the role of each number, its equation
	Places  []int           // in Text.Numerals, of each quantity in Problem.Given
}

// Line is the choice as a teacher keeps it in a week file: "add-to-change 8 + ? =
// 14".
func (c Choice) Line() string { return c.Problem.Kind().String() + " " + c.Problem.Equation().String() }

// Answer says what the story's answer is: "the answer is 6".
func (c Choice) Answer() string {
	if c.Problem.Pairs() != nil {
		return "any pair is right"
	}
	return "the answer is " + strconv.Itoa(c.Problem.Answer())
}

// Offer is what the numbers of a text can tell.
type Offer struct {
	Choices []Choice // in the table's order; each tells all that is counted
	Counted []int    // places in Text.Numerals
	LeftOut []int    // those that are taken as not needed
}

// Offer lists each kind of story that fits the numbers that count. Where a kind
// takes them in more than one order, it is that of the text.
func (t Text) Offer() Offer {
	var o Offer
	o.Counted, o.LeftOut = t.counted()
	for _, kind := range problem.Kinds() {
		if len(o.Counted) != given(kind) {
			continue
		}
		for _, order := range arrangements(o.Counted, given(kind)) {
			if p, err := fromGiven(kind, t.values(order)...); err == nil && showable(p) == nil {
				o.Choices = append(o.Choices, Choice{p, order})
				break
			}
		}
	}
	return o
}

// rank is how sure it is that a number counts.
type rank uint8

const (
	unsure rank = iota // a word for one, as many languages say "a" by it; more than pages show
	inWords
	inDigits
	marked
)

func (n Numeral) rank() rank {
	switch {
	case n.Marked:
		return marked
	case n.Value > problem.Largest || n.Word && n.Value == 1:
		return unsure
	case n.Word:
		return inWords
	}
	return inDigits
}

// counted parts the numbers that count from those that are left out. The marked
// ones count; where none is marked, those in digits; where fewer than two are in
// digits, words help out. A word for one is in neither list.
func (t Text) counted() (counted, leftOut []int) {
	var of [marked + 1]int // how many there are of each rank
	for _, n := range t.Numerals {
		of[n.rank()]++
	}
	least := inWords
	switch {
	case of[marked] > 0:
		least = marked
	case of[inDigits] > 1:
		least = inDigits
	}
	for i, n := range t.Numerals {
		if n.rank() >= least {
			counted = append(counted, i)
		} else if !n.Word || n.Value != 1 {
			leftOut = append(leftOut, i)
		}
	}
	return counted, leftOut
}

// arrangements are all ways to take so many of the items, in every order; the
// order given comes first.
func arrangements(items []int, size int) [][]int {
	if size == 0 {
		return [][]int{nil}
	}
	var out [][]int
	for i, first := range items {
		rest := slices.Delete(slices.Clone(items), i, i+1)
		for _, tail := range arrangements(rest, size-1) {
			out = append(out, append([]int{first}, tail...))
		}
	}
	return out
}

// showable says why a problem cannot be shown on a page; nil when it can.
func showable(p problem.Problem) error {
	for _, q := range p.Quantities() {
		switch {
		case q.Value > problem.Largest:
			return &Error{fmt.Sprintf("%d is larger than %d", q.Value, problem.Largest), "pages show numbers up to that one"}
		case q.Role == problem.RoleDifference && q.Value == 0:
			return &Error{"both amounts are the same, so there is no difference to ask for", "change one of the numbers"}
		}
	}
	if _, ok := picture.AllPairs(p); p.Pairs() != nil && !ok {
		return &Error{fmt.Sprintf("%d can be parted in too many ways to list them", p.Calculation().Value()),
			fmt.Sprintf("take a number up to %d", picture.Most)}
	}
	return nil
}
