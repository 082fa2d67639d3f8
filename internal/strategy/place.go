package strategy

import "homebuild/internal/problem"

// places are a number's ones, tens and hundreds by their value: 345 is 5, 40
// and 300. A thousand is ten hundreds, so that three places are enough.
type places [3]int

const (
	onesPlace = iota
	tensPlace
	hundredsPlace
)

var placeIDs = [3]string{"ones", "tens", "hundreds"}

func placesOf(n int) places {
	return places{n % 10, n / 10 % 10 * 10, n / 100 * 100}
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

// easy reports whether a sum of two can be done in one go: it reaches a whole
// ten, is a double, has an addend under ten, or is place value.
func easy(a, b int) bool {
	return (a+b)%10 == 0 || a == b || a < 10 || b < 10 || round(a) || round(b)
}

// limit is the range that c stays in, and that no step may leave: within 10,
// 20, 100 or 1000, as the published standards set the ranges (CCSS-M 2010,
// K.OA.A.2, 1.OA.A.1, 2.OA.A.1, 2.NBT.B.7).
func limit(c problem.Calculation) int {
	most := c.Largest()
	for _, l := range []int{10, 20, 100, 1000} {
		if most <= l {
			return l
		}
	}
	return 10 * most
}

// isSum and isDifference pick the calculations of two numbers.
func isSum(c problem.Calculation) bool { return c.Op == problem.Plus && len(c.Numbers) == 2 }

func isDifference(c problem.Calculation) bool { return c.Op == problem.Minus && len(c.Numbers) == 2 }

// bySize gives the two numbers of c, the bigger first; turned reports that
// the second was the bigger one.
func bySize(c problem.Calculation) (big, small int, turned bool) {
	a, b := c.Numbers[0], c.Numbers[1]
	if b > a {
		return b, a, true
	}
	return a, b, false
}
