package strategy_test

import (
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

// each walks every calculation that the tests prove one by one: sums to 100,
// their differences, and three addends to 20. A quick run (-short) takes a spread, in
// which ones and tens begin and end.
func each(f func(problem.Calculation)) {
	for _, a := range upTo(100) {
		for _, b := range upTo(100) {
			if a+b <= 100 {
				f(plus(a, b))
			}
			if b <= a {
				f(minus(a, b))
			}
			for c := 0; a+b+c <= 20; c++ {
				f(plus(a, b, c))
			}
		}
	}
}

func upTo(top int) (out []int) {
	for n := range top + 1 {
		if !testing.Short() || n <= 13 || n >= 98 || n%10 == n/10 || n%10 == 9-n/10 || n == 19 || n == 20 {
			out = append(out, n)
		}
	}
	return out
}

// sparse is 1 in the long run, which walks every number, and times in a quick one
// (-short), which takes a spread of them.
func sparse(times int) int {
	if testing.Short() {
		return times
	}
	return 1
}

// Every strategy that fits a calculation works it out as is right, whatever the
// calculation: in every one to 100, and in a spread to 1000, with all endings and
// many ways to pass tens and hundreds.
func TestEveryWay(t *testing.T) {
	proved, said := 0, newSentences()
	prove := func(c problem.Calculation) {
		proved++
		for _, w := range checkWays(t, c) {
			checkWay(t, w)
			checkSlips(t, w)
			checkJumps(t, w)
			checkSaid(t, w)
			said.check(t, w)
		}
	}
	each(prove)
	// 5151 pairs with a + b <= 100, as many with b <= a <= 100, and 1771
	// triples with a sum to 20 (numbers of combinations).
	if want := 5151 + 5151 + 1771; proved != want && !testing.Short() {
		t.Errorf("walked %d calculations, want %d", proved, want)
	}
	for a := 0; a <= 1000; a += 7 * sparse(9) {
		for b := 0; a+b <= 1000; b += 11 * sparse(9) {
			prove(plus(a, b))
			prove(minus(a+b, b))
		}
	}
	for hundreds := 100; hundreds <= 900; hundreds += 100 { // place by place
		prove(plus(hundreds, 100))
		prove(minus(hundreds, 100))
		prove(plus(hundreds-77, 78))
		prove(minus(hundreds+27, 98))
		prove(minus(hundreds+211, 109))
	}
	for a := 0; a <= 400; a += 29 {
		prove(plus(a, 37, 19))
		prove(plus(a, 80, 342))
		prove(plus(a, 25, 60))
		prove(plus(a, 17, 23, 36))
		prove(plus(a, 140, 230, 25))
	}
	said.checkAll(t)
}

// checkWays gives the ways of all strategies that fit c. Ways must list each of them
// once, and leave out only those that write the same line as one before, and counting
// all, which nobody is sent back to after kindergarten.
func checkWays(t *testing.T, c problem.Calculation) (all []strategy.Way) {
	t.Helper()
	ways := strategy.Ways(c, 3)
	if len(ways) == 0 {
		t.Fatalf("%v: no way", c)
	}
	if best, ok := strategy.Best(c, 3); !ok || !reflect.DeepEqual(best, ways[0]) {
		t.Fatalf("%v: the best way is %v, and the first %v", c, best.Chain, ways[0].Chain)
	}
	listed, lines := map[strategy.Name]bool{}, map[string]bool{}
	for _, w := range ways {
		if line := w.Chain.String(); listed[w.Name] || lines[line] || !strategy.Fits(w.Name, c) {
			t.Fatalf("%v: %v lists %s twice, or does not fit", c, w.Name, line)
		}
		listed[w.Name], lines[w.Chain.String()] = true, true
	}
	for _, n := range strategy.Names() {
		w, err := strategy.Work(n, c)
		if fits := strategy.Fits(n, c); fits != (err == nil) {
			t.Fatalf("%v: Work(%v) error is %v, Fits says %v", c, n, err, fits)
		}
		if err != nil {
			continue
		}
		if n != strategy.CountAll && !listed[n] && !lines[w.Chain.String()] {
			t.Fatalf("%v: %v is left out", c, n)
		}
		all = append(all, w)
	}
	return all
}

func TestCalculationsTo1000(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		a := rapid.IntRange(0, 1000).Draw(r, "a")
		b := rapid.IntRange(0, 1000-a).Draw(r, "b")
		c := rapid.IntRange(0, 1000-a-b).Draw(r, "c")
		for _, calc := range []problem.Calculation{
			plus(a, b), minus(a+b, b), plus(a, b, c), minus(a+b+c, b, c),
		} {
			for _, w := range checkWays(t, calc) {
				checkWay(t, w)
				checkSlips(t, w)
				checkJumps(t, w)
			}
		}
	})
}

// Every sum of four two-digit numbers to 100 (2.NBT.B.6), in every third number, has a
// way; where two and two make whole tens, that is the best one.
func TestSumsOfFour(t *testing.T) {
	for a := 10; a <= 70; a += 3 * sparse(3) {
		for b := 10; a+b <= 80; b += sparse(7) {
			for c := 10; a+b+c <= 90; c += 3 {
				for d := 10; a+b+c+d <= 100; d += 2 {
					calc := plus(a, b, c, d)
					ways := strategy.Ways(calc, 2)
					if len(ways) == 0 {
						t.Fatalf("%v: no way", calc)
					}
					for _, w := range ways {
						checkWay(t, w)
					}
					round := (a+b)%10 == 0 || (a+c)%10 == 0 || (a+d)%10 == 0
					if (a+b+c+d)%10 == 0 && round && a%10 > 0 && ways[0].Name != strategy.Pairs {
						t.Fatalf("%v: the best way is %v", calc, ways[0].Name)
					}
				}
			}
		}
	}
}

// What is not sound has no way, and does not crash.
func TestUnsound(t *testing.T) {
	for _, c := range []problem.Calculation{
		{}, plus(3), plus(1, 2, 3, 4, 5), minus(9, 1, 2, 3), minus(3, 5), plus(-1, 4), minus(9, 5, 5), {Op: 7, Numbers: []int{1, 2}},
	} {
		if ways := strategy.Ways(c, 3, strategy.MakeTen); ways != nil {
			t.Errorf("Ways(%v) = %v, want none", c, ways)
		}
		if best, ok := strategy.Best(c, 3); ok {
			t.Errorf("Best(%v) = %v, want none", c, best)
		}
	}
	if strategy.Fits(0, plus(8, 6)) || strategy.Fits(99, plus(8, 6)) {
		t.Error("a strategy that does not exist fits")
	}
}

func BenchmarkWays(b *testing.B) {
	for _, c := range []problem.Calculation{plus(8, 6), plus(45, 39), minus(305, 178), plus(8, 4, 2)} {
		b.Run(c.String(), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				strategy.Ways(c, 3)
			}
		})
	}
}
