package estimate

import (
	"slices"

	"homebuild/internal/problem"
)

// How near the right answer must be.
//
//   - Numbers to 20: 5. Common practice, no published source.
//   - Numbers to 100: 10. No sum or difference of two numbers rounded to tens
//     is farther off (computed: -8 to +10 and -9 to +9).
//   - Larger numbers: 10 with tens for the same reason; 100 with hundreds and
//     first digits (computed for hundreds: -98 to +100 and -99 to +99).
const (
	within20   = 5
	within100  = 10
	within1000 = 100
)

// candidates lists the friendly numbers to try, the simplest first. Front-end
// comes with rounding, in grade 3.
func candidates(c problem.Calculation, grade problem.Grade) []candidate {
	largest := slices.Max(c.Numbers)
	var list []candidate
	switch {
	case c.Largest() <= 20:
		list = append(list, each(c, Tens, NearestTen, within20))
		list = append(list, double(c)...)
		list = append(list, group(c)...)
		list = append(list, each(c, Fives, NearestFive, within20))
		return append(list, oneTen(c, within20)...)
	case largest <= 100:
		list = append(list, each(c, Tens, NearestTen, within100), each(c, Fives, NearestFive, within100))
		list = append(list, oneTen(c, within100)...)
	default:
		list = append(list, each(c, Hundreds, NearestHundred, within1000),
			each(c, Tens, NearestTen, within100), each(c, Fives, NearestFive, within100))
	}
	if grade >= 3 {
		tolerance := within100
		if largest > 100 {
			tolerance = within1000
		}
		list = append(list, candidate{FirstDigits, FrontEnd(c.Numbers...), tolerance})
	}
	return list
}

func each(c problem.Calculation, m Method, round func(int) int, tolerance int) candidate {
	friendly := make([]int, len(c.Numbers))
	for i, n := range c.Numbers {
		friendly[i] = round(n)
	}
	return candidate{m, friendly, tolerance}
}

// double takes the smaller of two close one-digit numbers, or ten, twice.
func double(c problem.Calculation) []candidate {
	if c.Op != problem.Plus || len(c.Numbers) != 2 {
		return nil
	}
	a, b := c.Numbers[0], c.Numbers[1]
	small, big := min(a, b), max(a, b)
	if small == big || big-small > 3 || small > 10 {
		return nil
	}
	return []candidate{{Double, []int{small, small}, within20}}
}

// oneTen makes one of two numbers friendly and leaves the other, the second
// first.
func oneTen(c problem.Calculation, tolerance int) []candidate {
	if len(c.Numbers) != 2 {
		return nil
	}
	a, b := c.Numbers[0], c.Numbers[1]
	return []candidate{
		{OneTen, []int{a, NearestTen(b)}, tolerance},
		{OneTen, []int{NearestTen(a), b}, tolerance},
	}
}

// group takes two of three addends as ten, the pair nearest to it, and the
// third as its nearest five.
func group(c problem.Calculation) []candidate {
	if c.Op != problem.Plus || len(c.Numbers) != 3 {
		return nil
	}
	x, y, z := c.Numbers[0], c.Numbers[1], c.Numbers[2]
	var best candidate
	nearest := 5
	for _, g := range [][2]int{{x + y, z}, {x + z, y}, {y + z, x}} {
		if off := max(g[0]-10, 10-g[0]); off < nearest {
			nearest = off
			best = candidate{Group, []int{10, NearestFive(g[1])}, within20}
		}
	}
	if best.friendly == nil {
		return nil
	}
	return []candidate{best}
}
