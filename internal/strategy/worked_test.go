package strategy_test

import (
	"strings"
	"testing"

	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// Where the working was published. "From memory" was not confirmed in a copy.
const (
	oac6   = "CCSS-M 2010, 1.OA.C.6"
	oab3   = "CCSS-M 2010, 1.OA.B.3"
	oab4   = "CCSS-M 2010, 1.OA.B.4"
	aus1   = "Australian Curriculum v9, AC9M1N04"
	aus2   = "Australian Curriculum v9, AC9M2N04"
	nz     = "New Zealand Curriculum elaborations, NA2-1"
	klein  = "Klein, Beishuizen and Treffers 1998, JRME 29, from memory"
	rule   = "computed from the strategy's rule"
	custom = "common practice, no published source"
)

// worked is a calculation with the working that a published text, or the
// common practice of the trade, gives it. Steps are separated by "; ".
type worked struct {
	c      problem.Calculation
	by     strategy.Name
	chain  string
	steps  string
	source string
}

func TestWorkedExamples(t *testing.T) {
	tests := []worked{
		{plus(8, 6), strategy.MakeTen, "8 + 6 = 8 + 2 + 4 = 10 + 4 = 14", "8 + 2 = 10; 6 = 2 + 4; 10 + 4 = 14", oac6},
		{minus(13, 4), strategy.BridgeBack, "13 - 4 = 13 - 3 - 1 = 10 - 1 = 9", "4 = 3 + 1; 13 - 3 = 10; 10 - 1 = 9", oac6},
		{minus(12, 8), strategy.ThinkAddition, "12 - 8 = 2 + 2 = 4", "8 + ? = 12; 8 + 2 = 10; 10 + 2 = 12; 2 + 2 = 4", oac6},
		{minus(10, 8), strategy.ThinkAddition, "10 - 8 = 1 + 1 = 2", "8 + ? = 10; 8 + 1 = 9; 9 + 1 = 10; 1 + 1 = 2", oab4},
		{minus(9, 4), strategy.ThinkAddition, "9 - 4 = 1 + 4 = 5", "4 + ? = 9; 4 + 1 = 5; 5 + 4 = 9; 1 + 4 = 5", custom},
		{plus(6, 7), strategy.NearDoubles, "6 + 7 = 6 + 6 + 1 = 12 + 1 = 13", "6 + 6 = 12; 12 + 1 = 13", oac6},
		{plus(2, 6, 4), strategy.FriendlyPair, "2 + 6 + 4 = 2 + 10 = 12", "6 + 4 = 10; 10 + 2 = 12", oab3},
		{plus(7, 5), strategy.MakeTen, "7 + 5 = 7 + 3 + 2 = 10 + 2 = 12", "7 + 3 = 10; 5 = 3 + 2; 10 + 2 = 12", aus1},
		{plus(7, 8), strategy.NearDoubles, "7 + 8 = 7 + 7 + 1 = 14 + 1 = 15", "7 + 7 = 14; 14 + 1 = 15", aus2},
		{plus(56, 37), strategy.SplitTens, "56 + 37 = 50 + 30 + 6 + 7 = 80 + 13 = 93", "50 + 30 = 80; 6 + 7 = 13; 80 + 13 = 93", aus2},
		{plus(47, 38), strategy.FriendlyJump, "47 + 38 = 50 + 40 - 5 = 90 - 5 = 85", "50 + 40 = 90; 3 + 2 = 5; 90 - 5 = 85", nz},
		{minus(74, 8), strategy.BridgeBack, "74 - 8 = 74 - 4 - 4 = 70 - 4 = 66", "8 = 4 + 4; 74 - 4 = 70; 70 - 4 = 66", nz},
		{plus(45, 39), strategy.JumpOnLine, "45 + 39 = 45 + 30 + 5 + 4 = 75 + 5 + 4 = 80 + 4 = 84", "45 + 30 = 75; 75 + 5 = 80; 80 + 4 = 84", klein},
		{plus(45, 39), strategy.FriendlyJump, "45 + 39 = 45 + 40 - 1 = 85 - 1 = 84", "45 + 40 = 85; 85 - 1 = 84", klein},
		{plus(45, 39), strategy.SplitTens, "45 + 39 = 40 + 30 + 5 + 9 = 70 + 14 = 84", "40 + 30 = 70; 5 + 9 = 14; 70 + 14 = 84", klein},
		{minus(65, 49), strategy.JumpOnLine, "65 - 49 = 65 - 40 - 5 - 4 = 25 - 5 - 4 = 20 - 4 = 16", "65 - 40 = 25; 25 - 5 = 20; 20 - 4 = 16", klein},
		{minus(65, 49), strategy.FriendlyJump, "65 - 49 = 65 - 50 + 1 = 15 + 1 = 16", "65 - 50 = 15; 15 + 1 = 16", klein},
		{minus(65, 49), strategy.JumpUp, "65 - 49 = 1 + 10 + 5 = 16", "49 + 1 = 50; 50 + 10 = 60; 60 + 5 = 65; 1 + 10 + 5 = 16", klein},
		{plus(9, 4), strategy.MakeTen, "9 + 4 = 9 + 1 + 3 = 10 + 3 = 13", "9 + 1 = 10; 4 = 1 + 3; 10 + 3 = 13", rule},
		{minus(15, 7), strategy.BridgeBack, "15 - 7 = 15 - 5 - 2 = 10 - 2 = 8", "7 = 5 + 2; 15 - 5 = 10; 10 - 2 = 8", rule},
		{plus(46, 23), strategy.JumpOnLine, "46 + 23 = 46 + 20 + 3 = 66 + 3 = 69", "46 + 20 = 66; 66 + 3 = 69", rule},

		{plus(6, 9), strategy.MakeTen, "6 + 9 = 5 + 1 + 9 = 5 + 10 = 15", "9 + 1 = 10; 6 = 1 + 5; 10 + 5 = 15", custom},
		{plus(6, 12), strategy.TenAndMore, "6 + 12 = 6 + 2 + 10 = 8 + 10 = 18", "12 = 10 + 2; 2 + 6 = 8; 10 + 8 = 18", custom},
		{plus(9, 7), strategy.MakeTen, "9 + 7 = 9 + 1 + 6 = 10 + 6 = 16", "9 + 1 = 10; 7 = 1 + 6; 10 + 6 = 16", custom},
		{plus(8, 4, 2), strategy.FriendlyPair, "8 + 4 + 2 = 8 + 2 + 4 = 10 + 4 = 14", "8 + 2 = 10; 10 + 4 = 14", custom},
		{plus(4, 9, 5), strategy.TwoParts, "4 + 9 + 5 = 4 + 5 + 9 = 9 + 9 = 18", "4 + 5 = 9; 9 + 9 = 18", custom},
		{plus(24, 17, 36, 13), strategy.Pairs, "24 + 17 + 36 + 13 = 24 + 36 + 17 + 13 = 60 + 30 = 90", "24 + 36 = 60; 17 + 13 = 30; 60 + 30 = 90", custom},
		{plus(25, 15, 18, 12), strategy.Pairs, "25 + 15 + 18 + 12 = 40 + 30 = 70", "25 + 15 = 40; 18 + 12 = 30; 40 + 30 = 70", custom},
		{plus(24, 17, 36, 13), strategy.SplitTens, "24 + 17 + 36 + 13 = 20 + 10 + 30 + 10 + 4 + 7 + 6 + 3 = 70 + 20 = 90", "20 + 10 + 30 + 10 = 70; 4 + 7 + 6 + 3 = 20; 70 + 20 = 90", custom},
		{plus(9, 2), strategy.CountOn, "9 + 2 = 9 + 1 + 1 = 10 + 1 = 11", "9 + 1 = 10; 10 + 1 = 11", custom},
		{plus(6, 8), strategy.GiveAndTake, "6 + 8 = 7 + 7 = 14", "6 + 1 = 7; 8 - 1 = 7; 7 + 7 = 14", custom},
		{plus(3, 4), strategy.CountAll, "3 + 4 = 7", "; ; 3 + 4 = 7", custom},
		{minus(7, 3), strategy.CountAll, "7 - 3 = 4", "; ; 7 - 3 = 4", custom},
		{plus(6, 4), strategy.PartnersOfTen, "6 + 4 = 10", "; 6 + 4 = 10", custom},
		{minus(10, 4), strategy.PartnersOfTen, "10 - 4 = 6", "; 10 - 4 = 6", custom},
		{minus(80, 50), strategy.CountInTens, "80 - 50 = 30", "; ; 8 - 5 = 3; 80 - 50 = 30", custom},
		{minus(311, 109), strategy.FriendlyJump, "311 - 109 = 311 - 100 - 10 + 1 = 201 + 1 = 202",
			"311 - 100 = 211; 211 - 10 = 201; 201 + 1 = 202", custom},
		{minus(63, 28), strategy.JumpOnLine, "63 - 28 = 63 - 20 - 3 - 5 = 43 - 3 - 5 = 40 - 5 = 35", "63 - 20 = 43; 43 - 3 = 40; 40 - 5 = 35", rule},
		{plus(46, 39), strategy.JumpOnLine, "46 + 39 = 46 + 30 + 4 + 5 = 76 + 4 + 5 = 80 + 5 = 85", "46 + 30 = 76; 76 + 4 = 80; 80 + 5 = 85", rule},
		{minus(345, 167), strategy.JumpUp, "345 - 167 = 3 + 30 + 100 + 40 + 5 = 178",
			"167 + 3 = 170; 170 + 30 = 200; 200 + 100 = 300; 300 + 40 = 340; 340 + 5 = 345; 3 + 30 + 100 + 40 + 5 = 178", rule},
		{plus(58, 38), strategy.FriendlyJump, "58 + 38 = 60 + 40 - 4 = 100 - 4 = 96", "60 + 40 = 100; 2 + 2 = 4; 100 - 4 = 96", rule},
		{plus(17, 28), strategy.FriendlyJump, "17 + 28 = 20 + 30 - 5 = 50 - 5 = 45", "20 + 30 = 50; 3 + 2 = 5; 50 - 5 = 45", rule},
		{plus(3, 6, 3), strategy.TwoParts, "3 + 6 + 3 = 3 + 3 + 6 = 6 + 6 = 12", "3 + 3 = 6; 6 + 6 = 12", rule},
		{plus(25, 15, 5, 35), strategy.Pairs, "25 + 15 + 5 + 35 = 40 + 40 = 80", "25 + 15 = 40; 5 + 35 = 40; 40 + 40 = 80", rule},
		{plus(6, 4, 17, 13), strategy.Pairs, "6 + 4 + 17 + 13 = 10 + 30 = 40", "6 + 4 = 10; 17 + 13 = 30; 10 + 30 = 40", rule},
		{minus(17, 12), strategy.JumpOnLine, "17 - 12 = 17 - 10 - 2 = 7 - 2 = 5", "17 - 10 = 7; 7 - 2 = 5", custom},
		{plus(29, 36), strategy.GiveAndTake, "29 + 36 = 30 + 35 = 65", "29 + 1 = 30; 36 - 1 = 35; 30 + 35 = 65", custom},
		{plus(58, 26), strategy.JumpToTen, "58 + 26 = 58 + 2 + 24 = 60 + 20 + 4 = 80 + 4 = 84", "26 = 2 + 24; 58 + 2 = 60; 60 + 20 = 80; 80 + 4 = 84", custom},
		{plus(145, 98), strategy.FriendlyJump, "145 + 98 = 145 + 100 - 2 = 245 - 2 = 243", "145 + 100 = 245; 245 - 2 = 243", custom},
		{plus(100, 45), strategy.TenAndMore, "100 + 45 = 145", "100 + 45 = 145", custom},
		{minus(20, 6), strategy.TenAndMore, "20 - 6 = 10 + 10 - 6 = 10 + 4 = 14", "20 = 10 + 10; 10 - 6 = 4; 10 + 4 = 14", custom},
		{minus(17, 4), strategy.TenAndMore, "17 - 4 = 10 + 7 - 4 = 10 + 3 = 13", "17 = 10 + 7; 7 - 4 = 3; 10 + 3 = 13", custom},
		{plus(56, 37), strategy.Expanded, "56 + 37 = 50 + 6 + 30 + 7 = 90 + 3 = 93", "6 + 7 = 13; 13 = 10 + 3; 50 + 30 + 10 = 90; 90 + 3 = 93", rule},
		{minus(305, 178), strategy.Expanded, "305 - 178 = 200 + 90 + 15 - 100 - 70 - 8 = 100 + 20 + 7 = 127",
			"305 = 200 + 90 + 15; 15 - 8 = 7; 90 - 70 = 20; 200 - 100 = 100; 100 + 20 + 7 = 127", rule},
		{plus(248, 175), strategy.SplitTens, "248 + 175 = 200 + 100 + 40 + 70 + 8 + 5 = 300 + 110 + 13 = 410 + 13 = 423",
			"200 + 100 = 300; 40 + 70 = 110; 8 + 5 = 13; 300 + 110 = 410; 410 + 13 = 423", rule},

		{plus(7, 7), strategy.MakeTen, "7 + 7 = 7 + 3 + 4 = 10 + 4 = 14", "7 + 3 = 10; 7 = 3 + 4; 10 + 4 = 14", rule},
		{minus(9, 5), strategy.ThinkAddition, "9 - 5 = 4", "5 + ? = 9; 5 + 4 = 9", custom},
		{minus(9, 6), strategy.ThinkAddition, "9 - 6 = 1 + 1 + 1 = 3", "6 + ? = 9; 6 + 1 = 7; 7 + 1 = 8; 8 + 1 = 9; 1 + 1 + 1 = 3", custom},
		{plus(58, 2), strategy.JumpToTen, "58 + 2 = 60", "58 + 2 = 60", rule},
		{plus(28, 17), strategy.FriendlyJump, "28 + 17 = 30 + 20 - 5 = 50 - 5 = 45", "30 + 20 = 50; 2 + 3 = 5; 50 - 5 = 45", rule},
		{plus(43, 27), strategy.Expanded, "43 + 27 = 40 + 3 + 20 + 7 = 70", "3 + 7 = 10; 40 + 20 + 10 = 70", rule},
		{plus(45, 30), strategy.Expanded, "45 + 30 = 40 + 5 + 30 = 70 + 5 = 75", "40 + 30 = 70; 70 + 5 = 75", rule},
		{minus(387, 254), strategy.SplitTens, "387 - 254 = 300 - 200 + 80 - 50 + 7 - 4 = 100 + 30 + 3 = 133",
			"300 - 200 = 100; 80 - 50 = 30; 7 - 4 = 3; 100 + 30 + 3 = 133", rule},

		// Which numbers are joined first: of those that are as good, the ones that stand first.
		{plus(4, 6, 4), strategy.FriendlyPair, "4 + 6 + 4 = 10 + 4 = 14", "4 + 6 = 10; 10 + 4 = 14", custom},
		{plus(7, 7, 2), strategy.TwoParts, "7 + 7 + 2 = 14 + 2 = 16", "7 + 7 = 14; 14 + 2 = 16", custom},
		{plus(3, 8, 4), strategy.TwoParts, "3 + 8 + 4 = 3 + 4 + 8 = 7 + 8 = 15", "3 + 4 = 7; 7 + 8 = 15", custom},
		{plus(4, 4, 4), strategy.TwoParts, "4 + 4 + 4 = 8 + 4 = 12", "4 + 4 = 8; 8 + 4 = 12", custom},
		{plus(4, 7, 6, 3), strategy.Pairs, "4 + 7 + 6 + 3 = 4 + 6 + 7 + 3 = 10 + 10 = 20", "4 + 6 = 10; 7 + 3 = 10; 10 + 10 = 20", custom},
		{plus(1, 2, 3, 4), strategy.Pairs, "1 + 2 + 3 + 4 = 3 + 7 = 10", "1 + 2 = 3; 3 + 4 = 7; 3 + 7 = 10", custom},
	}
	for _, test := range tests {
		t.Run(test.c.String()+" by "+test.by.String(), func(t *testing.T) {
			w, err := strategy.Work(test.by, test.c)
			if err != nil {
				t.Fatalf("%v, but: %s", err, test.source)
			}
			if got := w.Chain.String(); got != test.chain {
				t.Errorf("chain\nwant %s\ngot  %s\nsource: %s", test.chain, got, test.source)
			}
			if got := written(w); got != test.steps {
				t.Errorf("steps\nwant %s\ngot  %s\nsource: %s", test.steps, got, test.source)
			}
			checkWay(t, w)
		})
	}
}

func written(w strategy.Way) string {
	var lines []string
	for _, s := range w.Steps { // a step that writes nothing down is an empty place
		lines = append(lines, s.Equation.String())
	}
	return strings.Join(lines, "; ")
}

func TestMustRefuse(t *testing.T) {
	tests := []struct {
		by  strategy.Name
		c   problem.Calculation
		why string
	}{
		{strategy.MakeTen, plus(6, 3), "does not pass ten"},
		{strategy.MakeTen, plus(6, 4), "makes ten, but has nothing to carry past it"},
		{strategy.MakeTen, plus(10, 4), "there is a ten already"},
		{strategy.MakeTen, plus(12, 9), "not two one-digit numbers"},
		{strategy.MakeTen, minus(13, 4), "a subtraction"},
		{strategy.NearDoubles, plus(4, 9), "5 apart"},
		{strategy.NearDoubles, plus(37, 38), "nobody knows 37 + 37 by heart"},
		{strategy.SplitTens, minus(65, 49), "5 - 9 tempts to 9 - 5: the answer 24 is a known mistake"},
		{strategy.SplitTens, minus(128, 45), "20 - 40, the same with tens"},
		{strategy.BridgeBack, minus(17, 4), "does not cross a ten"},
		{strategy.BridgeBack, minus(20, 6), "stands on a ten already"},
		{strategy.BridgeBack, minus(65, 49), "too far to bridge"},
		{strategy.FriendlyJump, plus(45, 32), "no number is near a friendly one above"},
		{strategy.FriendlyJump, plus(61, 39), "61 + 40 leaves the hundred"},
		{strategy.FriendlyJump, minus(50, 49), "50 - 50 leaves nothing to mend"},
		{strategy.GiveAndTake, plus(45, 32), "no number is near a friendly one above"},
		{strategy.JumpToTen, plus(46, 23), "the ones do not reach a ten"},
		{strategy.CountOn, plus(9, 4), "four is too many to count"},
		{strategy.CountBack, minus(13, 4), "four is too many to count"},
		{strategy.FriendlyPair, plus(4, 9, 5), "no two make a ten"},
		{strategy.Doubles, plus(37, 37), "nobody knows it by heart"},
		{strategy.ThinkAddition, minus(100, 45), "45 + 55 is not a known addition"},
		{strategy.TwoParts, plus(237, 148, 389), "neither sum is easy"},
	}
	for _, test := range tests {
		if strategy.Fits(test.by, test.c) {
			t.Errorf("%v fits %v, want no: %s", test.by, test.c, test.why)
		}
		if w, err := strategy.Work(test.by, test.c); err == nil {
			t.Errorf("%v works %v as %v, want an error: %s", test.by, test.c, w.Chain, test.why)
		}
	}
}
