package strategy

import (
	"testing"

	"homebuild/internal/problem"
)

// Good pairs for a way, among them the published worked examples (CCSS-M 2010,
// 1.OA.C.6; Australian Curriculum v9.0, AC9M2N04; Klein, Beishuizen and Treffers
// 1998, from memory), and pairs for which a child sees a plainer way.
func TestSuits(t *testing.T) {
	plus := func(n ...int) problem.Calculation { return problem.Calculation{Op: problem.Plus, Numbers: n} }
	minus := func(n ...int) problem.Calculation {
		return problem.Calculation{Op: problem.Minus, Numbers: n}
	}
	for _, row := range []struct {
		name Name
		c    problem.Calculation
		want bool
		why  string
	}{
		{MakeTen, plus(8, 6), true, "1.OA.C.6"},
		{MakeTen, plus(9, 2), false, "two counts"},
		{MakeTen, plus(7, 7), false, "a double"},
		{BridgeBack, minus(13, 4), true, "1.OA.C.6"},
		{BridgeBack, minus(74, 8), true, "NA2-1"},
		{BridgeBack, minus(12, 9), false, "three counts up"},
		{NearDoubles, plus(6, 7), true, "1.OA.C.6"},
		{NearDoubles, plus(2, 1), false, "one count"},
		{NearDoubles, plus(3, 2), false, "two counts"},
		{BridgeBack, minus(12, 3), false, "three counts"},
		{JumpToTen, plus(58, 3), false, "three counts"},
		{JumpToTen, plus(58, 22), true, "a ten is made"},
		{JumpUp, minus(50, 25), true, "the walk up is no longer"},
		{SplitTens, plus(50, 36), false, "50 and 30, and 6"},
		{GiveAndTake, plus(211, 198), true, "a new hundred"},
		{ThinkAddition, minus(12, 8), true, "1.OA.C.6"},
		{ThinkAddition, minus(14, 4), false, "ten and four: place value"},
		{SplitTens, plus(56, 37), true, "AC9M2N04"},
		{SplitTens, plus(56, 30), false, "three tens to jump"},
		{FriendlyJump, plus(45, 39), true, "Klein and others"},
		{FriendlyJump, minus(65, 49), true, "nine does not go from five"},
		{FriendlyJump, minus(49, 39), false, "tens from tens, ones from ones"},
		{FriendlyJump, minus(49, 50), false, "does not even fit"},
		{GiveAndTake, plus(29, 36), true, "a new ten"},
		{JumpToTen, plus(58, 26), true, "a ten is passed"},
		{JumpUp, minus(65, 49), true, "the shorter walk is up"},
		{JumpUp, minus(65, 11), false, "the shorter walk is back"},
		{JumpOnLine, plus(46, 23), true, "twenty, then three"},
		{FriendlyPair, plus(8, 4, 2), true, "eight and two"},
	} {
		if got := Suits(row.name, row.c); got != row.want {
			t.Errorf("Suits(%v, %v) is %v, want %v: %s", row.name, row.c, got, row.want, row.why)
		}
	}
}

// What suits also fits, for every pair to a hundred and every way, and every way
// has a pair that suits it.
func TestSuitsImpliesFits(t *testing.T) {
	suited := map[Name]bool{}
	for a := 1; a <= 100; a++ {
		for b := 1; b <= 100; b++ {
			for _, c := range []problem.Calculation{{Op: problem.Plus, Numbers: []int{a, b}}, {Op: problem.Minus, Numbers: []int{a, b}}} {
				for _, n := range Names() {
					if !Suits(n, c) {
						continue
					}
					if suited[n] = true; !Fits(n, c) {
						t.Fatalf("%v suits %v and does not fit", n, c)
					}
				}
			}
		}
	}
	for _, n := range Names() {
		if !suited[n] && n != FriendlyPair && n != TwoParts && n != Pairs { // these are for three and four numbers
			t.Errorf("no pair suits %v", n)
		}
	}
}
