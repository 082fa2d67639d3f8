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
		return showsMore(n, c)
	}
	big, small, _ := bySize(c)
	switch n {
	case CountAll, PartnersOfTen: // something to see in both parts
		return leastPart(c) > 1
	case CountOn: // from the bigger one, more than one count
		return small > 1 && big > small
	case CountBack: // more than one count, and fewer than are left
		return small > 1 && c.Value() > small
	case Doubles: // one that is not seen at once, and no tens
		return small > 2 && ones(small) > 0
	case MakeTen: // nearly ten already, and no double near by
		return big > 7 && big-small > 1
	case TenAndMore: // a ten, and ones
		return ones(small) > 0
	case BridgeBack: // the way back is not the longer one
		return c.Value() >= small
	case ThinkAddition: // the way up is not the longer one, and not from a ten
		return c.Value() > 1 && c.Value() <= small && ones(small) > 0
	case FriendlyJump: // no short way up instead
		return c.Op == problem.Plus || 4*c.Value() >= small
	case Expanded: // tens and ones in the answer, too
		return c.Value() > 10 && ones(c.Value()) > 0
	case JumpOnLine: // tens to jump, and ones
		return ones(small) > 0 && ones(big) > 0
	case CountInTens: // more than one ten each
		return leastPart(c) > bundle(c)
	}
	return true
}

// showsMore is for three and four numbers: the ones to join are to be looked for.
func showsMore(n Name, c problem.Calculation) bool {
	switch n {
	case FriendlyPair:
		j, _ := friendly(c)
		return (j.first || j.rearranged) && slices.Min(c.Numbers) > 1
	case TwoParts:
		j, _ := halves(c)
		return j.doubling() == 2 && slices.Min(c.Numbers) > 1
	case Pairs:
		p, _ := paired(c)
		return wholeTens(p[0]+p[1], p[2]+p[3]) == 2
	}
	return true
}

// leastPart is the smaller of the two parts of c's whole.
func leastPart(c problem.Calculation) int {
	if c.Op == problem.Minus {
		return min(c.Numbers[1], c.Value())
	}
	return slices.Min(c.Numbers)
}
