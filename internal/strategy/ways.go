package strategy

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// Ways works c out by every strategy that fits and that a class of the grade may
// have learned, the best first: the preferred ones in their order, then the others
// from the easiest to the most general. A strategy that would write the same line
// as a better one is left out: it is not another way. A calculation that is sound
// always has a way, if need be one of a later grade.
//
// The order of the others (common practice, no published source):
//
//   - in kindergarten partners of ten, then counting all, then counting on; later
//     nobody is sent back to counting all;
//   - what is known or said at once (partners of ten, a double, a ten and more,
//     one to three counts) before what is worked out;
//   - a way that meets a ten before one that splits both numbers;
//   - in subtraction the shorter walk: up from the part where the difference
//     is not more than what is taken away, else back from the whole;
//   - whole tens counted as tens, and jumped where they join another number or leave it;
//   - tens and ones side by side last, because it always works.
func Ways(c problem.Calculation, grade problem.Grade, prefer ...Name) []Way {
	if !sound(c) {
		return nil
	}
	var seen [len(methods)]bool
	ways := make([]Way, 0, 8)
	for _, n := range candidates(c, grade, prefer) {
		if seen[n] {
			continue
		}
		seen[n] = true
		w := work(n, c)
		same := slices.ContainsFunc(ways, func(earlier Way) bool { return sameLine(earlier.Chain, w.Chain) })
		if !same {
			ways = append(ways, w)
		}
	}
	return ways
}

// Best is the first of Ways, without working out the others. It is false for a
// calculation that is not sound.
func Best(c problem.Calculation, grade problem.Grade) (Way, bool) {
	if !sound(c) {
		return Way{}, false
	}
	return work(candidates(c, grade, nil)[0], c), true
}

// candidates are the strategies that fit, the best first: those of the grade, or
// all where it has none.
func candidates(c problem.Calculation, grade problem.Grade, prefer []Name) []Name {
	fits := slices.DeleteFunc(slices.Concat(prefer, order(c, grade)), func(n Name) bool { return !Fits(n, c) })
	learned := slices.DeleteFunc(slices.Clone(fits), func(n Name) bool { return n.FirstGrade() > grade })
	if len(learned) > 0 {
		return learned
	}
	return fits
}

func sameLine(p, q problem.Equation) bool {
	return slices.EqualFunc(p.Sides(), q.Sides(), slices.Equal[problem.Expression])
}

func order(c problem.Calculation, grade problem.Grade) []Name {
	var names []Name
	if grade < 1 {
		names = []Name{PartnersOfTen, CountAll, CountOn}
	}
	switch {
	case isSum(c):
		return append(names, orderOfSum(c)...)
	case isDifference(c):
		return append(names, orderOfDifference(c)...)
	case c.Op == problem.Minus:
		return []Name{CountBack, CountInTens, JumpOnLine}
	}
	return []Name{CountInTens, FriendlyPair, TwoParts, Pairs, SplitTens, Expanded}
}

func orderOfSum(c problem.Calculation) []Name {
	big, small, _ := bySize(c)
	names := []Name{Doubles, PartnersOfTen, CountInTens}
	if wholeAndMore(c) {
		names = append(names, TenAndMore)
	}
	names = append(names, CountOn, TenAndMore, NearDoubles, MakeTen)
	if small >= 10 && (round(small) || round(big)) {
		names = append(names, JumpOnLine)
	}
	names = append(names, FriendlyJump)
	if small < 10 {
		names = append(names, JumpToTen)
	}
	return append(names, GiveAndTake, SplitTens, JumpToTen, JumpOnLine, Expanded)
}

func orderOfDifference(c problem.Calculation) []Name {
	missing := c.Value()
	shorterUp := missing <= c.Numbers[1]
	names := []Name{PartnersOfTen, CountInTens}
	if shorterUp {
		names = append(names, ThinkAddition)
	}
	if wholeAndMore(c) {
		names = append(names, TenAndMore)
	}
	names = append(names, CountBack, TenAndMore, BridgeBack, ThinkAddition)
	if shorterUp && missing < 10 {
		names = append(names, JumpUp)
	}
	names = append(names, FriendlyJump)
	if taken := c.Numbers[1]; round(taken) && taken >= 10 {
		names = append(names, JumpOnLine)
	}
	names = append(names, SplitTens)
	if shorterUp {
		names = append(names, JumpUp)
	}
	return append(names, JumpOnLine, JumpUp, Expanded)
}

// Lines lists a sample of every sentence that this package can ask for, those
// of its pictures too, so that a catalogue can be checked for all of them.
func Lines() []phrase.Line {
	var lines []phrase.Line
	for _, n := range Names() {
		lines = append(lines, n.Title(), n.About())
	}
	for _, c := range samples() {
		for _, n := range Names() {
			if Fits(n, c) {
				lines = append(lines, work(n, c).lines()...)
			}
		}
	}
	for _, s := range SlipNames() {
		lines = append(lines, s.Line())
	}
	return phrase.Distinct(lines)
}

// Said are the sentences of the steps, and the first hint where there is one.
func (w Way) Said() []phrase.Line {
	var lines []phrase.Line
	if w.Hint.ID != "" {
		lines = append(lines, w.Hint)
	}
	for _, s := range w.Steps {
		lines = append(lines, s.Say)
	}
	return lines
}

// lines are all sentences of a way, its pictures' too.
func (w Way) lines() []phrase.Line {
	lines := []phrase.Line{w.Title(), w.About()}
	if w.Hint.ID != "" {
		lines = append(lines, w.Hint)
	}
	for _, s := range w.Steps {
		lines = append(lines, s.Say)
		if s.Picture != nil {
			lines = append(lines, s.Picture.Describe())
		}
	}
	for _, s := range w.Slips {
		lines = append(lines, s.Ask)
	}
	return lines
}

// IsFor reports whether n is for calculations of an operation with so many numbers; it
// need not fit each of them.
func IsFor(n Name, op problem.Op, numbers int) bool {
	return slices.ContainsFunc(samples(), func(c problem.Calculation) bool {
		return c.Op == op && len(c.Numbers) == numbers && Fits(n, c)
	})
}

// samples are calculations that together show every step of every strategy,
// and every sort of picture.
func samples() []problem.Calculation {
	plus := func(n ...int) problem.Calculation { return problem.Calculation{Op: problem.Plus, Numbers: n} }
	minus := func(n ...int) problem.Calculation {
		return problem.Calculation{Op: problem.Minus, Numbers: n}
	}
	return []problem.Calculation{
		plus(7, 0), plus(9, 1), plus(9, 2), plus(7, 7), plus(6, 7), plus(8, 6), plus(10, 4), plus(6, 12), plus(6, 4),
		plus(45, 39), plus(47, 38), plus(58, 26), plus(46, 23), plus(248, 175), plus(8, 4, 2), plus(4, 9, 5),
		plus(25, 25), plus(40, 25, 60), plus(28, 37, 19), plus(24, 17, 36, 13), plus(388, 80, 342), plus(30, 40), plus(300, 200), plus(3, 4), plus(345, 129), plus(567, 278),
		plus(40, 30, 20), plus(40, 20, 10, 20), minus(9, 2, 1), minus(46, 12, 5),
		minus(7, 0), minus(9, 1), minus(11, 2), minus(13, 4), minus(12, 8), minus(17, 4), minus(20, 6), minus(74, 4),
		minus(65, 49), minus(387, 254), minus(345, 167), minus(305, 178), minus(523, 298), minus(311, 109),
		minus(80, 50), minus(800, 500), minus(575, 503), minus(10, 4), minus(9, 3), minus(5, 5),
	}
}
