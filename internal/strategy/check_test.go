package strategy_test

import (
	"slices"
	"strings"
	"testing"

	"homebuild/internal/problem"
	"homebuild/internal/strategy"
)

func plus(n ...int) problem.Calculation {
	return problem.Calculation{Op: problem.Plus, Numbers: n}
}

func minus(n ...int) problem.Calculation {
	return problem.Calculation{Op: problem.Minus, Numbers: n}
}

// strip is a strip of marks, as many as any calculation needs.
var strip = strings.Repeat("|", 3000)

// count finds the answer with marks alone: it puts marks down and wipes marks
// out, and shares nothing with the engine.
func count(c problem.Calculation) int {
	marks := strip[:c.Numbers[0]]
	for _, n := range c.Numbers[1:] {
		if c.Op == problem.Plus {
			marks = strip[:len(marks)+n]
		} else {
			marks = marks[n:]
		}
	}
	return len(marks)
}

// walk works an expression with marks; ok is false when it would wipe out
// more marks than there are. highest is the most marks on the way.
func walk(e problem.Expression) (result, highest int, ok bool) {
	marks := ""
	for _, t := range e {
		switch {
		case t.Op == problem.Plus:
			marks = strip[:len(marks)+t.Value]
		case len(marks) < t.Value:
			return 0, 0, false
		default:
			marks = marks[t.Value:]
		}
		highest = max(highest, len(marks))
	}
	return len(marks), highest, true
}

// within is the range of the published standards that c belongs to: 10 (K), 20
// (grade 1), 100 and 1000 (grade 2). CCSS-M 2010, K.OA.A.2 to 2.NBT.B.7.
func within(c problem.Calculation) int {
	most := count(c)
	for _, n := range c.Numbers {
		most = max(most, n)
	}
	for _, l := range []int{10, 20, 100, 1000} {
		if most <= l {
			return l
		}
	}
	return 1 << 30
}

// digits counts the digits of n that are not zero.
func digits(n int) (found int) {
	for ; n > 0; n /= 10 {
		if n%10 != 0 {
			found++
		}
	}
	return found
}

// easier reports whether a step is one that a child can do in one go: it ends
// in a ten, is a double, has an addend under ten, or is place value (whole
// tens, hundreds or ones with at most one number that is not; or a number
// under 30, the ones of up to three numbers, to a whole ten; or a number set
// out in hundreds, tens and up to 19 ones).
func easier(q problem.Equation) bool {
	long, short := q.Sides()[0], q.Sides()[1]
	if len(short) > len(long) {
		long, short = short, long
	}
	if len(short) == 1 && short[0].Value%10 == 0 {
		return true
	}
	if len(long) == 2 && long[0].Value == long[1].Value {
		return true
	}
	tens := 0
	for _, t := range long {
		if t.Value%10 == 0 {
			tens++
		}
	}
	if len(q.Sides()[0]) == 1 && tens >= len(long)-1 && long[len(long)-1].Value < 20 {
		return true
	}
	mixed := 0
	for _, t := range long {
		if t.Value < 10 {
			return true
		}
		if digits(t.Value) > 1 {
			mixed++
		}
	}
	return mixed <= 1 || (len(long) == 2 && long[0].Value%10 == 0 && long[1].Value < 30)
}

// checkWay proves a way: everything true by counting, in range, each step
// easy, the answer reached, the chain getting shorter, the hops connected.
func checkWay(t *testing.T, w strategy.Way) {
	t.Helper()
	answer, limit := count(w.Calculation), within(w.Calculation)
	fail := func(format string, args ...any) {
		t.Helper()
		t.Fatalf("%v by %v: "+format, append([]any{w.Calculation, w.Name}, args...)...)
	}
	if len(w.Steps) == 0 {
		fail("no steps")
	}
	if w.Steps[len(w.Steps)-1].Picture == nil {
		fail("no picture beside the last step")
	}
	for _, s := range w.Steps {
		if s.Equation.IsZero() {
			continue
		}
		if v := checkSides(s.Equation, limit); v != "" {
			fail("step %s: %s", s.Say.ID, v)
		}
		if !easier(s.Equation) {
			fail("step %s: %v is not easier", s.Say.ID, s.Equation)
		}
	}
	if last := w.Steps[len(w.Steps)-1]; !mentions(last.Equation, answer) {
		fail("the last step %v does not show %d", last.Equation, answer)
	}
	if v := checkSides(w.Chain, limit); v != "" {
		fail("chain: %s", v)
	}
	sides := w.Chain.Sides()
	if got := sides[0].String(); got != w.Calculation.String() {
		fail("the chain begins with %s", got)
	}
	if got := sides[len(sides)-1]; len(got) != 1 || got[0].Value != answer {
		fail("the chain %v does not end in %d", w.Chain, answer)
	}
	for i := 2; i < len(sides); i++ {
		if len(sides[i]) > len(sides[i-1]) {
			fail("the chain %v grows", w.Chain)
		}
	}
	checkHops(t, w, limit)
}

func checkSides(q problem.Equation, limit int) string {
	first, _, _ := walk(q.Sides()[0])
	for _, e := range q.Sides() {
		switch v, high, ok := walk(e); {
		case !ok:
			return q.String() + " goes below zero"
		case v != first:
			return q.String() + " is not true"
		case high > limit:
			return q.String() + " leaves the range"
		}
	}
	return ""
}

func mentions(q problem.Equation, n int) bool {
	for _, e := range q.Sides() {
		if slices.ContainsFunc(e, func(t problem.Term) bool { return t.Value == n }) {
			return true
		}
	}
	return false
}

// stops are the places of a way along the number line, read back from the
// description of its picture; none where there is no line.
func stops(w strategy.Way) []int {
	for _, s := range w.Steps {
		if s.Picture == nil || s.Picture.Describe().ID != "picture.number-line.hops" {
			continue
		}
		walk := s.Picture.Describe().Values[0].Equation.Sides()[0]
		var at []int
		for i := range walk {
			at = append(at, walk[:i+1].Value())
		}
		return at
	}
	return nil
}

func checkHops(t *testing.T, w strategy.Way, limit int) {
	t.Helper()
	at := stops(w)
	if len(at) == 0 {
		return
	}
	for i, n := range at {
		if n < 0 || n > limit || i > 0 && at[i-1] == n {
			t.Fatalf("%v by %v: stops %v", w.Calculation, w.Name, at)
		}
	}
	first, last, answer := at[0], at[len(at)-1], count(w.Calculation)
	up := w.Calculation.Op == problem.Minus && first == w.Calculation.Numbers[1] && last == w.Calculation.Numbers[0]
	if last != answer && !up {
		t.Fatalf("%v by %v: stops %v do not end at %d", w.Calculation, w.Name, at, answer)
	}
	if !up && !slices.Contains(w.Calculation.Numbers, first) {
		t.Fatalf("%v by %v: stops %v begin nowhere", w.Calculation, w.Name, at)
	}
}
