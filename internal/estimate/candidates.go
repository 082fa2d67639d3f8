package estimate

import (
	"slices"

	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// How near an answer must be to pass.
//
//   - Numbers to 20: 2. Common practice, no published source.
//   - Every number brought to its nearest ten: 10, to its nearest hundred: 100. No
//     sum or difference of two numbers is farther off (computed: -8 to +10 and -9
//     to +9, ten times as much and one more for hundreds); of three a few are.
//   - One number brought to its nearest ten: 5, to its nearest hundred: 50
//     (computed: -4 to +5, and -49 to +50).
//
// The estimate itself is nearer than that, so that it teaches a feeling for the
// size: to 100 it is at most 5 and a quarter of the answer off; beyond at most half of
// what may pass, and a tenth of the answer. Common practice, no published source.
const (
	within20 = 2
	tens     = 10
	oneTen   = 5
	hundreds = 100
	oneOfHun = 50
)

// candidates lists the friendly numbers to try, the simplest first. Within ten
// there are none.
func candidates(c problem.Calculation) []candidate {
	switch largest := c.Largest(); {
	case largest <= 10:
		return nil
	case largest <= 20:
		list := append(one(c, OneTen, NearestTen, within20), double(c)...)
		return append(append(list, each(c, Fives, NearestFive, within20)), group(c)...)
	case slices.Max(c.Numbers) <= 100:
		return toTens(c)
	}
	list := one(c, OneHundred, NearestHundred, oneOfHun)
	if slices.Min(c.Numbers) >= 100 {
		list = append([]candidate{each(c, Hundreds, NearestHundred, hundreds)}, list...)
	}
	return append(list, toTens(c)...)
}

// toTens brings every number to a ten where each has tens, or one of them.
func toTens(c problem.Calculation) []candidate {
	list := one(c, OneTen, NearestTen, oneTen)
	if slices.Min(c.Numbers) >= 10 {
		list = append([]candidate{each(c, Tens, NearestTen, tens)}, list...)
	}
	return list
}

// easy reports whether the calculation needs no friendly numbers: it is said or
// counted at once, one of its numbers is round, or no ten is passed and the numbers
// are small.
func easy(c problem.Calculation) bool {
	for _, n := range []strategy.Name{strategy.Doubles, strategy.PartnersOfTen, strategy.CountOn, strategy.CountBack, strategy.TenAndMore, strategy.CountInTens} {
		if strategy.Fits(n, c) {
			return true
		}
	}
	if len(c.Numbers) > 2 {
		return slices.ContainsFunc(pairs(c), func(p pair) bool { return (p.a+p.b)%10 == 0 })
	}
	small := slices.Min(c.Numbers)
	if c.Op == problem.Minus {
		small = min(small, c.Value())
	}
	switch {
	case small < 4, c.Numbers[0]%10 == 0 && c.Op == problem.Plus, c.Numbers[1]%10 == 0:
		return true
	case c.Largest() <= 20 || small < 10:
		return !passesTen(c)
	}
	return false
}

// passesTen reports whether the ones come to more than ten, or are too few to take
// from.
func passesTen(c problem.Calculation) bool {
	a, b := c.Numbers[0]%10, c.Numbers[1]%10
	if c.Op == problem.Minus {
		return a < b
	}
	return a+b > 10
}

// candidate is a choice of friendly numbers, perhaps not a useful one.
type candidate struct {
	method    Method
	friendly  []int
	tolerance int
}

// each makes every number friendly.
func each(c problem.Calculation, m Method, round func(int) int, tolerance int) candidate {
	friendly := make([]int, len(c.Numbers))
	for i, n := range c.Numbers {
		friendly[i] = round(n)
	}
	return candidate{m, friendly, tolerance}
}

// one makes one of two numbers friendly and leaves the other: first the one that is
// nearer to its friendly number, or the second (29 + 6 is about 30 + 6, not 29 + 10). Of
// a difference it is what is taken away: a friendly number is easy to take from any, and
// nothing is easier to take from a friendly one (800 - 544).
func one(c problem.Calculation, m Method, round func(int) int, tolerance int) []candidate {
	if len(c.Numbers) != 2 {
		return nil
	}
	a, b := c.Numbers[0], c.Numbers[1]
	second := candidate{m, []int{a, round(b)}, tolerance}
	if c.Op == problem.Minus {
		return []candidate{second}
	}
	first := candidate{m, []int{round(a), b}, tolerance}
	off := func(n int) int { return max(n-round(n), round(n)-n) }
	if off(a) < off(b) {
		return []candidate{first, second}
	}
	return []candidate{second, first}
}

// double takes the smaller of two close numbers twice.
func double(c problem.Calculation) []candidate {
	if c.Op != problem.Plus || len(c.Numbers) != 2 {
		return nil
	}
	small := slices.Min(c.Numbers)
	return []candidate{{Double, []int{small, small}, within20}}
}

// pair is two of three addends, and the third.
type pair struct{ a, b, third int }

func pairs(c problem.Calculation) []pair {
	if c.Op != problem.Plus || len(c.Numbers) != 3 {
		return nil
	}
	x, y, z := c.Numbers[0], c.Numbers[1], c.Numbers[2]
	return []pair{{x, y, z}, {x, z, y}, {y, z, x}}
}

// group takes two of three addends that nearly make ten as ten.
func group(c problem.Calculation) []candidate {
	var list []candidate
	for _, p := range pairs(c) {
		list = append(list, candidate{Group, []int{10, p.third}, within20})
	}
	return list
}

// estimate makes k an estimate of c. It is false for what is of no use: the numbers
// of c themselves, a friendly number of nothing, the answer itself; what is too far
// from the answer; and what leaves the range of c, or what part and whole allow.
func (k candidate) estimate(c problem.Calculation) (Estimate, bool) {
	if slices.Contains(k.friendly, 0) || slices.Equal(k.friendly, c.Numbers) {
		return Estimate{}, false
	}
	value := problem.Calculation{Op: c.Op, Numbers: k.friendly}.Value()
	e := Estimate{Method: k.method, Friendly: k.friendly, Value: value, Tolerance: k.tolerance, calculation: c}
	off := max(value-c.Value(), c.Value()-value)
	fits := off > 0 && value <= problem.RangeOf(c.Largest())
	return e, fits && off <= k.mostOff(c) && e.possible()
}

// mostOff is how far from the answer of c a candidate may be.
func (k candidate) mostOff(c problem.Calculation) int {
	most := k.tolerance
	switch {
	case c.Largest() <= 20:
		return most
	case k.method == Tens || k.method == Hundreds:
		most = k.tolerance / 2
	}
	if c.Largest() > 100 {
		return min(most, c.Value()/10)
	}
	return min(most, c.Value()/4)
}

// possible reports whether every answer that is near enough is one that part and
// whole allow: a sum not below its parts, a difference not above its whole.
func (e Estimate) possible() bool {
	if e.calculation.Op == problem.Minus {
		return e.most() <= e.calculation.Numbers[0]
	}
	return e.least() >= slices.Max(e.calculation.Numbers)
}
