package strategy

import (
	"testing"

	"homebuild/internal/problem"
)

// The worked examples of published standards explain their ways (CCSS-M 2010:
// 1.OA.B.3, 1.OA.C.5, 1.OA.C.6; Klein, Beishuizen and Treffers 1998, from memory); what
// a teacher would not write on the board does not (common practice, no published
// source).
func TestShows(t *testing.T) {
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
		{MakeTen, plus(8, 5), true, "two more make ten"},
		{MakeTen, plus(7, 6), false, "a double and one"},
		{MakeTen, plus(9, 8), false, "a double and one"},
		{MakeTen, plus(7, 4), false, "it takes three to the ten"},
		{MakeTen, plus(9, 1), false, "one count"},
		{BridgeBack, minus(13, 4), true, "1.OA.C.6"},
		{BridgeBack, minus(15, 7), true, "five, then two"},
		{BridgeBack, minus(11, 7), false, "the way up is shorter"},
		{BridgeBack, minus(14, 7), true, "the way up is no shorter"},
		{TenAndMore, plus(6, 12), true, "the ten stays whole"},
		{TenAndMore, plus(10, 10), false, "no more than tens"},
		{TenAndMore, plus(100, 20), false, "no more than tens"},
		{ThinkAddition, minus(13, 10), false, "ten and three: place value"},
		{ThinkAddition, minus(12, 8), true, "1.OA.C.6"},
		{ThinkAddition, minus(13, 4), false, "from four it is the longer way"},
		{ThinkAddition, minus(9, 8), false, "seen at once"},
		{ThinkAddition, minus(14, 7), true, "the way back is no shorter"},
		{NearDoubles, plus(6, 7), true, "1.OA.C.6"},
		{Doubles, plus(6, 6), true, "six and six"},
		{Doubles, plus(10, 10), false, "two tens: place value"},
		{Doubles, plus(2, 2), false, "seen at once"},
		{CountOn, plus(7, 2), true, "1.OA.C.5"},
		{CountOn, plus(2, 7), true, "from seven, whichever comes first"},
		{CountOn, plus(7, 1), false, "one count"},
		{CountOn, plus(2, 2), false, "a double"},
		{CountBack, minus(9, 2), true, "eight, seven"},
		{CountBack, minus(3, 2), false, "more is taken than is left"},
		{CountBack, minus(9, 1), false, "one count"},
		{CountBack, minus(6, 3), false, "no fewer are taken than are left"},
		{CountAll, plus(3, 4), true, "two amounts to see"},
		{CountAll, minus(7, 1), false, "one is crossed out"},
		{CountAll, minus(7, 6), false, "one is left"},
		{CountAll, plus(4, 1), false, "one beside the four"},
		{PartnersOfTen, plus(6, 4), true, "K.OA.A.4"},
		{PartnersOfTen, minus(10, 1), false, "one box"},
		{CountInTens, plus(40, 30), true, "four tens and three tens"},
		{CountInTens, minus(80, 70), false, "one ten is left"},
		{JumpOnLine, plus(46, 23), true, "twenty, then three"},
		{JumpOnLine, plus(46, 20), false, "one jump"},
		{JumpOnLine, plus(50, 23), false, "tens and tens, and three ones"},
		{FriendlyPair, plus(2, 6, 4), true, "1.OA.B.3"},
		{FriendlyPair, plus(8, 4, 2), true, "eight and two"},
		{FriendlyPair, plus(8, 2, 4), false, "they stand side by side, first"},
		{FriendlyPair, plus(8, 1, 2), false, "one more is counted"},
		{TwoParts, plus(4, 9, 5), true, "nine and nine"},
		{TwoParts, plus(4, 9, 2), false, "no double comes of it"},
		{TwoParts, plus(1, 8, 7), false, "one more is counted"},
		{TwoParts, plus(2, 2, 11), false, "a double, and nothing comes of it"},
		{Pairs, plus(24, 17, 36, 13), true, "sixty and thirty"},
		{Pairs, plus(18, 40, 11, 29), false, "fifty-eight is no whole ten"},
		{Expanded, minus(81, 14), true, "a ten to open"},
		{Expanded, minus(45, 38), false, "no tens are left"},
		{Expanded, minus(81, 11), false, "no ones are left"},
		{FriendlyJump, plus(45, 39), true, "Klein and others"},
		{FriendlyJump, minus(65, 49), true, "Klein and others"},
		{FriendlyJump, minus(310, 297), false, "thirteen up"},
		{FriendlyJump, minus(34, 28), false, "six up"},
		{FriendlyJump, minus(35, 28), true, "seven up is not so short"},
		{FriendlyJump, minus(49, 39), false, "does not suit it"},
	} {
		if got := Shows(row.name, row.c); got != row.want {
			t.Errorf("Shows(%v, %v) is %v, want %v: %s", row.name, row.c, got, row.want, row.why)
		}
	}
}

// A strategy is for the operations of the calculations that it fits: every sum and
// difference of two numbers to a hundred, of three and four to twenty.
func TestIsFor(t *testing.T) {
	type shape struct {
		name    Name
		op      problem.Op
		numbers int
	}
	fits := map[shape]bool{}
	look := func(numbers ...int) {
		for _, op := range []problem.Op{problem.Plus, problem.Minus} {
			for _, n := range Names() {
				if s := (shape{n, op, len(numbers)}); !fits[s] {
					fits[s] = Fits(n, problem.Calculation{Op: op, Numbers: numbers})
				}
			}
		}
	}
	for a := 1; a <= 100; a++ {
		for b := 1; b <= 100; b++ {
			look(a, b)
		}
	}
	for at := range 20 * 20 * 20 {
		a, b, c := at/400+1, at/20%20+1, at%20+1
		look(a, b, c)
		look(a, b, c, 10)
	}
	for s, want := range fits {
		if got := IsFor(s.name, s.op, s.numbers); got != want {
			t.Errorf("IsFor(%v, %v, %d) is %v, want %v", s.name, s.op, s.numbers, got, want)
		}
	}
}
