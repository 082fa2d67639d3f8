package strategy

import (
	"slices"

	"homebuild/internal/problem"
)

// Shows reports whether c is an example to explain n by: n suits it, and a child sees
// in it why n helps. A way that a single count replaces, or that goes the longer way
// round, may suit and explains nothing. It is stricter than [Suits] for the ways whose
// plain cases hide what they are for (common practice, no published source).
func Shows(n Name, c problem.Calculation) bool {
	if !Suits(n, c) {
		return false
	}
	if len(c.Numbers) != 2 {
		explains, strict := explainsMore[n]
		return !strict || explains(c)
	}
	explains, strict := explainsTwo[n]
	if !strict {
		return true
	}
	big, small, _ := bySize(c)
	return explains(two{c, big, small, c.Value()})
}

// two is a calculation with two numbers.
type two struct {
	problem.Calculation
	big, small, answer int
}

// explainsTwo has the ways for which an example with two numbers takes more than to
// suit.
var explainsTwo = map[Name]func(two) bool{
	// Something to see in both parts.
	CountAll:      func(c two) bool { return leastPart(c.Calculation) > 1 },
	PartnersOfTen: func(c two) bool { return leastPart(c.Calculation) > 1 },
	// From the bigger one, more than one count.
	CountOn: func(c two) bool { return c.small > 1 && c.big > c.small },
	// More than one count, and fewer than are left.
	CountBack: func(c two) bool { return c.small > 1 && c.answer > c.small },
	// One that is not seen at once, and no tens.
	Doubles: func(c two) bool { return c.small > 2 && ones(c.small) > 0 },
	// Nearly ten already, and no double near by.
	MakeTen: func(c two) bool { return c.big > 7 && c.big-c.small > 1 },
	// A ten, and ones.
	TenAndMore: func(c two) bool { return ones(c.small) > 0 },
	// The way back is not the longer one.
	BridgeBack: func(c two) bool { return c.answer >= c.small },
	// The way up is not the longer one, and not from a ten.
	ThinkAddition: func(c two) bool { return c.answer > 1 && c.answer <= c.small && ones(c.small) > 0 },
	// No short way up instead.
	FriendlyJump: func(c two) bool { return c.Op == problem.Plus || 4*c.answer >= c.small },
	// Tens and ones in the answer, too.
	Expanded: func(c two) bool { return c.answer > 10 && ones(c.answer) > 0 },
	// Tens to jump, and ones.
	JumpOnLine: func(c two) bool { return ones(c.small) > 0 && ones(c.big) > 0 },
	// More than one ten each.
	CountInTens: func(c two) bool { return leastPart(c.Calculation) > bundle(c.Calculation) },
}

// explainsMore has those for three and four numbers: the ones to join are to be looked
// for.
var explainsMore = map[Name]func(problem.Calculation) bool{
	FriendlyPair: func(c problem.Calculation) bool {
		j, _ := friendly(c)
		return (j.first || j.rearranged) && slices.Min(c.Numbers) > 1
	},
	TwoParts: func(c problem.Calculation) bool {
		j, _ := halves(c)
		return j.doubling() == 2 && slices.Min(c.Numbers) > 1
	},
	Pairs: func(c problem.Calculation) bool {
		p, _ := paired(c)
		return wholeTens(p[0]+p[1], p[2]+p[3]) == 2
	},
}

// leastPart is the smaller of the two parts of c's whole.
func leastPart(c problem.Calculation) int {
	if c.Op == problem.Minus {
		return min(c.Numbers[1], c.Value())
	}
	return slices.Min(c.Numbers)
}
