package strategy

import "homebuild/internal/problem"

// Suits reports whether c shows what n is good for: n fits, and a child would
// not see a plainer way at once. It is for choosing numbers; whether a way may
// be used at all is for Fits. Take 40 and go up 1 may be used for 49 - 39, but
// nobody would: the tens and the ones are there to be taken.
//
// What is plainer (common practice, no published source): one to three counts,
// a double, a ten or hundred that is there already, places that need no trade.
func Suits(n Name, c problem.Calculation) bool {
	if !Fits(n, c) {
		return false
	}
	if len(c.Numbers) != 2 {
		return true
	}
	big, small, _ := bySize(c)
	switch n {
	case CountOn, CountBack, ThinkAddition:
		return !wholeAndMore(c)
	case NearDoubles:
		return small > 2
	case MakeTen:
		return small > 2 && big != small
	case BridgeBack:
		return small > mostCounted && c.Value() > mostCounted
	case JumpToTen, FriendlyJump, GiveAndTake:
		return small > mostCounted && trades(c)
	case JumpUp:
		return c.Value() <= small && trades(c)
	case SplitTens, Expanded:
		return small > 10 && ones(small) > 0 && ones(big) > 0
	case JumpOnLine:
		return !wholeAndMore(c)
	}
	return true
}

// trades reports whether the places of c cannot be worked each for itself: a
// ten or a hundred is made or opened.
func trades(c problem.Calculation) bool {
	a, b := problem.PlacesOf(c.Numbers[0]), problem.PlacesOf(c.Numbers[1])
	if c.Op == problem.Minus {
		return !a.Covers(b)
	}
	sum := a.Plus(b)
	return sum[problem.OnesPlace] >= 10 || sum[problem.TensPlace] >= 100
}
