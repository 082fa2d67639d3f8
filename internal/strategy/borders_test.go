package strategy_test

import (
	"fmt"
	"slices"
	"testing"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// Up to where a way helps: the last calculation that it fits, and the first that it
// does not. Common practice, no published source, where no other is named.
func TestBordersOfWays(t *testing.T) {
	for _, row := range []struct {
		by   strategy.Name
		c    problem.Calculation
		fits bool
		why  string
	}{
		{strategy.CountOn, plus(9, 3), true, "three counts"},
		{strategy.CountBack, minus(11, 3), true, "three counts"},
		{strategy.Doubles, plus(1, 1), true, "the first double"},
		{strategy.Doubles, plus(0, 0), false, "nothing twice"},
		{strategy.Doubles, plus(10, 10), true, "two tens"},
		{strategy.Doubles, plus(11, 11), false, "not by heart"},
		{strategy.MakeTen, plus(9, 2), true, "1 and 1"},
		{strategy.PartnersOfTen, plus(10, 0), false, "all boxes are full"},
		{strategy.PartnersOfTen, plus(0, 10), false, "all boxes are full"},
		{strategy.PartnersOfTen, minus(10, 0), false, "no box gets empty"},
		{strategy.PartnersOfTen, minus(10, 10), false, "no box stays full"},
		{strategy.TenAndMore, plus(12, 0), false, "nothing more"},
		{strategy.TenAndMore, plus(20, 0), false, "nothing more"},
		{strategy.TenAndMore, minus(20, 0), false, "nothing less"},
		{strategy.TenAndMore, plus(10, 10), false, "two tens and no ones"},
		{strategy.TenAndMore, plus(14, 6), true, "the ones come to ten"},
		{strategy.TenAndMore, plus(14, 7), false, "the ones pass ten"},
		{strategy.TenAndMore, minus(17, 6), true, "6 of the 7"},
		{strategy.TenAndMore, minus(17, 8), false, "the 7 are not enough"},
		{strategy.TenAndMore, minus(50, 7), true, "open one of five tens"},
		{strategy.TenAndMore, plus(20, 10), false, "tens and tens"},
		{strategy.BridgeBack, minus(13, 10), false, "a whole ten is taken"},
		{strategy.ThinkAddition, minus(5, 0), false, "there is no part to start from"},
		{strategy.ThinkAddition, minus(43, 40), true, "three counts up"},
		{strategy.ThinkAddition, minus(44, 40), false, "four are too many"},
		{strategy.ThinkAddition, minus(19, 9), true, "9 + ? = 19 is known"},
		{strategy.ThinkAddition, minus(20, 9), false, "9 + 11 is not"},
		{strategy.ThinkAddition, minus(15, 10), false, "10 is no one-digit number"},
		{strategy.CountInTens, plus(120, 80), true, "twenty tens"},
		{strategy.CountInTens, plus(130, 80), false, "21 tens"},
		{strategy.CountInTens, minus(50, 50), false, "nothing is left to count"},
		{strategy.CountInTens, minus(150, 100), false, "ten tens are not few"},
		{strategy.CountInTens, minus(150, 90), true, "nine tens"},
		{strategy.CountInTens, plus(30, 0), false, "nothing is no bundle"},
		{strategy.Expanded, plus(12, 8), false, "20 is for ten frames"},
		{strategy.Expanded, plus(12, 9), true, "21 has two places to trade"},
		{strategy.FriendlyJump, plus(10, 9), false, "the ten is there already"},
		{strategy.FriendlyJump, plus(32, 28), false, "the ones come to ten and pass none"},
		{strategy.FriendlyJump, plus(33, 28), true, "they pass it"},
		{strategy.FriendlyJump, plus(62, 39), true, "to 102 and back to 101: both are past the hundred"},
		{strategy.FriendlyJump, plus(245, 100), false, "100 is friendly itself"},
		{strategy.FriendlyJump, plus(127, 95), true, "95 is five below a hundred"},
		{strategy.FriendlyJump, plus(127, 94), false, "94 is six below"},
		{strategy.GiveAndTake, plus(28, 30), false, "30 gives nothing away: 30 + 28"},
		{strategy.GiveAndTake, plus(256, 100), false, "100 is round already"},
		{strategy.GiveAndTake, plus(10, 9), false, "the ten is there already"},
		{strategy.GiveAndTake, plus(9, 11), true, "10 + 10"},
		{strategy.GiveAndTake, plus(10, 12), false, "11 + 11 is not known by heart"},
		{strategy.JumpToTen, plus(58, 22), true, "the ones come to ten"},
		{strategy.JumpToTen, plus(58, 21), false, "they do not"},
		{strategy.JumpToTen, plus(158, 9), true, "9 is jumped in one go"},
		{strategy.JumpToTen, plus(158, 19), false, "three digits and two"},
		{strategy.JumpUp, minus(20, 8), true, "8, 10, 20"},
		{strategy.JumpUp, minus(21, 8), false, "too far from one digit"},
		{strategy.JumpUp, minus(10, 8), false, "a single jump says the answer"},
		{strategy.JumpUp, minus(60, 50), false, "a single jump says the answer"},
		{strategy.JumpOnLine, plus(46, 10), true, "one jump of ten"},
		{strategy.JumpOnLine, minus(46, 10), true, "one jump of ten"},
		{strategy.JumpOnLine, plus(46, 9), false, "no ten to jump"},
		{strategy.JumpOnLine, minus(46, 9), false, "no ten to jump"},
		{strategy.SplitTens, minus(48, 0), false, "nothing to split"},
	} {
		if got := strategy.Fits(row.by, row.c); got != row.fits {
			t.Errorf("%v fits %v: %v, want %v: %s", row.by, row.c, got, row.fits, row.why)
		}
	}
}

// checkSaid wants the numbers of a step's sentence to be those that the child sees: in
// what is written down here or before, or in the calculation. What is called a sum, an
// answer or a landing is what the step comes to.
func checkSaid(t *testing.T, w strategy.Way) {
	t.Helper()
	seen := slices.Clone(w.Calculation.Numbers)
	for _, s := range w.Steps {
		if s.Equation.IsZero() {
			continue
		}
		for _, e := range s.Equation.Sides() {
			for _, term := range e {
				seen = append(seen, term.Value)
			}
		}
		comesTo := s.Equation.Sides()[0].Value()
		for _, v := range s.Say.Values {
			result := v.Name == "Sum" || v.Name == "Answer" || v.Name == "Landing"
			if v.Name == "Near" { // which can take two jumps
				continue
			}
			if v.Kind == phrase.KindNumber && (!slices.Contains(seen, v.N) || result && !mentions(s.Equation, v.N)) {
				t.Fatalf("%v by %v: %s says %s %d, and %v is written (%d)", w.Calculation, w.Name, s.Say.ID, v.Name, v.N, s.Equation, comesTo)
			}
		}
	}
}

// What a family reads where the calculation decides how it is said.
func TestSaid(t *testing.T) {
	for _, row := range []struct {
		by   strategy.Name
		c    problem.Calculation
		id   string
		want string
	}{
		{strategy.CountInTens, plus(30, 40), "count-in-tens.tens-in", "A 30 N 3"},
		{strategy.CountInTens, minus(800, 500), "count-in-tens.hundreds-in", "A 800 N 8"},
		{strategy.PartnersOfTen, plus(4, 6), "partners-of-ten.fill", "A 6 B 4"},
		{strategy.CountOn, plus(9, 1), "count-on.hint-one", "Start 9"},
		{strategy.CountOn, plus(2, 9), "count-on.hint", "Start 9 Times 2"},
		{strategy.TenAndMore, minus(30, 6), "ten-and-more.hint-open", "A 30 Ten 20 More 10 B 6"},
		{strategy.JumpOnLine, plus(46, 20), "jump-on-line.hint-only", "Start 46 Jump 20"},
		{strategy.JumpOnLine, minus(65, 49), "jump-on-line.hint-first-back", "Start 65 Jump 40"},
		{strategy.JumpOnLine, minus(65, 49), "jump-on-line.back-to-ten", "From 25 Jump 5 Landing 20"},
		{strategy.JumpOnLine, plus(51, 34), "jump-on-line.ones", "From 81 Jump 4 Landing 85"},
		{strategy.JumpOnLine, plus(28, 30), "jump-on-line.tens", "From 28 Jump 30 Landing 58"},
		{strategy.JumpOnLine, plus(60, 17), "jump-on-line.ones", "From 70 Jump 7 Landing 77"},
		{strategy.JumpOnLine, plus(46, 14), "jump-on-line.ones", "From 56 Jump 4 Landing 60"},
		{strategy.FriendlyJump, plus(45, 39), "friendly-jump.jump", "A 45 B 39 Near 40 Jump 40 Landing 85"},
		{strategy.FriendlyJump, minus(65, 49), "friendly-jump.jump-back", "A 65 B 49 Near 50 Jump 50 Landing 15"},
		{strategy.FriendlyJump, minus(311, 109), "friendly-jump.jump-back", "A 311 B 109 Near 110 Jump 100 Landing 211"},
		{strategy.FriendlyJump, minus(311, 109), "friendly-jump.further-back", "Jump 10 Landing 201"},
		{strategy.Expanded, minus(65, 49), "expanded.open-ten", "A 65"},
		{strategy.Expanded, minus(345, 182), "expanded.open-hundred", "A 345"},
		{strategy.Expanded, minus(305, 178), "expanded.open-hundred-for-ones", "A 305"},
		{strategy.ThinkAddition, minus(11, 9), "think-addition.one", "From 10 Jump 1 To 11"},
		{strategy.ThinkAddition, minus(12, 8), "think-addition.up", "From 8 Jump 2 To 10"},
	} {
		w, err := strategy.Work(row.by, row.c)
		if err != nil {
			t.Fatal(err)
		}
		lines := w.Said()
		i := slices.IndexFunc(lines, func(line phrase.Line) bool { return line.ID == "strategy."+row.id })
		got := ""
		if i >= 0 {
			for _, v := range lines[i].Values {
				got += fmt.Sprintf(" %s %d", v.Name, v.N)
			}
		}
		if i < 0 || got != " "+row.want {
			t.Errorf("%v by %v: %s says%s, want %s among %v", row.c, row.by, row.id, got, row.want, lines)
		}
	}
}
