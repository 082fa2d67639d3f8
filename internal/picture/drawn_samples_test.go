package picture_test

import (
	"fmt"
	"testing"

	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// sample is a picture to look at and to test.
type sample struct {
	name    string
	picture picture.Picture
}

// stories are drawn by kind of picture and stage.
var stories = []struct {
	name    string
	kind    picture.Kind
	stage   picture.Stage
	story   problem.Kind
	numbers []int
}{
	{"bar-add-1", picture.BarModel, picture.FirstPart, problem.AddToResult, []int{8, 6}},
	{"bar-add-2", picture.BarModel, picture.SecondPart, problem.AddToResult, []int{8, 6}},
	{"bar-add-3", picture.BarModel, picture.Open, problem.AddToResult, []int{8, 6}},
	{"bar-add-4", picture.BarModel, picture.Solved, problem.AddToResult, []int{8, 6}},
	{"bar-change", picture.BarModel, picture.Open, problem.AddToChange, []int{8, 6}},
	{"bar-taken-first", picture.BarModel, picture.FirstPart, problem.TakeFromResult, []int{13, 4}},
	{"bar-taken", picture.BarModel, picture.Solved, problem.TakeFromResult, []int{13, 4}},
	{"bar-lopsided", picture.BarModel, picture.Open, problem.TogetherTotal, []int{1, 99}},
	{"bar-hundreds", picture.BarModel, picture.Solved, problem.TogetherTotal, []int{500, 500}},
	{"bar-nothing", picture.BarModel, picture.Solved, problem.TogetherTotal, []int{0, 7}},
	{"bar-both", picture.BarModel, picture.Open, problem.TogetherBoth, []int{3, 4}},
	{"bar-three", picture.BarModel, picture.Open, problem.TogetherThree, []int{8, 4, 2}},
	{"bar-four", picture.BarModel, picture.Open, problem.TogetherFour, []int{24, 17, 36, 13}},
	{"compare-1", picture.BarModel, picture.FirstPart, problem.DifferenceMore, []int{14, 9}},
	{"compare-2", picture.BarModel, picture.SecondPart, problem.DifferenceMore, []int{14, 9}},
	{"compare-3", picture.BarModel, picture.Open, problem.DifferenceMore, []int{14, 9}},
	{"compare-4", picture.BarModel, picture.Solved, problem.DifferenceMore, []int{14, 9}},
	{"compare-bigger", picture.BarModel, picture.Open, problem.BiggerFewer, []int{8, 5}},
	{"compare-same", picture.BarModel, picture.Open, problem.DifferenceMore, []int{9, 9}},
	{"chain-1", picture.BarModel, picture.FirstPart, problem.AddThenTake, []int{8, 6, 5}},
	{"chain-2", picture.BarModel, picture.SecondPart, problem.AddThenTake, []int{8, 6, 5}},
	{"chain", picture.BarModel, picture.Open, problem.AddThenTake, []int{8, 6, 5}},
	{"chain-near", picture.BarModel, picture.Solved, problem.AddThenTake, []int{43, 22, 24}},
	{"chain-add", picture.BarModel, picture.Solved, problem.AddThenAdd, []int{43, 22, 24}},
	{"chain-back-1", picture.BarModel, picture.FirstPart, problem.TakeThenAdd, []int{61, 22, 34}},
	{"chain-back-2", picture.BarModel, picture.SecondPart, problem.TakeThenAdd, []int{61, 22, 34}},
	{"chain-back-3", picture.BarModel, picture.Open, problem.TakeThenAdd, []int{61, 22, 34}},
	{"chain-back-4", picture.BarModel, picture.Solved, problem.TakeThenAdd, []int{61, 22, 34}},
	{"chain-twice", picture.BarModel, picture.Open, problem.TakeThenTake, []int{61, 22, 4}},
	{"chain-compare-2", picture.BarModel, picture.SecondPart, problem.BiggerThenTogether, []int{12, 5}},
	{"chain-compare", picture.BarModel, picture.Open, problem.BiggerThenTogether, []int{12, 5}},
	{"chain-compare-4", picture.BarModel, picture.Solved, problem.BiggerThenTogether, []int{312, 105}},
	{"dots", picture.Drawing, picture.Open, problem.AddToResult, []int{8, 6}},
	{"dots-change", picture.Drawing, picture.Open, problem.AddToChange, []int{8, 6}},
	{"dots-taken", picture.Drawing, picture.Solved, problem.TakeFromResult, []int{13, 4}},
	{"dots-both", picture.Drawing, picture.Open, problem.TogetherBoth, []int{3, 4}},
	{"dots-three", picture.Drawing, picture.Solved, problem.TogetherThree, []int{8, 4, 2}},
	{"rows", picture.Drawing, picture.Open, problem.DifferenceMore, []int{14, 9}},
	{"rows-solved", picture.Drawing, picture.Solved, problem.DifferenceMore, []int{14, 9}},
	{"rows-bigger", picture.Drawing, picture.Open, problem.BiggerMore, []int{7, 6}},
	{"rows-smaller", picture.Drawing, picture.Open, problem.SmallerMore, []int{12, 3}},
	{"frame", picture.TenFrame, picture.Solved, problem.AddToResult, []int{8, 6}},
	{"frame-one", picture.TenFrame, picture.Open, problem.AddToChange, []int{3, 4}},
	{"frame-taken", picture.TenFrame, picture.Open, problem.TakeFromResult, []int{13, 4}},
	{"bond", picture.NumberBond, picture.Open, problem.TogetherAddend, []int{6, 8}},
	{"bond-both", picture.NumberBond, picture.Open, problem.TogetherBoth, []int{3, 4}},
	{"frame-both", picture.TenFrame, picture.Open, problem.TogetherBoth, []int{3, 4}},
	{"bond-three", picture.NumberBond, picture.Solved, problem.TogetherThree, []int{8, 4, 2}},
	{"line", picture.NumberLine, picture.Open, problem.AddToChange, []int{8, 6}},
	{"line-taken", picture.NumberLine, picture.Solved, problem.TakeFromResult, []int{83, 36}},
	{"line-chain", picture.NumberLine, picture.Open, problem.AddThenTake, []int{18, 6, 5}},
	{"blocks", picture.BaseTen, picture.Solved, problem.TogetherTotal, []int{56, 37}},
	{"blocks-hundreds", picture.BaseTen, picture.Open, problem.TogetherAddend, []int{345, 167}},
	{"blocks-taken-1", picture.BaseTen, picture.FirstPart, problem.TakeFromResult, []int{65, 49}},
	{"blocks-taken", picture.BaseTen, picture.Open, problem.TakeFromResult, []int{65, 49}},
	{"blocks-taken-straight", picture.BaseTen, picture.Solved, problem.TakeFromResult, []int{68, 23}},
	{"blocks-taken-hundreds", picture.BaseTen, picture.Solved, problem.TakeFromResult, []int{734, 155}},
	{"blocks-taken-thousand", picture.BaseTen, picture.Solved, problem.TakeFromResult, []int{305, 178}},
	{"columns", picture.Columns, picture.Open, problem.TakeFromResult, []int{65, 49}},
	{"columns-traded", picture.Columns, picture.Solved, problem.TakeFromResult, []int{65, 49}},
	{"columns-straight", picture.Columns, picture.Solved, problem.TogetherTotal, []int{52, 36}},
}

// ways are drawn at work.
var ways = []struct {
	name    string
	by      strategy.Name
	op      problem.Op
	numbers []int
}{
	{"make-ten", strategy.MakeTen, problem.Plus, []int{8, 6}},
	{"make-ten-turned", strategy.MakeTen, problem.Plus, []int{2, 9}},
	{"doubles", strategy.Doubles, problem.Plus, []int{7, 7}},
	{"near-doubles", strategy.NearDoubles, problem.Plus, []int{6, 7}},
	{"ten-and-more", strategy.TenAndMore, problem.Plus, []int{6, 12}},
	{"count-on", strategy.CountOn, problem.Plus, []int{9, 2}},
	{"bridge-back", strategy.BridgeBack, problem.Minus, []int{13, 4}},
	{"think-addition", strategy.ThinkAddition, problem.Minus, []int{12, 8}},
	{"friendly-pair", strategy.FriendlyPair, problem.Plus, []int{8, 4, 2}},
	{"two-parts", strategy.TwoParts, problem.Plus, []int{4, 9, 5}},
	{"two-and-two", strategy.Pairs, problem.Plus, []int{24, 17, 36, 13}},
	{"split-four", strategy.SplitTens, problem.Plus, []int{24, 17, 36, 13}},
	{"friendly-jump", strategy.FriendlyJump, problem.Plus, []int{45, 39}},
	{"friendly-jump-back", strategy.FriendlyJump, problem.Minus, []int{523, 298}},
	{"give-and-take", strategy.GiveAndTake, problem.Plus, []int{29, 36}},
	{"split-tens", strategy.SplitTens, problem.Plus, []int{56, 37}},
	{"split-tens-back", strategy.SplitTens, problem.Minus, []int{387, 254}},
	{"jump-up", strategy.JumpUp, problem.Minus, []int{65, 49}},
	{"jump-on-line", strategy.JumpOnLine, problem.Plus, []int{46, 23}},
	{"expanded", strategy.Expanded, problem.Plus, []int{56, 37}},
	{"expanded-hundreds", strategy.Expanded, problem.Minus, []int{345, 167}},
	{"expanded-over", strategy.Expanded, problem.Minus, []int{305, 178}},
	{"expanded-sum", strategy.Expanded, problem.Plus, []int{345, 167}},
	{"expanded-once", strategy.Expanded, problem.Plus, []int{374, 397}},
}

// samples are pictures of every sort.
func samples(t *testing.T) []sample {
	t.Helper()
	both, err := problem.New(problem.TogetherBoth, 3, 4)
	if err != nil {
		t.Fatal(err)
	}
	pairs, ok := picture.AllPairs(both)
	if !ok {
		t.Fatal("no pattern of pairs")
	}
	out := []sample{{"pairs", pairs}}
	for _, s := range stories {
		p, err := problem.New(s.story, s.numbers...)
		if err != nil {
			t.Fatal(err)
		}
		pic, err := picture.OfProblem(p, s.kind, s.stage)
		if err != nil {
			t.Fatal(err)
		}
		lina, omar := phrase.Person("", "Lina"), phrase.Person("", "Omar")
		out = append(out, sample{s.name, picture.WithNames(pic, lina, omar)})
	}
	for _, s := range ways {
		w := strategy.Ways(problem.Calculation{Op: s.op, Numbers: s.numbers}, 3, s.by)[0]
		if w.Name != s.by {
			t.Fatalf("%s: got the way %v", s.name, w.Name)
		}
		n := 0
		for _, step := range w.Steps {
			if step.Picture != nil {
				out = append(out, sample{fmt.Sprintf("way-%s-%d", s.name, n), step.Picture})
				n++
			}
		}
	}
	return out
}
