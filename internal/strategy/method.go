package strategy

import "homebuild/internal/problem"

// method is all that the package knows about a strategy; each has its own
// file. fits is asked only about calculations that are sound, work only about
// those that fit.
type method struct {
	id    string
	grade problem.Grade // the first that learns it
	fits  func(problem.Calculation) bool
	work  func(problem.Calculation, *working)
	// variant is the id under which the name and the hint of the way for a
	// calculation are said, where that is not id; nil for none.
	variant func(problem.Calculation) string
}

// said is the id under which the name and the hint of the way for c are said.
func (m *method) said(c problem.Calculation) string {
	if m.variant != nil {
		return m.variant(c)
	}
	return m.id
}

// withHundreds names a way by one id for numbers with hundreds, and by another
// for all others.
func withHundreds(hundreds, others string) func(problem.Calculation) string {
	return func(c problem.Calculation) string {
		if c.Largest() > 100 {
			return hundreds
		}
		return others
	}
}

var methods = [lastName + 1]*method{
	CountOn:       &countOn,
	Doubles:       &doubles,
	NearDoubles:   &nearDoubles,
	MakeTen:       &makeTen,
	TenAndMore:    &tenAndMore,
	FriendlyPair:  &friendlyPair,
	CountBack:     &countBack,
	BridgeBack:    &bridgeBack,
	ThinkAddition: &thinkAddition,
	FriendlyJump:  &friendlyJump,
	SplitTens:     &splitTens,
	JumpOnLine:    &jumpOnLine,
	JumpToTen:     &jumpToTen,
	JumpUp:        &jumpUp,
	GiveAndTake:   &giveAndTake,
	Expanded:      &expanded,
	TwoParts:      &twoParts,
	CountAll:      &countAll,
	PartnersOfTen: &partnersOfTen,
	CountInTens:   &countInTens,
	Pairs:         &pairs,
}

// forSum asks about the two numbers of a sum; nothing else fits.
func forSum(fits func(big, small int) bool) func(problem.Calculation) bool {
	return func(c problem.Calculation) bool {
		if !isSum(c) {
			return false
		}
		big, small, _ := bySize(c)
		return fits(big, small)
	}
}

// forDifference asks about a difference of two numbers; nothing else fits.
func forDifference(fits func(whole, taken int) bool) func(problem.Calculation) bool {
	return func(c problem.Calculation) bool {
		return isDifference(c) && fits(c.Numbers[0], c.Numbers[1])
	}
}

// isSum and isDifference pick the calculations of two numbers.
func isSum(c problem.Calculation) bool { return c.Op == problem.Plus && len(c.Numbers) == 2 }

func isDifference(c problem.Calculation) bool { return c.Op == problem.Minus && len(c.Numbers) == 2 }

// bySize gives the two numbers of c, the bigger first; turned reports that
// the second was the bigger one.
func bySize(c problem.Calculation) (big, small int, turned bool) {
	a, b := c.Numbers[0], c.Numbers[1]
	return max(a, b), min(a, b), b > a
}

func ones(n int) int { return n % 10 }

// nextTen is the first whole ten from n on: 58 gives 60, 60 gives 60.
func nextTen(n int) int { return (n + 9) / 10 * 10 }

// round reports whether n is a number of ones, tens or hundreds alone: it has
// one digit that is not zero.
func round(n int) bool {
	if n == 0 {
		return false
	}
	for n%10 == 0 {
		n /= 10
	}
	return n < 10
}

// near reports whether n is a little below a number that is easy to jump by: one
// or two below a ten (9, 38, 109), or up to five below a hundred (95, 198, 296).
func near(n int) bool {
	return ones(n) >= 8 || nextTen(n)%100 == 0 && nextTen(n) > n && nextTen(n)-n <= 5
}

// oneNear finds the number of a sum to make friendly, the nearer one where
// both are near. Its friendly number is round: to add 250 is not easier than 248.
func oneNear(c problem.Calculation) (stay, jump int, ok bool) {
	a, b := c.Numbers[0], c.Numbers[1]
	near := func(n int) bool { return near(n) && round(nextTen(n)) }
	switch {
	case near(b) && (!near(a) || nextTen(b)-b <= nextTen(a)-a) && a > 10:
		return a, b, true
	case near(a):
		return b, a, true
	}
	return a, b, near(b)
}

// passes reports whether a ten or a hundred is passed: the ones or the tens of a
// sum come to more than ten, or those of the whole are too few to take from.
func passes(c problem.Calculation) bool {
	if c.Op == problem.Minus {
		return isDifference(c) && !problem.PlacesOf(c.Numbers[0]).Covers(problem.PlacesOf(c.Numbers[1]))
	}
	for place, unit := range []int{10, 100} {
		if problem.Sum(parts(c, place)...).Value() > unit {
			return true
		}
	}
	return false
}
