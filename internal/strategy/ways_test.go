package strategy_test

import (
	"slices"
	"strings"
	"testing"

	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// Which way comes first. All rows: common practice, no published source; the
// rows marked * are the way in which CCSS-M 2010, 1.OA.B.3 and C.6 work them.
func TestBestWay(t *testing.T) {
	tests := []struct {
		c    problem.Calculation
		want strategy.Name
		why  string
	}{
		{plus(8, 6), strategy.MakeTen, "*"},
		{plus(6, 7), strategy.NearDoubles, "*"},
		{minus(13, 4), strategy.BridgeBack, "*"},
		{minus(12, 8), strategy.ThinkAddition, "*"},
		{plus(2, 6, 4), strategy.FriendlyPair, "*"},
		{plus(7, 0), strategy.CountOn, "nothing to add"},
		{plus(0, 0), strategy.CountOn, "nothing to add"},
		{plus(9, 2), strategy.CountOn, "two counts"},
		{plus(8, 8), strategy.Doubles, "known by heart"},
		{plus(10, 4), strategy.TenAndMore, "said at once"},
		{plus(100, 45), strategy.TenAndMore, "said at once"},
		{plus(6, 12), strategy.TenAndMore, "the ten stays whole"},
		{plus(6, 4), strategy.PartnersOfTen, "seen on a ten frame"},
		{minus(10, 6), strategy.PartnersOfTen, "seen on a ten frame"},
		{plus(30, 50), strategy.CountInTens, "three tens and five tens"},
		{minus(80, 50), strategy.CountInTens, "eight tens less five tens"},
		{minus(800, 500), strategy.CountInTens, "eight hundreds less five hundreds"},
		{minus(17, 12), strategy.SplitTens, "the tens are the same, and one jump would say the answer"},
		{minus(311, 109), strategy.FriendlyJump, "109 is nearly 110"},
		{plus(345, 297), strategy.FriendlyJump, "297 is nearly 300"},
		{plus(47, 5), strategy.JumpToTen, "47, 50, 52"},
		{plus(43, 5), strategy.SplitTens, "3 + 5, the 40 stays"},
		{plus(45, 39), strategy.FriendlyJump, "39 is nearly 40"},
		{plus(56, 37), strategy.SplitTens, "neither number is near a ten"},
		{plus(46, 20), strategy.JumpOnLine, "one jump"},
		{plus(46, 10), strategy.JumpOnLine, "one jump"},
		{minus(68, 58), strategy.SplitTens, "every place has enough"},
		{plus(248, 175), strategy.SplitTens, "hundreds, tens, ones"},
		{minus(5, 5), strategy.ThinkAddition, "5 and nothing"},
		{minus(5, 0), strategy.CountBack, "nothing to take away"},
		{minus(11, 9), strategy.ThinkAddition, "9 and 2: a short way up"},
		{minus(11, 2), strategy.CountBack, "two counts"},
		{minus(14, 7), strategy.ThinkAddition, "7, 10, 14"},
		{minus(17, 4), strategy.TenAndMore, "the ten stays whole"},
		{minus(20, 6), strategy.TenAndMore, "open one of the two tens"},
		{minus(74, 8), strategy.BridgeBack, "74, 70, 66"},
		{minus(74, 4), strategy.TenAndMore, "the ones go, 70 is left"},
		{minus(65, 49), strategy.FriendlyJump, "49 is nearly 50"},
		{minus(65, 47), strategy.JumpUp, "a shorter way up than back"},
		{minus(65, 27), strategy.JumpOnLine, "a shorter way back than up"},
		{minus(18, 10), strategy.JumpOnLine, "the ten leaves in one jump"},
		{minus(48, 30), strategy.JumpOnLine, "whole tens leave in one jump"},
		{plus(28, 30), strategy.JumpOnLine, "whole tens join in one jump; 2 given to 28 would only swap the two"},
		{minus(45, 32), strategy.SplitTens, "every place has enough"},
		{plus(8, 4, 2), strategy.FriendlyPair, "8 and 2 make ten"},
		{plus(4, 9, 5), strategy.TwoParts, "9 + 9"},
		{plus(237, 148, 389), strategy.SplitTens, "no easy pair"},
		{minus(14, 3, 5), strategy.JumpOnLine, "one after the other"},
	}
	for _, test := range tests {
		if got := strategy.Ways(test.c, 3)[0].Name; got != test.want {
			t.Errorf("Ways(%v)[0] = %v, want %v: %s", test.c, got, test.want, test.why)
		}
	}
}

func TestPreferredWayComesFirst(t *testing.T) {
	ways := strategy.Ways(plus(6, 7), 1, strategy.BridgeBack, strategy.MakeTen, strategy.MakeTen)
	if got := ways[0].Name; got != strategy.MakeTen {
		t.Errorf("first is %v, want make-ten, which fits", got)
	}
	if got := ways[1].Name; got != strategy.NearDoubles {
		t.Errorf("second is %v, want near-doubles", got)
	}
}

func TestNames(t *testing.T) {
	// The ids are written in people's week files and must not change.
	want := "count-on doubles near-doubles make-ten ten-and-more friendly-pair count-back bridge-back " +
		"think-addition friendly-jump split-tens jump-on-line jump-to-ten jump-up give-and-take expanded two-parts " +
		"count-all partners-of-ten count-in-tens pairs"
	var got []string
	for _, n := range strategy.Names() {
		got = append(got, n.String())
		if back, ok := strategy.ParseName(n.String()); !ok || back != n {
			t.Errorf("ParseName(%q) = %v, %v", n, back, ok)
		}
	}
	if strings.Join(got, " ") != want {
		t.Errorf("Names\nwant %s\ngot  %s", want, strings.Join(got, " "))
	}
	if n, ok := strategy.ParseName("make-tens"); ok {
		t.Errorf("ParseName(make-tens) = %v, want none", n)
	}
}

func TestHops(t *testing.T) {
	tests := []struct {
		c      problem.Calculation
		by     strategy.Name
		want   []int
		source string
	}{
		{plus(8, 6), strategy.MakeTen, []int{8, 10, 14}, oac6},
		{minus(13, 4), strategy.BridgeBack, []int{13, 10, 9}, oac6},
		{plus(45, 39), strategy.FriendlyJump, []int{45, 85, 84}, klein},
		{plus(39, 45), strategy.FriendlyJump, []int{45, 85, 84}, klein},
		{minus(65, 49), strategy.FriendlyJump, []int{65, 15, 16}, klein},
		{minus(65, 49), strategy.JumpUp, []int{49, 50, 60, 65}, klein},
		{minus(11, 2), strategy.CountBack, []int{11, 10, 9}, rule},
		{plus(7, 7), strategy.Doubles, nil, custom},
	}
	for _, test := range tests {
		w, err := strategy.Work(test.by, test.c)
		if err != nil {
			t.Fatal(err)
		}
		if got := stops(w); !slices.Equal(got, test.want) {
			t.Errorf("%v by %v: stops %v, want %v: %s", test.c, test.by, got, test.want, test.source)
		}
	}
}

// The pictures of the worked examples that the standards print, each beside
// its step.
func TestPictures(t *testing.T) {
	for _, test := range []struct {
		c       problem.Calculation
		by      strategy.Name
		want    []string // each step's picture
		numbers []int    // in the description of the first picture
		source  string
	}{
		{plus(8, 6), strategy.MakeTen, []string{"", "ten-frame.make-ten", "number-line.hops"}, []int{8, 6, 2, 4}, oac6},
		// Dots that are crossed out for good stand beside the last step: beside
		// the step to ten they would show another number than ten.
		{minus(13, 4), strategy.BridgeBack, []string{"", "number-line.hops", "ten-frame.crossed"}, nil, oac6},
		{plus(2, 6, 4), strategy.FriendlyPair, []string{"", "ten-frame.three"}, []int{6, 4, 2, 12}, oab3},
		{plus(6, 4, 10), strategy.FriendlyPair, []string{"", "ten-frame.three"}, []int{6, 4, 10, 20}, custom},
		{plus(6, 4, 11), strategy.FriendlyPair, []string{"", "bar-model.join-join"}, []int{6, 4, 11, 10, 21}, custom},
		{plus(6, 7), strategy.NearDoubles, []string{"", "drawing.compare"}, []int{7, 6, 1}, oac6},
		{plus(56, 37), strategy.SplitTens, []string{"", "", "blocks.split"}, nil, aus2},
		{plus(29, 36), strategy.GiveAndTake, []string{"", "", "bar-model.steps"}, []int{29, 36, 65, 30, 35, 65}, custom},
		{minus(74, 8), strategy.BridgeBack, []string{"", "", "number-line.hops"}, nil, nz},
		{plus(4, 9, 5), strategy.TwoParts, []string{"", "bar-model.join-join"}, []int{4, 5, 9, 9, 18}, custom},
	} {
		w, err := strategy.Work(test.by, test.c)
		if err != nil {
			t.Fatal(err)
		}
		var got []string
		var numbers []int
		for _, s := range w.Steps {
			if s.Picture == nil {
				got = append(got, "")
				continue
			}
			line := s.Picture.Describe()
			got = append(got, strings.TrimPrefix(line.ID, "picture."))
			for _, v := range line.Values {
				if len(numbers) < len(test.numbers) {
					numbers = append(numbers, v.N)
				}
			}
		}
		if !slices.Equal(got, test.want) || !slices.Equal(numbers, test.numbers) {
			t.Errorf("%v by %v: pictures %q of %v, want %q of %v: %s", test.c, test.by, got, numbers, test.want, test.numbers, test.source)
		}
	}
}
