package estimate_test

import (
	"slices"
	"testing"

	"homebuild/internal/estimate"
	"homebuild/internal/problem"
)

// What the rule chooses. Common practice, no published source.
func TestFor(t *testing.T) {
	tests := []struct {
		c      problem.Calculation
		wrong  []int
		want   string
		method estimate.Method
		missed []int
		why    string
	}{
		{plus(8, 6), []int{2}, "10 + 6 = 16", estimate.OneTen, nil, "8 is nearly ten"},
		{plus(6, 7), []int{1}, "6 + 6 = 12", estimate.Double, nil, "neither is within two of ten"},
		{minus(13, 4), []int{17}, "15 - 5 = 10", estimate.Fives, nil, "4 is near no ten but 0"},
		{minus(16, 9), []int{25}, "16 - 10 = 6", estimate.OneTen, nil, "9 is nearly ten"},
		{plus(8, 3, 4), []int{11}, "10 + 4 = 14", estimate.Group, nil, "8 and 3 nearly make ten"},
		{plus(38, 26), []int{12, 54}, "40 + 26 = 66", estimate.OneTen, nil, "both to tens is six too many, and 38 is nearer to a ten"},
		{plus(29, 6), []int{25}, "30 + 6 = 36", estimate.OneTen, nil, "29 is nearer to a ten than 6"},
		{plus(38, 27), []int{11, 55}, "40 + 30 = 70", estimate.Tens, nil, "both to tens is simplest, and finds both"},
		{plus(11, 19), []int{8, 20}, "11 + 20 = 31", estimate.OneTen, nil, "10 + 20 would not see the forgotten ten"},
		{minus(64, 29), []int{93, 45}, "60 - 30 = 30", estimate.Tens, nil, "45 is farther off than ten"},
		{plus(256, 178), []int{78, 404}, "256 + 200 = 456", estimate.OneHundred, nil, "hundreds would take 404 for near"},
		{plus(345, 268), []int{77, 603, 513}, "345 + 270 = 615", estimate.OneTen, nil, "both to tens is seven too many"},
		{minus(788, 544), []int{1332}, "788 - 540 = 248", estimate.OneTen, nil, "800 - 544 would be no easier"},
		{minus(74, 28), []int{102, 56}, "74 - 30 = 44", estimate.OneTen, nil, "70 - 28 would be no easier"},
		{plus(298, 203), []int{95}, "300 + 200 = 500", estimate.Hundreds, nil, "where every number has hundreds, they come first"},
		{plus(298, 53), []int{245}, "300 + 53 = 353", estimate.OneHundred, nil, "53 has none"},
		{plus(100, 298, 203), []int{398}, "100 + 300 + 200 = 600", estimate.Hundreds, nil, "a hundred has hundreds"},
		{plus(10, 38, 23), []int{48}, "10 + 40 + 20 = 70", estimate.Tens, nil, "ten has tens"},
		{plus(48, 49), []int{1}, "50 + 50 = 100", estimate.Tens, nil, "a hundred is within a hundred"},
		{minus(100, 74), []int{174}, "100 - 70 = 30", estimate.Tens, nil, "4 of 26 off: a hundred is judged as what is below"},
		{minus(60, 12), []int{72}, "60 - 10 = 50", estimate.Tens, nil, "up to 60, which is the whole"},
		{plus(4, 39), []int{35}, "4 + 40 = 44", estimate.OneTen, nil, "from 39 on, which is the larger part"},
	}
	for _, test := range tests {
		e, ok := estimate.For(test.c, test.wrong, 2)
		if !ok {
			t.Errorf("For(%v): none, want %s", test.c, test.want)
			continue
		}
		if e.Equation.String() != test.want || e.Method != test.method || !slices.Equal(e.Missed, test.missed) {
			t.Errorf("For(%v, %v)\nwant %s by %v, missed %v: %s\ngot  %v by %v, missed %v",
				test.c, test.wrong, test.want, test.method, test.missed, test.why, e.Equation, e.Method, e.Missed)
		}
	}
}

func TestNoUsefulEstimate(t *testing.T) {
	tests := []struct {
		c     problem.Calculation
		wrong []int
		why   string
	}{
		{plus(2, 5), []int{3}, "within ten"},
		{minus(10, 4), []int{14}, "within ten"},
		{plus(8, 8), []int{0}, "a double"},
		{plus(9, 2), []int{7}, "counted at once"},
		{minus(12, 9), []int{21}, "three counts up"},
		{plus(12, 5), []int{7}, "no ten is passed"},
		{minus(15, 10), []int{25}, "the ten goes"},
		{plus(46, 20), []int{26}, "a whole ten is added"},
		{plus(43, 5), []int{38}, "only the ones change"},
		{plus(43, 7), []int{36}, "the ten is full, and none is passed"},
		{minus(47, 7), []int{54}, "all the ones go, and no ten"},
		{plus(6, 4, 5), []int{10}, "6 and 4 make ten exactly"},
		{plus(16, 44, 27), []int{60}, "16 and 44 make sixty exactly"},
		{plus(38, 25), nil, "nothing is to be found"},
	}
	for _, test := range tests {
		if e, ok := estimate.For(test.c, test.wrong, 1); ok {
			t.Errorf("For(%v) = %v, want none: %s", test.c, e.Equation, test.why)
		}
	}
}

// An answer passes up to the bounds that are told, and no further.
func TestNear(t *testing.T) {
	e, _ := estimate.For(plus(38, 25), []int{13}, 2)
	for given, want := range map[int]bool{59: false, 60: true, 65: true, 70: true, 71: false} {
		if got := e.Near(given); got != want {
			t.Errorf("%v, within %d: %d passes: %v, want %v", e.Equation, e.Tolerance, given, got, want)
		}
	}
}

// tolerance is how far off an estimate may be, by the size of the numbers and of
// what was made friendly: the bounds of the rounding tests.
func tolerance(c problem.Calculation, e estimate.Estimate) int {
	switch {
	case c.Largest() <= 20:
		return 2
	case e.Method == estimate.OneTen:
		return 5
	case e.Method == estimate.Tens:
		return 10
	case e.Method == estimate.OneHundred:
		return 50
	}
	return 100
}

// check proves an estimate: near, never the answer, inside what part and whole
// allow and the range, found and missed as it says, and of use at all.
func check(t *testing.T, c problem.Calculation, answer int, wrong []int) {
	t.Helper()
	wrong = slices.DeleteFunc(wrong, func(n int) bool { return n == answer })
	e, ok := estimate.For(c, wrong, 2)
	if !ok {
		return
	}
	off, within := distance(e.Value, answer), tolerance(c, e)
	if c.Largest() <= 10 || off == 0 || off > within || e.Tolerance != within || c.Largest() > 20 && 4*off > answer {
		t.Fatalf("%v: %v is %d off, and may be %d", c, e.Equation, off, e.Tolerance)
	}
	if outside := c.Op == problem.Minus && e.Value+within > c.Numbers[0] ||
		c.Op == problem.Plus && e.Value-within < slices.Max(c.Numbers); outside || e.Value > problem.RangeOf(c.Largest()) {
		t.Fatalf("%v: %v is not possible", c, e.Equation)
	}
	if c.Op == problem.Minus && e.Friendly[1] == c.Numbers[1] && c.Numbers[1]%5 != 0 {
		t.Fatalf("%v: %v takes away as much as before, and is no easier", c, e.Equation)
	}
	var missed []int
	for _, n := range wrong {
		if distance(n, e.Value) <= within {
			missed = append(missed, n)
		}
	}
	if !slices.Equal(missed, e.Missed) || len(missed) == len(wrong) {
		t.Fatalf("%v: %v finds all of %v but %v, and says but %v", c, e.Equation, wrong, missed, e.Missed)
	}
}

func TestEstimatesAreOfUse(t *testing.T) {
	for a := 0; a <= 100; a++ {
		for b := 0; b <= 100; b++ {
			check(t, plus(a, b), a+b, []int{distance(a, b), a + b - 10})
			if b <= a {
				check(t, minus(a, b), a-b, []int{a + b, a - b + 10})
			}
			for c := 0; a+b+c <= 20; c++ {
				check(t, plus(a, b, c), a+b+c, []int{a + b, a + c})
			}
		}
	}
	for a := 0; a <= 1000; a += 7 {
		for b := 0; a+b <= 1000; b += 11 {
			check(t, plus(a, b), a+b, []int{distance(a, b), a + b - 10, a + b - 100})
			check(t, minus(a+b, b), a, []int{a + b + b, a + 10, a + 100})
			check(t, plus(a, b, 13), a+b+13, []int{a + b})
		}
	}
}
