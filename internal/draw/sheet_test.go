package draw

import (
	"flag"
	"fmt"
	"os"
	"strings"
	"testing"

	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

var sheet = flag.String("sheet", "", "write a contact sheet of all pictures to this HTML file, to look at")

// say names a line by its id and what fills it, for tests: no language here.
func say(l phrase.Line) string {
	if l.ID == "picture.name" {
		return l.Values[0].ID
	}
	parts := []string{l.ID}
	for _, v := range l.Values {
		switch v.Kind {
		case phrase.KindNumber:
			parts = append(parts, fmt.Sprintf("%s=%d", v.Name, v.N))
		case phrase.KindEquation:
			parts = append(parts, fmt.Sprintf("%s=%v", v.Name, v.Equation))
		default:
			parts = append(parts, v.Name+"="+v.ID)
		}
	}
	return strings.Join(parts, " ")
}

func TestSheet(t *testing.T) {
	if *sheet == "" {
		t.Skip("a tool for the eye: go test -run TestSheet -sheet FILE")
	}
	var b strings.Builder
	theme, err := os.ReadFile("testdata/sheet.css")
	if err != nil {
		t.Fatal(err)
	}
	defs, err := Defs()
	if err != nil {
		t.Fatal(err)
	}
	fmt.Fprintf(&b, "<!doctype html><html lang=en><meta charset=utf-8><meta name=viewport content='width=device-width'><style>%s%s</style>%s", theme, Style(), defs)
	n := 0
	add := func(p picture.Picture) {
		n++
		got, err := Draw(p, Options{ID: fmt.Sprintf("p%d", n), Say: say})
		if err != nil {
			t.Error(err)
		}
		fmt.Fprintf(&b, "<figure><figcaption>%s</figcaption>%s</figure>\n", say(p.Describe()), got)
	}
	for _, s := range samples(t) {
		add(s.picture)
	}
	for _, kind := range picture.Kinds() {
		got, _ := Blank(kind, Options{ID: fmt.Sprintf("b%d", kind), Say: say})
		fmt.Fprintf(&b, "<figure><figcaption>blank %v</figcaption>%s</figure>\n", kind, got)
	}
	got, _ := Strip(0, 20, Options{ID: "strip", Say: say})
	fmt.Fprintf(&b, "<figure>%s</figure>\n", got)
	if err := os.WriteFile(*sheet, []byte(b.String()), 0o644); err != nil {
		t.Fatal(err)
	}
}

type sample struct {
	name    string
	picture picture.Picture
}

func samples(t *testing.T) []sample {
	t.Helper()
	var out []sample
	of := func(name string, kind picture.Kind, stage picture.Stage, k problem.Kind, numbers ...int) {
		p, err := problem.New(k, numbers...)
		if err != nil {
			t.Fatal(err)
		}
		pic, err := picture.OfProblem(p, kind, stage)
		if err != nil {
			t.Fatal(err)
		}
		if c, ok := pic.(picture.Comparison); ok {
			pic = c.WithNames(phrase.Person("", "Lina"), phrase.Person("", "Omar"))
		}
		out = append(out, sample{name, pic})
	}
	for _, stage := range picture.Stages() {
		of(fmt.Sprintf("bar-add-%d", stage), picture.BarModel, stage, problem.AddToResult, 8, 6)
	}
	of("bar-change", picture.BarModel, picture.Open, problem.AddToChange, 8, 6)
	of("bar-taken-first", picture.BarModel, picture.FirstPart, problem.TakeFromResult, 13, 4)
	of("bar-taken", picture.BarModel, picture.Solved, problem.TakeFromResult, 13, 4)
	of("bar-lopsided", picture.BarModel, picture.Open, problem.TogetherTotal, 1, 99)
	of("bar-hundreds", picture.BarModel, picture.Solved, problem.TogetherTotal, 500, 500)
	of("bar-nothing", picture.BarModel, picture.Solved, problem.TogetherTotal, 0, 7)
	of("bar-both", picture.BarModel, picture.Open, problem.TogetherBoth, 3, 4)
	of("bar-three", picture.BarModel, picture.Open, problem.TogetherThree, 8, 4, 2)
	for _, stage := range picture.Stages() {
		of(fmt.Sprintf("compare-%d", stage), picture.BarModel, stage, problem.DifferenceMore, 14, 9)
	}
	of("compare-bigger", picture.BarModel, picture.Open, problem.BiggerFewer, 8, 5)
	of("compare-same", picture.BarModel, picture.Open, problem.DifferenceMore, 9, 9)
	of("chain", picture.BarModel, picture.Open, problem.AddThenTake, 8, 6, 5)
	of("chain-compare", picture.BarModel, picture.Open, problem.BiggerThenTogether, 12, 5)
	of("dots", picture.Drawing, picture.Open, problem.AddToResult, 8, 6)
	of("dots-change", picture.Drawing, picture.Open, problem.AddToChange, 8, 6)
	of("dots-taken", picture.Drawing, picture.Solved, problem.TakeFromResult, 13, 4)
	of("dots-both", picture.Drawing, picture.Open, problem.TogetherBoth, 3, 4)
	of("dots-three", picture.Drawing, picture.Solved, problem.TogetherThree, 8, 4, 2)
	of("rows", picture.Drawing, picture.Open, problem.DifferenceMore, 14, 9)
	of("rows-solved", picture.Drawing, picture.Solved, problem.DifferenceMore, 14, 9)
	of("rows-bigger", picture.Drawing, picture.Open, problem.BiggerMore, 7, 6)
	of("rows-smaller", picture.Drawing, picture.Open, problem.SmallerMore, 12, 3)
	of("frame", picture.TenFrame, picture.Solved, problem.AddToResult, 8, 6)
	of("frame-one", picture.TenFrame, picture.Open, problem.AddToChange, 3, 4)
	of("frame-taken", picture.TenFrame, picture.Open, problem.TakeFromResult, 13, 4)
	of("bond", picture.NumberBond, picture.Open, problem.TogetherAddend, 6, 8)
	of("bond-three", picture.NumberBond, picture.Solved, problem.TogetherThree, 8, 4, 2)
	of("line", picture.NumberLine, picture.Open, problem.AddToChange, 8, 6)
	of("line-taken", picture.NumberLine, picture.Solved, problem.TakeFromResult, 83, 36)
	of("line-chain", picture.NumberLine, picture.Open, problem.AddThenTake, 18, 6, 5)
	of("blocks", picture.BaseTen, picture.Solved, problem.TogetherTotal, 56, 37)
	of("blocks-hundreds", picture.BaseTen, picture.Open, problem.TogetherAddend, 345, 167)
	of("columns", picture.Columns, picture.Open, problem.TakeFromResult, 65, 49)
	both, err := problem.New(problem.TogetherBoth, 3, 4)
	if err != nil {
		t.Fatal(err)
	}
	pairs, _ := picture.AllPairs(both)
	out = append(out, sample{"pairs", pairs})
	way := func(name string, by strategy.Name, op problem.Op, numbers ...int) {
		for _, w := range strategy.Ways(problem.Calculation{Op: op, Numbers: numbers}, by)[:1] {
			if w.Name != by {
				t.Errorf("%s: got the way %v", name, w.Name)
			}
			for i, p := range picture.OfWay(w) {
				out = append(out, sample{fmt.Sprintf("way-%s-%d", name, i), p})
			}
		}
	}
	way("make-ten", strategy.MakeTen, problem.Plus, 8, 6)
	way("make-ten-turned", strategy.MakeTen, problem.Plus, 2, 9)
	way("doubles", strategy.Doubles, problem.Plus, 7, 7)
	way("near-doubles", strategy.NearDoubles, problem.Plus, 6, 7)
	way("ten-and-more", strategy.TenAndMore, problem.Plus, 6, 12)
	way("count-on", strategy.CountOn, problem.Plus, 9, 2)
	way("bridge-back", strategy.BridgeBack, problem.Minus, 13, 4)
	way("think-addition", strategy.ThinkAddition, problem.Minus, 12, 8)
	way("friendly-pair", strategy.FriendlyPair, problem.Plus, 8, 4, 2)
	way("two-parts", strategy.TwoParts, problem.Plus, 4, 9, 5)
	way("friendly-jump", strategy.FriendlyJump, problem.Plus, 45, 39)
	way("friendly-jump-back", strategy.FriendlyJump, problem.Minus, 523, 298)
	way("give-and-take", strategy.GiveAndTake, problem.Plus, 29, 36)
	way("split-tens", strategy.SplitTens, problem.Plus, 56, 37)
	way("split-tens-back", strategy.SplitTens, problem.Minus, 387, 254)
	way("jump-up", strategy.JumpUp, problem.Minus, 65, 49)
	way("jump-on-line", strategy.JumpOnLine, problem.Plus, 46, 23)
	way("expanded", strategy.Expanded, problem.Plus, 56, 37)
	way("expanded-hundreds", strategy.Expanded, problem.Minus, 345, 167)
	return out
}
