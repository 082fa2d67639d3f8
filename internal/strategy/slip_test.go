package strategy_test

import (
	"slices"
	"testing"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// The wrong numbers that the ways give, worked by hand beforehand. Common
// practice, no published source; the rows marked * are of a kind that is described
// for the empty number line (Beishuizen 1993, from memory).
func TestSlips(t *testing.T) {
	tests := []struct {
		c    problem.Calculation
		by   strategy.Name
		slip strategy.SlipName
		want []int
		why  string
	}{
		{plus(9, 2), strategy.CountOn, strategy.CountedStart, []int{10}, "9, 10"},
		{plus(9, 2), strategy.CountOn, strategy.OneTooFar, []int{12}, "one count more"},
		{minus(11, 2), strategy.CountBack, strategy.CountedStart, []int{10}, "11, 10"},
		{plus(3, 4), strategy.CountAll, strategy.EachOnce, []int{6, 8}, "one left out, or counted twice"},
		{minus(10, 4), strategy.PartnersOfTen, strategy.BoxesAgain, []int{5, 7}, "one box beside"},
		{plus(7, 7), strategy.Doubles, strategy.OtherDouble, []int{12, 16}, "6 + 6 or 8 + 8"},
		{plus(6, 7), strategy.NearDoubles, strategy.NotMended, []int{12, 14}, "6 + 6 or 7 + 7"},
		{plus(6, 7), strategy.NearDoubles, strategy.MendedWrong, []int{11, 15}, "6 + 6 - 1 or 7 + 7 + 1"},
		{plus(8, 6), strategy.MakeTen, strategy.RestForgotten, []int{10, 12}, "8 + 2 or 8 + 4"},
		{plus(8, 6), strategy.MakeTen, strategy.WholeUsed, []int{16}, "10 + 6"},
		{minus(13, 4), strategy.BridgeBack, strategy.WholeUsed, []int{6}, "10 - 4"},
		{minus(13, 4), strategy.BridgeBack, strategy.RestForgotten, []int{10, 12}, "13 - 3 or 13 - 1"},
		{minus(13, 4), strategy.BridgeBack, strategy.TurnedAround, []int{11}, "13 - 3 + 1"},
		{plus(45, 39), strategy.FriendlyJump, strategy.NotMended, []int{85}, "45 + 40 *"},
		{plus(45, 39), strategy.FriendlyJump, strategy.MendedWrong, []int{86}, "45 + 40 + 1"},
		{minus(65, 49), strategy.FriendlyJump, strategy.MendedWrong, []int{14}, "65 - 50 - 1 *"},
		{minus(51, 49), strategy.FriendlyJump, strategy.MendedWrong, []int{0}, "51 - 50 - 1"},
		{plus(47, 38), strategy.FriendlyJump, strategy.NotMended, []int{90, 87, 88}, "50 + 40, less 3, less 2"},
		{plus(29, 36), strategy.GiveAndTake, strategy.NotTaken, []int{66, 64, 67}, "30 + 36, 29 + 35, 30 + 37"},
		{plus(45, 39), strategy.JumpOnLine, strategy.JumpLost, []int{54, 75, 79, 80}, "of 30, 5 and 4: the first, the last two, the second, the last"},
		{plus(45, 39), strategy.JumpOnLine, strategy.WholeUsed, []int{89}, "80 + 9"},
		{minus(65, 49), strategy.JumpOnLine, strategy.TurnedAround, []int{24}, "65 - 40 - 5 + 4"},
		{plus(45, 39), strategy.JumpOnLine, strategy.Landing, []int{74, 94}, "ten away"},
		{plus(58, 26), strategy.JumpToTen, strategy.WholeUsed, []int{86}, "60 + 26"},
		{minus(65, 49), strategy.JumpUp, strategy.JumpLost, []int{15, 1, 6, 10, 11, 5}, "of 1, 10 and 5"},
		{plus(56, 37), strategy.SplitTens, strategy.PartLost, []int{43, 63, 87, 86, 13, 80}, "without 50, 30, 6, 7, 80, 13"},
		{plus(38, 15), strategy.SplitTens, strategy.PartLost, []int{13, 23, 40, 45, 48}, "without 30, 8, 5, 40, 13; without 10 the new ten is lost"},
		{plus(56, 37), strategy.SplitTens, strategy.CarryDropped, []int{83}, "80 + 3"},
		{minus(48, 23), strategy.SplitTens, strategy.PartLost, []int{45, 28, 17, 5, 20}, "without 20, 3 or 8; 5 or 20 alone"},
		{plus(6, 12), strategy.TenAndMore, strategy.RestForgotten, []int{8, 16}, "2 + 6, or 10 + 6"},
		{plus(8, 4, 2), strategy.FriendlyPair, strategy.LeftOut, []int{12, 10, 6}, "two of the three"},
		{minus(80, 50), strategy.CountInTens, strategy.TensCounted, []int{3}, "three tens"},
		{minus(9, 8), strategy.ThinkAddition, strategy.CountedStart, []int{2}, "8, 9: the start was counted"},
		{plus(30, 40), strategy.SplitTens, strategy.PartLost, []int{30, 40}, "without 40 or 30"},
		{plus(8, 6), strategy.MakeTen, strategy.StepOff, []int{13, 15}, "a step one off"},
		{plus(24, 17, 36, 13), strategy.Pairs, strategy.LeftOut, []int{66, 73, 54, 77}, "one of the four"},
		{minus(65, 49), strategy.JumpUp, strategy.Landing, []int{6, 26}, "a jump of ten too few or too many"},
		{minus(15, 8), strategy.JumpUp, strategy.Landing, nil, "no jump of tens"},
		{plus(46, 20), strategy.JumpOnLine, strategy.Landing, []int{56, 76}, "ten away"},
		{plus(46, 10), strategy.JumpOnLine, strategy.Landing, []int{46, 66}, "ten away"},
		{plus(46, 20), strategy.JumpOnLine, strategy.TurnedAround, nil, "there is one jump"},
		{plus(51, 34), strategy.JumpOnLine, strategy.WholeUsed, nil, "no ten to stop at"},
		{plus(46, 14), strategy.JumpOnLine, strategy.WholeUsed, nil, "the ones end at the ten"},
		{plus(46, 32), strategy.SplitTens, strategy.CarryDropped, nil, "the ones make no ten"},
		{plus(43, 27), strategy.SplitTens, strategy.CarryDropped, []int{60}, "60 + 0"},
		{minus(12, 8), strategy.ThinkAddition, strategy.StepLost, []int{2}, "2 and 2"},
	}
	for _, test := range tests {
		w, err := strategy.Work(test.by, test.c)
		if err != nil {
			t.Fatal(err)
		}
		var got []int
		for _, s := range w.Slips {
			if s.Name == test.slip {
				got = append(got, s.Answer)
			}
		}
		slices.Sort(got)
		slices.Sort(test.want)
		if !slices.Equal(got, test.want) {
			t.Errorf("%v by %v, %s: got %v, want %v: %s", test.c, test.by, test.slip, got, test.want, test.why)
		}
	}
}

// A child who left a part out is asked to look at the places that the numbers have.
func TestPlacesToLookAt(t *testing.T) {
	for _, test := range []struct {
		c    problem.Calculation
		want string
	}{
		{plus(56, 37), "mistake.part-lost.tens"},
		{plus(70, 60), "mistake.part-lost.tens"},
		{plus(100, 100), "mistake.part-lost.hundreds"},
		{minus(387, 254), "mistake.part-lost.hundreds"},
	} {
		w, err := strategy.Work(strategy.SplitTens, test.c)
		if err != nil {
			t.Fatal(err)
		}
		lost := slices.IndexFunc(w.Slips, func(s strategy.Slip) bool { return s.Name == strategy.PartLost })
		if lost < 0 || w.Slips[lost].Ask.ID != test.want {
			t.Errorf("%v: slips %v, want one that asks %s", test.c, w.Slips, test.want)
		}
	}
}

// checkSlips wants no slip to be the right answer, its working to come to it, and
// neither what is asked then nor the first hint to tell the answer, except as a number
// of the calculation.
func checkSlips(t *testing.T, w strategy.Way) {
	t.Helper()
	checkTold(t, w, w.Hint)
	for _, s := range w.Slips {
		if s.Answer == count(w.Calculation) || s.Answer < 0 {
			t.Fatalf("%v by %v: %s gives %d", w.Calculation, w.Name, s.Name, s.Answer)
		}
		if s.Working != nil && s.Working.Value() != s.Answer {
			t.Fatalf("%v by %v: %s is worked to %v, not %d", w.Calculation, w.Name, s.Name, s.Working, s.Answer)
		}
		checkTold(t, w, s.Ask)
	}
}

// checkTold wants a line to keep the answer back.
func checkTold(t *testing.T, w strategy.Way, line phrase.Line) {
	t.Helper()
	answer := count(w.Calculation)
	if slices.Contains(w.Calculation.Numbers, answer) {
		return
	}
	for _, v := range line.Values {
		told := v.Kind == phrase.KindNumber && v.N == answer
		for _, side := range v.Equation.Sides() {
			told = told || slices.ContainsFunc(side, func(term problem.Term) bool { return term.Value == answer && !term.Unknown })
		}
		if told {
			t.Fatalf("%v by %v: %s tells the answer", w.Calculation, w.Name, line.ID)
		}
	}
}

// checkJumps wants a jump along the line to be of ones, of tens or of hundreds: a jump
// of 12 is two.
func checkJumps(t *testing.T, w strategy.Way) {
	t.Helper()
	at := stops(w)
	for i := 1; i < len(at); i++ {
		if by := max(at[i]-at[i-1], at[i-1]-at[i]); by > 10 && digits(by) > 1 {
			t.Fatalf("%v by %v jumps %d", w.Calculation, w.Name, by)
		}
	}
}

// A class meets no way before its grade where it has one of its own; kindergarten
// counts all, then on, and has partners of ten.
func TestWaysOfTheGrade(t *testing.T) {
	for a := 0; a <= 10; a++ {
		for b := 0; a+b <= 10; b++ {
			for _, c := range []problem.Calculation{plus(a, b), minus(a+b, b)} {
				for _, w := range strategy.Ways(c, 0, strategy.MakeTen, strategy.ThinkAddition) {
					if !slices.Contains([]strategy.Name{strategy.CountAll, strategy.CountOn, strategy.PartnersOfTen}, w.Name) {
						t.Fatalf("kindergarten is taught %v for %v", w.Name, c)
					}
				}
			}
		}
	}
	for c, want := range map[string]strategy.Name{"4 + 2": strategy.CountAll, "6 + 4": strategy.PartnersOfTen, "7 - 3": strategy.CountAll} {
		calculation := map[string]problem.Calculation{"4 + 2": plus(4, 2), "6 + 4": plus(6, 4), "7 - 3": minus(7, 3)}[c]
		if got := strategy.Ways(calculation, 0)[0].Name; got != want {
			t.Errorf("kindergarten works %s by %v first, want %v", c, got, want)
		}
	}
	if got := strategy.Ways(plus(4, 2), 1)[0].Name; got != strategy.CountOn {
		t.Errorf("grade 1 works 4 + 2 by %v first, want count-on", got)
	}
	if len(strategy.Ways(minus(345, 167), 0)) == 0 {
		t.Error("what kindergarten has no way for has none at all, want one of a later grade")
	}
	if ways := strategy.Ways(plus(56, 37), 1); slices.ContainsFunc(ways, func(w strategy.Way) bool { return w.Name == strategy.Expanded }) {
		t.Error("grade 1 is taught columns")
	}
}

// A way is called by what it does: with hundreds not "tens and ones", and a pair
// that makes sixty not "ten".
func TestTitles(t *testing.T) {
	for _, test := range []struct {
		c    problem.Calculation
		by   strategy.Name
		want string
	}{
		{plus(56, 37), strategy.SplitTens, "strategy.split-tens.name"},
		{plus(70, 30), strategy.SplitTens, "strategy.split-tens.name"},
		{plus(256, 137), strategy.SplitTens, "strategy.split-hundreds.name"},
		{minus(305, 178), strategy.Expanded, "strategy.expanded-hundreds.name"},
		{plus(8, 4, 2), strategy.FriendlyPair, "strategy.friendly-pair.name"},
		{plus(16, 44, 27), strategy.FriendlyPair, "strategy.friendly-pair-round.name"},
		{minus(800, 500), strategy.CountInTens, "strategy.count-in-hundreds.name"},
	} {
		w, err := strategy.Work(test.by, test.c)
		if err != nil {
			t.Fatal(err)
		}
		if got := w.Title().ID; got != test.want {
			t.Errorf("%v by %v is called %s, want %s", test.c, test.by, got, test.want)
		}
	}
}
