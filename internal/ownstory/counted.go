package ownstory

import (
	"slices"

	"homebuild/internal/problem"
)

// rank is how sure it is that a number counts.
type rank uint8

const (
	never  rank = iota // it is part of a name, as the teacher said
	unsure             // a word for one, as many languages say "a" by it; more than pages show
	inName             // it stands behind a name: "Room 4"
	inWords
	inDigits
	said   // a mark says which number it is, and leaves open whether it counts
	marked // a mark says that it counts
)

func (n Numeral) rank() rank {
	switch {
	case n.Name:
		return never
	case n.Marked:
		return marked
	case n.said:
		return said
	case n.Value > problem.Largest || n.Word && n.Value == 1:
		return unsure
	case n.behindName:
		return inName
	case n.Word:
		return inWords
	}
	return inDigits
}

// Counted are the places of the numbers that count. The marked ones count, and
// those that a mark says; where none is marked, those in digits; where fewer than two are in digits, words help
// out, and where there still are fewer than two, what stands behind a name.
func (t Text) Counted() []int {
	var of [marked + 1]int // how many there are of each rank
	for _, n := range t.Numerals {
		of[n.rank()]++
	}
	least := inName
	switch {
	case of[marked] > 0:
		least = said
	case of[inDigits]+of[said] > 1:
		least = inDigits
	case of[inDigits]+of[said]+of[inWords] > 1:
		least = inWords
	}
	var counted []int
	for i, n := range t.Numerals {
		if n.rank() >= least {
			counted = append(counted, i)
		}
	}
	return counted
}

// leftOut are the other numbers. A word for one is none of them.
func (t Text) leftOut(counted []int) []int {
	var out []int
	for i, n := range t.Numerals {
		if !slices.Contains(counted, i) && !(n.Word && n.Value == 1) {
			out = append(out, i)
		}
	}
	return out
}
